package counterpull.engine.profile;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;
import counterpull.engine.load.Resistance;
import counterpull.engine.motion.Motion;
import java.util.List;

/**
 * What is done against what: a movement and everything that resists along it.
 *
 * @param motion the movement
 * @param resists what weighs or pulls, any number; the chosen plates go on at most one of them
 * @param borne fraction of the whole load (and, standing, of the trunk) that the limbs looked at bear together, above 0 to 1; below
 *     1 where another limb that is left out takes the rest (the rear leg of a split squat)
 */
public record Exercise(Motion motion, List<Resistance> resists, double borne) {
    public Exercise {
        resists = List.copyOf(resists);
        Require.positive(borne, "fraction of the load that the limbs bear", "");
        Require.within(borne, new Require.Limits(0, 1), "fraction of the load that the limbs bear", "");
        int takers = 0;
        for (Resistance resistance : resists) {
            takers += resistance.takesPlates() ? 1 : 0;
        }
        if (takers > 1) {
            throw new Refusal(
                    Fault.OUTSIDE_LIMITS,
                    "places where the chosen plates go",
                    takers,
                    1,
                    "",
                    "the chosen plates can go in one place only: give the others a mass of their own");
        }
    }

    /** Whether chosen plates go anywhere. */
    public boolean takesPlates() {
        return resists.stream().anyMatch(Resistance::takesPlates);
    }
}
