package counterpull.letgo;

import counterpull.engine.profile.ExerciseProfile;
import java.util.List;

/**
 * Every machine of an exercise let go all along its range, held and on the way down. It is followed down to the bottom of the range: an exercise says
 * nothing about a stop, so that nothing is known to catch it there. The whole machine with its whole load falls, whatever share of it a
 * limb bears; where two limbs differ its places are those of the first.
 *
 * @param machines the machines that move by themselves, in the order of the exercise
 * @param others what is not followed
 */
public record ExerciseReleases(List<MachineReleases> machines, List<LeftAlone> others) {
    /** At how many places of the range a machine is let go. */
    public static final int PLACES = 21;

    public ExerciseReleases {
        machines = List.copyOf(machines);
        others = List.copyOf(others);
    }

    /** What a profile's machines do, with what is loaded on them. */
    public static ExerciseReleases of(ExerciseProfile profile) {
        return new MachineParts(profile).let();
    }

    /** The largest share of energy that any account leaves unexplained. */
    public double largestError() {
        return machines.stream()
                .mapToDouble(machine -> machine.releases().largestError())
                .max()
                .orElse(0);
    }
}
