package counterpull.scenario.read;

import static counterpull.scenario.format.Measures.AGE;
import static counterpull.scenario.format.Measures.BODY_MASS;
import static counterpull.scenario.format.Measures.LIMB_LENGTH;
import static counterpull.scenario.format.Measures.STATURE;

import counterpull.engine.body.SegmentTable;
import counterpull.engine.body.Sex;
import counterpull.engine.body.Side;
import counterpull.scenario.content.Client;
import counterpull.scenario.content.Client.Build;
import counterpull.scenario.content.ClientLimb;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.format.Shapes;
import counterpull.scenario.format.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the person. */
final class PersonReader {
    private PersonReader() {}

    static Optional<Client> read(Fields top, RangesNeeded needed) {
        return top.group("person", Shapes.PERSON).flatMap(fields -> person(fields, needed));
    }

    private static Optional<Client> person(Fields fields, RangesNeeded needed) {
        String name = fields.text("name");
        Sex sex = fields.choice("sex", Words.SEX);
        double age = fields.required("age", AGE);
        double stature = fields.required("stature", STATURE);
        double mass = fields.required("mass", BODY_MASS);
        OptionalDouble trunk = fields.optional("trunk", LIMB_LENGTH);
        SegmentTable table = fields.choice("segment table", Words.TABLE);
        Optional<Double> length = trunk.isPresent() ? Optional.of(trunk.getAsDouble()) : Optional.empty();
        Build build = new Build(sex, age, stature, mass);
        List<ClientLimb> limbs = fields.group("limbs", Shapes.LIMBS)
                .map(found ->
                        limbs(found, new LimbReader.Person(new Client(name, build, table, List.of()), length, needed)))
                .orElse(List.of());
        return fields.built(() -> new Client(name, build, table, limbs));
    }

    private static List<ClientLimb> limbs(Fields fields, LimbReader.Person person) {
        List<ClientLimb> limbs = new ArrayList<>();
        for (Side side : Side.values()) {
            fields.optionalGroup(side.words(), Shapes.LIMB)
                    .flatMap(found -> LimbReader.read(found, side, person))
                    .ifPresent(limbs::add);
        }
        fields.oneOrBoth("left", "right");
        return limbs;
    }
}
