package counterpull.readings.table;

import counterpull.scenario.fields.Choices;
import counterpull.scenario.fields.Measure;
import counterpull.scenario.format.Words;
import counterpull.scenario.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Sleds and machines on the bench, as tables: a row a reading, up or down. */
final class MachineTables {
    private static final Due FORCE = amount(Dimension.FORCE, "-1000 kN", "1000 kN");
    private static final Due TORQUE = amount(Dimension.TORQUE, "-100000 N·m", "100000 N·m");
    private static final Due MASS = amount(Dimension.MASS, "-10000 kg", "10000 kg");
    private static final Due ANGLE = amount(Dimension.ANGLE, "-3600 deg", "3600 deg");
    private static final Due LENGTH = amount(Dimension.LENGTH, "-1000 m", "1000 m");
    private static final Due RATIO = amount(Dimension.RATIO, "0.01", "20");
    private static final Due SHARE = amount(Dimension.RATIO, "0 %", "50 %");
    private static final Due SMALL_FORCE = amount(Dimension.FORCE, "0.001 N", "500 N");
    private static final Due SMALL_TORQUE = amount(Dimension.TORQUE, "0.001 N·m", "500 N·m");
    private static final Due SMALL_LENGTH = amount(Dimension.LENGTH, "0.01 mm", "20 cm");
    private static final Due SMALL_ANGLE = amount(Dimension.ANGLE, "0 deg", "10 deg");

    private static final Due LIFTS = new Due.OneOf(List.of("counter-clockwise", "clockwise"));

    private static final Which READINGS = new Which(
            "readings",
            List.of("direction", "phase", "kind", "up or down"),
            Map.of("lifting", "up", "raising", "up", "lowering", "down", "back", "down"));

    private static final Wanted PULL = Wanted.must("force", FORCE, "pull", "load", "scale");
    private static final Wanted TURN = Wanted.must("torque", TORQUE, "moment");
    private static final Wanted PLATES = Wanted.must("plates", MASS, "plate mass", "added plates");
    private static final Wanted AT_ANGLE = Wanted.must("angle", ANGLE, "position");

    private MachineTables() {}

    private static Due amount(Dimension dimension, String low, String high) {
        return new Due.Amount(Measure.between(dimension, low, high));
    }

    private static Due oneOf(Choices<?> choices) {
        return new Due.OneOf(List.copyOf(choices.words()));
    }

    static ReadingsTable sled() {
        List<Slot> sled = List.of(
                name(),
                Slot.listed(Wanted.may("rail angle", ANGLE, "rail", "incline"), "laid"),
                Slot.in(Wanted.may("gauge zero sure to", SMALL_ANGLE), "gauge", "zero sure to"),
                Slot.in(Wanted.may("gauge sure to", SMALL_ANGLE), "gauge", "sure to"),
                Slot.of(Wanted.may("foot plate", new Due.OneOf(List.of("upper end", "lower end")))),
                Slot.of(Wanted.may("plates sure to", SHARE)),
                Slot.in(Wanted.may("counterweight", MASS), "counterweight", "mass"),
                Slot.in(Wanted.may("counterweight runs", oneOf(Words.RUN)), "counterweight", "runs"),
                Slot.of(Wanted.may("scale sure to", SMALL_FORCE)));
        Level angles = new Level(
                List.of("rail angle"),
                "rail angle",
                List.of(Slot.of(Wanted.must("laid", ANGLE)), Slot.of(Wanted.may("turned", ANGLE))),
                List.of());
        Level breakaway = new Level(
                List.of("breakaway"), "breakaway", List.of(Slot.of(PLATES)), List.of(items("", "readings", PULL)));
        List<Level> lists = List.of(angles, bothWays(List.of("pulls"), List.of(Slot.of(PLATES)), PULL), breakaway);
        Asked steep = new Asked(List.of("rail angle"), "how steep is the rail (rail angle)?");
        return new ReadingsTable("sled", new Level(List.of("sleds"), "", sled, lists), READINGS, List.of(steep));
    }

    static ReadingsTable machine() {
        Wanted travel = Wanted.must("travel", LENGTH, "position", "handle travel");
        return profile("machine", "force by travel", travel, PULL);
    }

    static ReadingsTable machineByAngle() {
        return profile("machine-by-angle", "force by angle", AT_ANGLE, PULL);
    }

    static ReadingsTable machineTorque() {
        return profile("machine-torque", "torque by angle", AT_ANGLE, TURN);
    }

