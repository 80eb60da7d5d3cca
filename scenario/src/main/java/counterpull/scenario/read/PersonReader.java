package counterpull.scenario.read;

import static counterpull.scenario.read.Measures.AGE;
import static counterpull.scenario.read.Measures.BODY_MASS;
import static counterpull.scenario.read.Measures.STATURE;

import counterpull.engine.body.SegmentTable;
import counterpull.engine.body.Sex;
import counterpull.engine.body.Side;
import counterpull.scenario.content.Client;
import counterpull.scenario.content.Client.Build;
import counterpull.scenario.content.ClientLimb;
import counterpull.scenario.fields.Fields;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the person. */
final class PersonReader {
    private PersonReader() {}

    static Optional<Client> read(Fields top) {
        return top.group("person", Shapes.PERSON).flatMap(PersonReader::person);
    }

    private static Optional<Client> person(Fields fields) {
        String name = fields.text("name");
        Sex sex = fields.choice("sex", Words.SEX);
        double age = fields.required("age", AGE);
        double stature = fields.required("stature", STATURE);
        double mass = fields.required("mass", BODY_MASS);
        SegmentTable table = fields.choice("segment table", Words.TABLE);
        Build build = new Build(sex, age, stature, mass);
        List<ClientLimb> limbs = fields.group("limbs", Shapes.LIMBS)
                .map(found -> limbs(found, new Client(name, build, table, List.of())))
                .orElse(List.of());
        return fields.built(() -> new Client(name, build, table, limbs));
    }

    private static List<ClientLimb> limbs(Fields fields, Client client) {
        List<ClientLimb> limbs = new ArrayList<>();
        for (Side side : Side.values()) {
            fields.optionalGroup(side.words(), Shapes.LIMB)
                    .flatMap(found -> LimbReader.read(found, side, client))
                    .ifPresent(limbs::add);
        }
        fields.oneOrBoth("left", "right");
        return limbs;
    }
}
