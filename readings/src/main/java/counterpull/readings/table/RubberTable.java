package counterpull.readings.table;

import counterpull.scenario.fields.Measure;
import counterpull.scenario.format.Measures;
import counterpull.scenario.units.Dimension;
import java.util.List;
import java.util.Map;

/** Rubber on the bench as a table: a row a reading, of pulls, of natural lengths, of earlier tests. */
final class RubberTable {
    private static final Due LENGTH = new Due.Amount(Measure.between(Dimension.LENGTH, "1 mm", "1000 m"));
    private static final Due SMALL_LENGTH = new Due.Amount(Measure.between(Dimension.LENGTH, "0.01 mm", "20 cm"));
    private static final Due FORCE = new Due.Amount(Measure.between(Dimension.FORCE, "0 N", "100 kN"));
    private static final Due SMALL_FORCE = new Due.Amount(Measure.between(Dimension.FORCE, "0.001 N", "500 N"));
    private static final Due DATE = new Due.Words(10);

    private static final Which READINGS = new Which(
            "readings",
            List.of("way", "direction", "phase", "kind"),
            Map.of(
                    "stretch", "stretching",
                    "loading", "stretching",
                    "up", "stretching",
                    "out", "stretching",
                    "back", "letting go",
                    "release", "letting go",
                    "unloading", "letting go",
                    "down", "letting go"));

    private static final Asked NATURAL =
            new Asked(List.of("natural length"), "how long is the piece when nothing pulls at it (natural length)?");

    private RubberTable() {}

    static ReadingsTable rubber() {
        return new ReadingsTable(
                "rubber", new Level(List.of("rubber"), "", piece(), lists()), READINGS, List.of(NATURAL));
    }

    private static List<Slot> piece() {
        return List.of(
                Slot.of(Wanted.must("tag", new Due.Words(80), "piece", "tube", "band", "name")),
                Slot.in(Wanted.may("bore", new Due.Amount(Measures.BORE)), "size", "bore"),
                Slot.in(Wanted.may("wall", new Due.Amount(Measures.THICKNESS)), "size", "wall"),
                Slot.in(Wanted.may("width", new Due.Amount(Measures.THICKNESS)), "size", "width"),
                Slot.in(Wanted.may("thickness", new Due.Amount(Measures.THICKNESS)), "size", "thickness"),
                Slot.of(Wanted.may("strands", new Due.Whole(1, 12))),
                Slot.of(Wanted.may("before", new Due.OneOf(List.of("first stretch", "cycled before", "not noted")))),
                Slot.listed(Wanted.may("natural length", LENGTH, "slack length", "rest length")),
                Slot.of(Wanted.may("natural length sure to", SMALL_LENGTH)),
                Slot.of(Wanted.may("scale sure to", SMALL_FORCE)),
                Slot.of(Wanted.may("tape sure to", SMALL_LENGTH)),
                Slot.in(Wanted.may("tested on", DATE), "record", "tested on"),
                Slot.in(Wanted.may("today", DATE), "record", "today"),
                Slot.in(Wanted.may("compare at", LENGTH), "record", "compare at"),
                Slot.in(Wanted.may("stretches", new Due.Whole(0, 1_000_000)), "record", "stretches"));
    }

    private static List<Level> lists() {
        Wanted length = Wanted.must("length", LENGTH, "stretched to", "stretched length");
        Wanted force = Wanted.must("force", FORCE, "pull", "load", "scale");
        List<Slot> pull = List.of(Slot.of(length), Slot.of(force));
        List<Slot> earlier =
                List.of(Slot.of(Wanted.must("on", DATE)), Slot.in(length, "natural length"), Slot.of(force));
        return List.of(
                list("stretching", pull, "stretching"),
                list("letting go", pull, "letting go"),
                list("first stretch", pull, "first stretch"),
                list("natural length", List.of(Slot.itself(length)), "natural length"),
                list("natural length after", List.of(Slot.itself(length)), "natural length after"),
                list("earlier test", earlier, "record", "earlier tests"),
                list(
                        "damage",
                        List.of(Slot.itself(Wanted.must("seen", new Due.Words(80), "damage"))),
                        "record",
                        "damage"));
    }

    private static Level list(String name, List<Slot> slots, String... path) {
        return new Level(List.of(path), name, slots, List.of());
    }
}