    private static ReadingsTable profile(String word, String list, Wanted position, Wanted reading) {
        String group = "measured profile";
        Due small = reading == TURN ? SMALL_TORQUE : SMALL_FORCE;
        return table(
                word,
                List.of(name(), Slot.in(Wanted.may("scale sure to", small), group, "scale sure to")),
                bothWays(List.of(group, list), List.of(Slot.of(position)), reading));
    }

    static ReadingsTable stack() {
        String group = "stack";
        List<Slot> machine = List.of(
                name(),
                Slot.in(Wanted.may("tape sure to", SMALL_LENGTH), group, "tape sure to"),
                Slot.in(Wanted.may("scale sure to", SMALL_FORCE), group, "scale sure to"));
        List<Slot> pull = List.of(
                Slot.of(Wanted.must("pin", MASS, "stack", "selected")), Slot.of(Wanted.may("laid on", MASS, "added")));
        List<Slot> run = List.of(
                Slot.of(Wanted.must("way", LENGTH, "handle way")), Slot.of(Wanted.must("rise", LENGTH, "stack rise")));
        return table(
                "machine-stack",
                machine,
                new Level(List.of(group, "runs"), "run", run, List.of()),
                bothWays(List.of(group, "pulls"), pull, PULL),
                items("alone up", "up", PULL, group, "alone"),
                items("alone down", "down", PULL, group, "alone"),
                items("moving mass", "moving mass", Wanted.must("weighed", MASS), group));
    }

    static ReadingsTable lever() {
        String group = "lever";
        List<Slot> machine = List.of(
                name(),
                Slot.in(Wanted.must("lifts", LIFTS), group, "lifts"),
                Slot.in(Wanted.must("arm", LENGTH, "scale arm"), group, "arm"),
                Slot.in(Wanted.may("arm sure to", SMALL_LENGTH), group, "arm sure to"),
                Slot.in(Wanted.may("horn radius", LENGTH), group, "horn", "radius"),
                Slot.in(Wanted.may("horn sure to", SMALL_LENGTH), group, "horn", "sure to"),
                Slot.in(Wanted.may("scale sure to", SMALL_FORCE), group, "scale sure to"));
        Wanted plates = Wanted.may("plates", MASS, "plate mass", "added plates");
        return table(
                "machine-lever",
                machine,
                bothWays(List.of(group, "readings"), List.of(Slot.of(AT_ANGLE), Slot.of(plates)), PULL));
    }

    static ReadingsTable cam() {
        String group = "cam by travel";
        List<Slot> machine = List.of(
                name(),
                Slot.in(Wanted.must("lifts", LIFTS), group, "lifts"),
                Slot.in(Wanted.may("tape sure to", SMALL_LENGTH), group, "tape sure to"));
        Wanted line = Wanted.must("line", LENGTH, "line drawn in", "cable");
        return table(
                "machine-cam",
                machine,
                new Level(
                        List.of(group, "readings"), "", List.of(Slot.of(AT_ANGLE)), List.of(items("", "line", line))));
    }

    static ReadingsTable camByTorque() {
        String group = "cam by torque";
        List<Slot> machine = List.of(
                name(),
                Slot.in(Wanted.must("mass", MASS, "stack"), group, "mass"),
                Slot.in(Wanted.may("mass sure to", MASS), group, "mass sure to"),
                Slot.in(Wanted.must("ratio", RATIO), group, "ratio"),
                Slot.in(Wanted.may("ratio sure to", SHARE), group, "ratio sure to"),
                Slot.in(Wanted.may("scale sure to", SMALL_TORQUE), group, "scale sure to"));
        return table(
                "machine-cam-torque", machine, bothWays(List.of(group, "readings"), List.of(Slot.of(AT_ANGLE)), TURN));
    }

    private static Slot name() {
        return Slot.of(Wanted.must("name", new Due.Words(80), "machine", "sled"));
    }

    private static ReadingsTable table(String word, List<Slot> machine, Level... lists) {
        return new ReadingsTable(
                word, new Level(List.of("machines"), "", machine, List.of(lists)), READINGS, List.of());
    }

    /** Readings up and down with the same setting. */
    private static Level bothWays(List<String> path, List<Slot> setting, Wanted reading) {
        return new Level(path, "", setting, List.of(items("up", "up", reading), items("down", "down", reading)));
    }

    private static Level items(String name, String last, Wanted reading, String... before) {
        List<String> path = new ArrayList<>(List.of(before));
        path.add(last);
        return new Level(path, name, List.of(Slot.itself(reading)), List.of());
    }
}
