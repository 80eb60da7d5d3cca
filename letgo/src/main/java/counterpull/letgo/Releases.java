package counterpull.letgo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One loaded machine let go all along its range: held still, and on the way down at the speed that its tempo has there.
 *
 * @param held from the bottom to the top of the range
 * @param lowering at the same places
 */
public record Releases(List<Outcome> held, List<Outcome> lowering) {
    public Releases {
        held = List.copyOf(held);
        lowering = List.copyOf(lowering);
    }

    /**
     * A machine let go at several places.
     *
     * @param machine the machine
     * @param places where, from the bottom to the top of the range, m or rad
     * @param speeds how fast it is there on the way down, m/s or rad/s, upward positive; as many
     */
    static Releases of(LoneMachine machine, double[] places, double[] speeds) {
        List<Outcome> held = new ArrayList<>();
        List<Outcome> lowering = new ArrayList<>();
        for (int k = 0; k < places.length; k++) {
            double place = machine.ends().within(places[k]);
            held.add(LetGo.of(machine, Release.held(place)));
            lowering.add(LetGo.of(machine, new Release(place, speeds[k])));
        }
        return new Releases(held, lowering);
    }

    /** At which of so many positions a machine is let go: evenly, both ends included. */
    static int[] positions(int positions, int most) {
        int[] chosen = new int[Math.min(most, positions)];
        for (int k = 0; k < chosen.length; k++) {
            chosen[k] = k * (positions - 1) / (chosen.length - 1);
        }
        return chosen;
    }

    /** Held still at the bottom of the range, then let go. */
    public Outcome atBottom() {
        return held.get(0);
    }

    /** Held still at the top of the range, then let go. */
    public Outcome atTop() {
        return held.get(held.size() - 1);
    }

    /** Every release, those from rest first. */
    public List<Outcome> all() {
        List<Outcome> all = new ArrayList<>(held);
        all.addAll(lowering);
        return all;
    }

    /** The one that gets to the lower end with the most energy of motion; empty where none gets there moving. */
    public Optional<Outcome> hardest() {
        return all().stream()
                .filter(Releases::falls)
                .max(Comparator.comparingDouble(outcome -> outcome.end().kinetic()));
    }

    private static boolean falls(Outcome outcome) {
        boolean down = outcome.ending() == Ending.ON_THE_STOP || outcome.ending() == Ending.NOTHING_CATCHES_IT;
        return down && outcome.end().kinetic() > 0;
    }

    /** Of those that are pulled up by themselves from rest, the one that gets fastest; empty where none is. */
    public Optional<Outcome> pulledUp() {
        return held.stream()
                .filter(Outcome::pulledUp)
                .max(Comparator.comparingDouble(outcome -> outcome.way().fastest()));
    }

    /** The lowest place at which it stays where it is let go, held by friction alone; empty where it moves everywhere. */
    public Optional<Outcome> hangs() {
        return held.stream()
                .filter(outcome -> outcome.ending() == Ending.AT_REST)
                .filter(outcome -> outcome.first().isEmpty())
                .findFirst();
    }

    /** Whether any of them stretches a rubber to its tested length. */
    public boolean overstretches() {
        return all().stream().anyMatch(outcome -> outcome.ending() == Ending.RUBBER_AT_TESTED_LENGTH);
    }

    /** The largest share of energy that any account leaves unexplained. */
    public double largestError() {
        return all().stream()
                .mapToDouble(outcome -> outcome.energy().error())
                .max()
                .orElse(0);
    }
}
