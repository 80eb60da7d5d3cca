package counterpull.readings.people;

import counterpull.bench.person.Attitude;
import counterpull.bench.person.Attitude.Beyond;
import counterpull.bench.person.Attitude.Lying;
import counterpull.bench.person.Effort;
import counterpull.bench.person.Ended;
import counterpull.bench.person.LimbWeight;
import counterpull.bench.person.Pad;
import counterpull.bench.person.PersonBench.Taped;
import counterpull.bench.person.PersonBench.Visit;
import counterpull.bench.person.RangeBench;
import counterpull.bench.person.RangeBench.End;
import counterpull.bench.person.RangeBench.How;
import counterpull.bench.person.StrengthBench;
import counterpull.bench.person.Way;
import counterpull.bench.person.Way.Same;
import counterpull.engine.body.Action;
import counterpull.engine.body.BodyLength;
import counterpull.engine.body.Joint;
import counterpull.engine.body.Side;
import counterpull.engine.strength.Tester;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.format.Measures;
import counterpull.scenario.format.Words;
import counterpull.scenario.problem.Code;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads one visit. */
final class VisitReader {
    private final Fields fields;
    private final List<StrengthBench> strength = new ArrayList<>();
    private final List<RangeBench> ranges = new ArrayList<>();
    private final List<Taped> lengths = new ArrayList<>();

    VisitReader(Fields fields) {
        this.fields = fields;
    }

    Visit read(LocalDate date) {
        for (Side side : Side.values()) {
            fields.optionalGroup(side.words(), PeopleShapes.SIDE).ifPresent(found -> side(found, side));
        }
        fields.oneOrBoth("left", "right");
        return new Visit(date, strength, ranges, lengths);
    }

    private void side(Fields found, Side side) {
        for (Fields length : found.optionalGroups("lengths", PeopleShapes.LENGTH, Measures.UP_TO_A_HUNDRED)) {
            BodyLength which = length.choice("of", PeopleShapes.BODY_LENGTH);
            List<Double> readings = length.quantities("readings", PeopleShapes.LENGTHS, PeopleShapes.READINGS);
            lengths.add(new Taped(Optional.of(which), side, PeopleShapes.LENGTH_WORDS.get(which), readings));
        }
        for (Fields girth : found.optionalGroups("girths", PeopleShapes.LENGTH, Measures.UP_TO_A_HUNDRED)) {
            String what = girth.text("of");
            lengths.add(new Taped(
                    Optional.empty(),
                    side,
                    what,
                    girth.quantities("readings", PeopleShapes.LENGTHS, PeopleShapes.READINGS)));
        }
        for (Fields range : found.optionalGroups("ranges", PeopleShapes.RANGE, Measures.UP_TO_A_HUNDRED)) {
            ranges.add(range(range, side));
        }
        for (Fields test : found.optionalGroups("strength", PeopleShapes.STRENGTH, Measures.UP_TO_A_HUNDRED)) {
            strength.add(test(test, side));
        }
    }

    private static RangeBench range(Fields range, Side side) {
        Joint joint = range.choice("joint", Words.JOINT);
        End end = range.choice("end", PeopleShapes.END);
        How how = range.choice("how", PeopleShapes.HOW);
        return new RangeBench(
                new RangeBench.Which(joint, side, end, how),
                range.choice("with", PeopleShapes.GAUGE),
                range.quantities("readings", PeopleShapes.ANGLES, PeopleShapes.READINGS));
    }

    private static StrengthBench test(Fields test, Side side) {
        Action action = test.choice("action", Words.ACTION);
        double angle = test.required("angle", PeopleShapes.ANGLES);
        List<Effort> efforts = new ArrayList<>();
        for (Fields effort : test.groups("efforts", PeopleShapes.EFFORT, PeopleShapes.READINGS)) {
            double force = effort.required("force", PeopleShapes.FORCE);
            efforts.add(new Effort(
                    force, effort.optionalChoice("ended", PeopleShapes.ENDED).orElse(Ended.REACHED)));
        }
        Pad pad = new Pad(
                test.required("pad", PeopleShapes.LENGTHS),
                test.orElse("pad sure to", PeopleShapes.SURE_TO, Pad.USUAL_SD),
                test.orElse("off square", Measures.ANGLE, 0));
        StrengthBench.Setting setting = new StrengthBench.Setting(pad, weight(test));
        return new StrengthBench(new StrengthBench.Subject(action, side, angle), efforts, setting, way(test));
    }

    private static Way way(Fields test) {
        Tester tester = test.choice("with", PeopleShapes.TESTER);
        return new Way(
                tester,
                test.optional("between days", Measures.SPREAD),
                test.optionalChoice("tester", PeopleShapes.SAME).orElse(Same.TESTER));
    }

    /** How the limb lay, or what it weighed; only one can hold. */
    private static LimbWeight weight(Fields test) {
        Optional<String> given = test.oneOf("limb", "limb at", "resting");
        Optional<Lying> lying = test.optionalChoice("lying", PeopleShapes.LYING);
        Beyond beyond = test.optionalChoice("beyond", PeopleShapes.BEYOND).orElse(Beyond.STRAIGHT);
        if (given.isEmpty()) {
            return new LimbWeight.Borne();
        }
        return switch (given.get()) {
            case "resting" -> new LimbWeight.Resting(test.required("resting", PeopleShapes.FORCE));
            case "limb at" -> attitude(test, lying, test.required("limb at", Measures.ANGLE), beyond);
            default -> held(test, lying, beyond);
        };
    }

    private static LimbWeight held(Fields test, Optional<Lying> lying, Beyond beyond) {
        return switch (test.choice("limb", PeopleShapes.LIMB)) {
            case BORNE -> new LimbWeight.Borne();
            case HANGING -> new LimbWeight.FromTable(Attitude.of(-Math.PI / 2, lying.orElse(Lying.SITTING), beyond));
            case LEVEL -> attitude(test, lying, 0, beyond);
        };
    }

    /** Which way a limb points that does not hang depends on how the person lay. */
    private static LimbWeight attitude(Fields test, Optional<Lying> lying, double aboveLevel, Beyond beyond) {
        if (lying.isEmpty()) {
            test.reportHere(
                    Code.MISSING_KEY,
                    "how the person lay is missing: the sign of the limb's weight depends on it",
                    "Give lying: " + String.join(", ", PeopleShapes.LYING.words()));
        }
        return new LimbWeight.FromTable(Attitude.of(aboveLevel, lying.orElse(Lying.SITTING), beyond));
    }
}
