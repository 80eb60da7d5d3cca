package counterpull.report.result;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.PressProfile;
import counterpull.report.Cautions;
import counterpull.report.Findings;
import counterpull.report.Setup;
import counterpull.report.table.Column;
import counterpull.report.table.UnitSet;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;

/**
 * A result for machines: SI throughout, every position, nothing rounded. {@code format} names the shape; a change that an
 * existing reader would trip over gets another number. What is not known is {@code null}, never left out.
 */
public final class ResultJson {
    /** Name and version of the shape. */
    public static final String FORMAT = "counterpull-result/1";

    private static final ObjectMapper MAPPER = new ObjectMapper()
            .enable(SerializationFeature.INDENT_OUTPUT)
            .disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);

    private ResultJson() {}

    /** The chosen setups with their profiles, what they are compared with, and the search's best; the stream is left open. */
    public static void write(Findings findings, OutputStream to) throws IOException {
        MAPPER.writeValue(to, tree(findings));
    }

    /** One profile alone. */
    public static String of(PressProfile profile) throws IOException {
        ObjectNode root = root();
        columns(root.putObject("columns"), profile);
        profile(root, profile);
        return MAPPER.writeValueAsString(root);
    }

    static ObjectNode tree(Findings findings) {
        ObjectNode root = root();
        root.put("made", findings.heading().made().toString());
        root.put("program", "Counterpull " + findings.heading().version());
        root.put("scenario", findings.heading().scenario());
        root.put("client", findings.heading().client());
        root.put("machine", findings.heading().machine());
        ArrayNode chosen = root.putArray("chosen");
        findings.chosen().forEach(setup -> setup(chosen.addObject(), setup));
        findings.others().today().ifPresent(setup -> setup(root.putObject("today"), setup));
        findings.others().choice().ifPresent(choice -> ChoiceJson.write(root.putObject("search"), choice));
        ArrayNode cautions = root.putArray("cautions");
        Cautions.all().forEach(cautions::add);
        return root;
    }

    private static ObjectNode root() {
        return MAPPER.createObjectNode().put("format", FORMAT).put("units", "SI, angles in radians");
    }

    private static void setup(ObjectNode node, Setup setup) {
        node.put("name", setup.name());
        SetupJson.write(node.putObject("setup"), setup);
        SetupJson.verdict(node.putObject("verdict"), setup.verdict());
        LetGoJson.write(node.putObject("let_go"), setup.profile());
        columns(node.putObject("columns"), setup.profile());
        profile(node, setup.profile());
    }

    /** What each column of the limbs' phases is. */
    private static void columns(ObjectNode columns, PressProfile profile) {
        for (Column column : series(profile, 0, Phase.HELD)) {
            columns.putObject(column.head().key())
                    .put("unit", column.unit(UnitSet.SI))
                    .put("meaning", column.head().meaning());
        }
    }

    private static void profile(ObjectNode node, PressProfile profile) {
        node.put("positions", profile.positions());
        ArrayNode limbs = node.putArray("limbs");
        for (int limb = 0; limb < profile.limbs().size(); limb++) {
            ObjectNode one = limbs.addObject();
            one.put("side", profile.limbs().get(limb).side().words());
            one.put("share", profile.limbs().get(limb).limb().share());
            ObjectNode phases = one.putObject("phases");
            for (Phase phase : Phase.values()) {
                ObjectNode series = phases.putObject(phase.words());
                series(profile, limb, phase).forEach(column -> values(series, column));
            }
        }
    }

    private static List<Column> series(PressProfile profile, int limb, Phase phase) {
        List<Spot> spots = Spot.along(profile, limb, phase);
        List<Field> fields = new ArrayList<>(PlaceFields.where());
        fields.addAll(Group.everything(profile));
        return fields.stream().map(field -> field.column(spots)).toList();
    }

    private static void values(ObjectNode series, Column column) {
        ArrayNode values = series.putArray(column.head().key());
        for (int row = 0; row < column.rows(); row++) {
            add(values, column, row);
        }
    }

    private static void add(ArrayNode values, Column column, int row) {
        String exact = column.exact(row, UnitSet.SI);
        if (exact.isEmpty()) {
            values.addNull();
        } else if (column.numeric()) {
            values.add(Double.parseDouble(exact));
        } else {
            values.add(exact);
        }
    }
}
