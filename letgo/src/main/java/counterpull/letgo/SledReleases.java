package counterpull.letgo;

import counterpull.engine.motion.Phase;
import counterpull.engine.profile.PressProfile;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One loaded sled let go all along its range: held still, and on the way down at the speed that its tempo has there.
 *
 * @param held from the bottom to the top of the range
 * @param lowering at the same places
 */
public record SledReleases(List<Outcome> held, List<Outcome> lowering) {
    /** At how many places of the range a sled is let go. */
    public static final int PLACES = 21;

    public SledReleases {
        held = List.copyOf(held);
        lowering = List.copyOf(lowering);
    }

    /** The sled of a profile, with what is loaded on it, from places that the profile looks at. */
    public static SledReleases of(PressProfile profile) {
        FreeSled sled =
                FreeSled.of(profile.task(), profile.ground().motion().stroke().bottom());
        List<Outcome> held = new ArrayList<>();
        List<Outcome> lowering = new ArrayList<>();
        int last = profile.positions() - 1;
        int places = Math.min(PLACES, profile.positions());
        for (int k = 0; k < places; k++) {
            int position = k * last / (places - 1);
            double place = sled.ends().within(sled.placeOf(profile.plate(position)));
            double speed = profile.ground().motion().speed(Phase.LOWERING, position);
            held.add(LetGo.of(sled, Release.held(place)));
            lowering.add(LetGo.of(sled, new Release(place, speed)));
        }
        return new SledReleases(held, lowering);
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
                .filter(SledReleases::falls)
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
