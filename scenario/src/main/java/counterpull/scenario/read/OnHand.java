package counterpull.scenario.read;

import counterpull.engine.choice.PlateKind;
import counterpull.engine.load.ElasticLine;
import counterpull.scenario.content.Bounds;
import counterpull.scenario.content.Loaded;
import counterpull.scenario.content.Loaded.Plates;
import counterpull.scenario.content.Machine;
import counterpull.scenario.content.Machine.PlatesGoOn;
import counterpull.scenario.content.Piece;
import counterpull.scenario.content.Room;
import counterpull.scenario.problem.Code;
import counterpull.scenario.problem.Found;
import counterpull.scenario.problem.Place;
import counterpull.scenario.problem.Problem;
import counterpull.scenario.problem.Problems;
import counterpull.scenario.units.Dimension;
import counterpull.scenario.units.Units;
import java.util.List;
import java.util.stream.Stream;

/** Checks that what is on the machine is on hand, even, and within the machine's rating. */
final class OnHand {
    private static final double ROUNDING = 1e-9;

    private final Problems problems;
    private final Place place;

    OnHand(Problems problems, Place place) {
        this.problems = problems;
        this.place = place;
    }

    void check(Loaded loaded, Room room, Machine machine, Bounds bounds) {
        enoughPlates(loaded.plates(), room);
        enoughRubber(loaded, room);
        stacked(loaded.plates(), machine);
        double evenEnough = machine.platesGoOn() == PlatesGoOn.IN_PAIRS ? 0 : bounds.unevenSides();
        most(
                loaded.plates().unevenness(),
                evenEnough,
                "one side carries more plates than the other",
                "Load both sides alike, or let plates go on one at a time on this machine");
        most(
                loaded.plates().total(),
                machine.carriage().mostPlates(),
                "more plates than the machine is rated for",
                "Take some off");
    }

    private void stacked(Plates plates, Machine machine) {
        boolean onStack = !machine.sled().platesRide();
        if (onStack && !(plates.left().isEmpty() && plates.right().isEmpty())) {
            problems.add(Problem.of(
                    Code.CONTRADICTION,
                    place,
                    "this machine's plates are on its stack, which has no sides",
                    "Give what is selected as \"plates in the middle\""));
        }
    }

    private void enoughPlates(Plates plates, Room room) {
        List<Double> on = Stream.of(plates.left(), plates.right(), plates.middle())
                .flatMap(List::stream)
                .toList();
        if (room.plates().isEmpty()) {
            return;
        }
        for (double mass : on.stream().distinct().toList()) {
            int needed = (int) on.stream().filter(other -> other == mass).count();
            int have = room.plates().stream()
                    .filter(kind -> Math.abs(kind.mass() - mass) < ROUNDING)
                    .mapToInt(PlateKind::count)
                    .sum();
            enough(needed, have, "plates of " + mass(mass));
        }
    }

    private void enoughRubber(Loaded loaded, Room room) {
        for (Piece piece : room.pieces()) {
            int needed = loaded.lines().stream()
                    .filter(line -> line.rubber().tag().equals(piece.tag()))
                    .map(ElasticLine::pieces)
                    .mapToInt(ElasticLine.Pieces::count)
                    .sum();
            enough(needed, piece.count(), "pieces of " + piece.tag());
        }
    }

    private void enough(int needed, int have, String what) {
        if (needed > have) {
            problems.add(new Problem(
                    Code.NOT_ON_HAND,
                    place,
                    new Found(String.valueOf(needed), "", String.valueOf(have)),
                    needed + " " + what + " are on the machine, but the kit has " + have,
                    "Correct the setup or the kit"));
        }
    }

    private void most(double value, double limit, String message, String hint) {
        if (value > limit + ROUNDING) {
            problems.add(new Problem(
                    Code.OUTSIDE_LIMITS,
                    place,
                    new Found(mass(value), "kg", mass(limit)),
                    message + ": " + mass(value) + ", limit " + mass(limit),
                    hint));
        }
    }

    private static String mass(double kilograms) {
        return Units.METRIC.written(kilograms, Dimension.MASS).toString();
    }
}
