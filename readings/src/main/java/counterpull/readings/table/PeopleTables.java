package counterpull.readings.table;

import counterpull.scenario.fields.Choices;
import counterpull.scenario.fields.Measure;
import counterpull.scenario.format.Measures;
import counterpull.scenario.format.Words;
import counterpull.scenario.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What is measured on people, as tables: strength tests an effort a row, ranges of motion and taped lengths a reading a row. */
final class PeopleTables {
    private static final Due NAME = new Due.Words(80);
    private static final Due FORCE = new Due.Amount(Measure.between(Dimension.FORCE, "-10 kN", "10 kN"));
    private static final Due LENGTH = new Due.Amount(Measure.between(Dimension.LENGTH, "0 m", "3 m"));
    private static final Due ANGLE = new Due.Amount(Measure.between(Dimension.ANGLE, "-360 deg", "360 deg"));
    private static final Due TESTER = oneOf(Words.TESTER);
    private static final Due GAUGE = new Due.OneOf(List.of("goniometer", "inclinometer", "phone", "eye"));

    private static final Which SIDE = new Which(
            "side",
            List.of("limb side", "left or right"),
            Map.of("l", "left", "lt", "left", "r", "right", "rt", "right"));
    private static final Asked LIMB = new Asked(
            List.of("limb", "limb at", "resting"),
            "is the limb's own weight taken off these forces already (limb: borne)? If not: did the limb hang or lie level (limb), at what"
                    + " angle above level was it (limb at), or what did the relaxed limb show (resting)?");

    private PeopleTables() {}

    private static Due oneOf(Choices<?> choices) {
        return new Due.OneOf(List.copyOf(choices.words()));
    }

    static ReadingsTable tests() {
        return people("person-tests", "strength", PeopleTables::tests, List.of(LIMB));
    }

    static ReadingsTable ranges() {
        return people("person-ranges", "ranges", PeopleTables::ranges, List.of());
    }

    static ReadingsTable lengths() {
        return people("person-lengths", "lengths", PeopleTables::lengths, List.of());
    }

    static ReadingsTable girths() {
        return people("person-girths", "girths", PeopleTables::girths, List.of());
    }

    /** A list of one side, by the side's name and the list's key. */
    private interface OfSide {
        Level list(String side, String key);
    }

    private static ReadingsTable people(String word, String key, OfSide list, List<Asked> asked) {
        Level visits = new Level(
                List.of("visits"),
                "",
                List.of(Slot.of(Wanted.must("date", new Due.Words(10), "day", "visit"))),
                List.of(list.list("left", key), list.list("right", key)));
        List<Slot> person = List.of(
                Slot.of(Wanted.must("name", NAME, "person", "client", "who")),
                Slot.of(Wanted.must("sex", oneOf(Words.SEX))),
                Slot.of(Wanted.must("age", new Due.Amount(Measures.AGE))),
                Slot.of(Wanted.must("stature", new Due.Amount(Measures.STATURE), "height", "body height")),
                Slot.of(Wanted.must("mass", new Due.Amount(Measures.BODY_MASS), "weight", "body mass", "body weight")),
                Slot.of(Wanted.may("segment table", oneOf(Words.TABLE))));
        return new ReadingsTable(word, new Level(List.of("people"), "", person, List.of(visits)), SIDE, asked);
    }

    private static Level tests(String side, String key) {
        List<Slot> test = new ArrayList<>(List.of(
                Slot.of(Wanted.must("action", oneOf(Words.ACTION), "test", "movement")),
                Slot.of(Wanted.must("angle", ANGLE, "joint angle")),
                Slot.of(Wanted.must("pad", LENGTH, "lever", "pad distance", "arm")),
                Slot.of(Wanted.may("pad sure to", LENGTH)),
                Slot.of(Wanted.may("off square", ANGLE)),
                Slot.of(Wanted.may(
                        "lying",
                        new Due.OneOf(List.of("sitting", "standing", "on the back", "face down", "on the side")),
                        "position",
                        "posture")),
                Slot.of(Wanted.may("limb", new Due.OneOf(List.of("hanging", "level", "borne")))),
                Slot.of(Wanted.may("limb at", ANGLE)),
                Slot.of(Wanted.may("beyond", new Due.OneOf(List.of("straight", "hanging", "borne")))),
                Slot.of(Wanted.may("resting", FORCE, "resting force")),
                Slot.of(Wanted.must("with", TESTER, "held", "fixed", "instrument")),
                Slot.of(Wanted.may("tester", new Due.OneOf(List.of("same", "another")))),
                Slot.of(Wanted.may("between days", new Due.Amount(Measures.SPREAD)))));
        Level efforts = new Level(
                List.of("efforts"),
                "",
                List.of(
                        Slot.of(Wanted.must("force", FORCE, "peak force", "load")),
                        Slot.of(Wanted.may("ended", new Due.OneOf(List.of("reached", "pain", "slip", "overpowered"))))),
                List.of());
        return new Level(List.of(side, key), side, test, List.of(efforts));
    }

    private static Level ranges(String side, String key) {
        List<Slot> range = List.of(
                Slot.of(Wanted.must("joint", oneOf(Words.JOINT))),
                Slot.of(Wanted.must("end", new Due.OneOf(List.of("least", "most")))),
                Slot.of(Wanted.must("how", new Due.OneOf(List.of("active", "pain free")))),
                Slot.of(Wanted.must("with", GAUGE, "instrument")));
        return new Level(List.of(side, key), side, range, List.of(readings(ANGLE)));
    }

    private static Level lengths(String side, String key) {
        List<String> parts =
                List.of("thigh", "shank", "foot", "ankle height", "ankle from heel", "upper arm", "forearm");
        return new Level(
                List.of(side, key),
                side,
                List.of(Slot.of(Wanted.must("of", new Due.OneOf(parts), "segment", "part"))),
                List.of(readings(LENGTH)));
    }

    private static Level girths(String side, String key) {
        return new Level(
                List.of(side, key),
                side,
                List.of(Slot.of(Wanted.must("of", NAME, "where"))),
                List.of(readings(LENGTH)));
    }

    private static Level readings(Due due) {
        return new Level(
                List.of("readings"),
                "",
                List.of(Slot.itself(Wanted.must("reading", due, "value", "measured"))),
                List.of());
    }
}
