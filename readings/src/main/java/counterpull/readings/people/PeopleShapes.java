package counterpull.readings.people;

import counterpull.bench.person.AngleGauge;
import counterpull.bench.person.Attitude.Beyond;
import counterpull.bench.person.Attitude.Lying;
import counterpull.bench.person.Ended;
import counterpull.bench.person.RangeBench.End;
import counterpull.bench.person.RangeBench.How;
import counterpull.bench.person.Way.Same;
import counterpull.engine.body.BodyLength;
import counterpull.engine.strength.Tester;
import counterpull.scenario.fields.Choices;
import counterpull.scenario.fields.Measure;
import counterpull.scenario.fields.Shape;
import counterpull.scenario.fields.Span;
import counterpull.scenario.format.Words;
import counterpull.scenario.units.Dimension;
import java.util.Locale;
import java.util.Map;

/** Keys, words and limits of a measured person. */
final class PeopleShapes {
    static final Shape PERSON =
            Shape.of("person measured", "name", "sex", "age", "stature", "mass", "segment table", "visits");
    static final Shape VISIT = Shape.of("visit", "date", "left", "right");
    static final Shape SIDE = Shape.of("side", "lengths", "girths", "ranges", "strength");
    static final Shape LENGTH = Shape.of("length", "of", "readings");
    static final Shape RANGE = Shape.of("range measured", "joint", "end", "how", "with", "readings");
    static final Shape STRENGTH = Shape.of(
            "strength test measured",
            "action",
            "angle",
            "efforts",
            "pad",
            "pad sure to",
            "off square",
            "lying",
            "limb",
            "limb at",
            "beyond",
            "resting",
            "with",
            "tester",
            "between days");
    static final Shape EFFORT = Shape.of("effort", "force", "ended");

    static final Choices<Ended> ENDED = Choices.of(PeopleShapes::lower, Ended.values());
    static final Choices<End> END = Choices.of(End::words, End.values());
    static final Choices<How> HOW = Choices.of(how -> how == How.ACTIVE ? "active" : "pain free", How.values());
    static final Choices<AngleGauge> GAUGE = Choices.of(AngleGauge::words, AngleGauge.values());
    static final Choices<Lying> LYING = Choices.of(PeopleShapes::lower, Lying.values());
    static final Choices<Beyond> BEYOND = Choices.of(PeopleShapes::lower, Beyond.values());
    static final Choices<Same> SAME = Choices.of(same -> same == Same.TESTER ? "same" : "another", Same.values());
    static final Choices<Tester> TESTER =
            Choices.of(Words.TESTER::word, Tester.HAND_HELD, Tester.BELT_FIXED, Tester.ISOKINETIC);
    static final Choices<Held> LIMB = Choices.of(PeopleShapes::lower, Held.values());

    static final Map<BodyLength, String> LENGTH_WORDS = Map.of(
            BodyLength.THIGH, "thigh",
            BodyLength.SHANK, "shank",
            BodyLength.FOOT, "foot",
            BodyLength.ANKLE_HEIGHT, "ankle height",
            BodyLength.ANKLE_FROM_HEEL, "ankle from heel",
            BodyLength.UPPER_ARM, "upper arm",
            BodyLength.FOREARM, "forearm");
    static final Choices<BodyLength> BODY_LENGTH = Choices.of(
            LENGTH_WORDS::get,
            BodyLength.THIGH,
            BodyLength.SHANK,
            BodyLength.FOOT,
            BodyLength.ANKLE_HEIGHT,
            BodyLength.ANKLE_FROM_HEEL,
            BodyLength.UPPER_ARM,
            BodyLength.FOREARM);

    /** Wide, so that the bench names a reading that cannot be, in its own words. */
    static final Measure FORCE = Measure.between(Dimension.FORCE, "-100 kN", "100 kN");

    static final Measure LENGTHS = Measure.between(Dimension.LENGTH, "-100 m", "100 m");
    static final Measure ANGLES = Measure.between(Dimension.ANGLE, "-720 deg", "720 deg");
    static final Measure SURE_TO = Measure.between(Dimension.LENGTH, "0 mm", "10 cm");
    static final Span READINGS = new Span(0, 50);
    static final Span VISITS = new Span(1, 200);

    /** How the limb beyond the joint lay. */
    enum Held {
        HANGING,
        LEVEL,
        BORNE
    }

    private PeopleShapes() {}

    private static String lower(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
