package counterpull.engine.profile;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;
import java.util.List;

/**
 * The person as the engine sees them.
 *
 * @param mass whole body mass, kg, above zero and above that of the limbs
 * @param limbs legs or arms that take part, left before right; their shares sum to 1
 */
public record Person(double mass, List<Limb> limbs) {
    private static final double ROUNDING = 1e-9;

    public Person {
        Require.positive(mass, "body mass", "kg");
        limbs = List.copyOf(limbs);
        Require.within(limbs.size(), new Require.Limits(1, 2), "limbs that take part", "");
        double sum = 0;
        for (Limb limb : limbs) {
            sum += limb.share();
        }
        Require.within(sum, new Require.Limits(1 - ROUNDING, 1 + ROUNDING), "sum of the limbs' shares", "");
        leftBeforeRight(limbs);
        Require.positive(rest(mass, limbs), "body mass less the legs'", "kg");
    }

    // ties go to the left limb, which is the first one
    private static void leftBeforeRight(List<Limb> limbs) {
        if (limbs.size() == 2 && limbs.get(0).side().compareTo(limbs.get(1).side()) >= 0) {
            throw new Refusal(
                    Fault.OUTSIDE_LIMITS,
                    "sides of the limbs",
                    limbs.get(0).side().ordinal(),
                    limbs.get(1).side().ordinal(),
                    "",
                    "two limbs must be the left one, then the right one");
        }
    }

    /** Mass of the body that is not part of the modelled legs, kg. */
    public double restOfBody() {
        return rest(mass, limbs);
    }

    private static double rest(double mass, List<Limb> limbs) {
        double rest = mass;
        for (Limb limb : limbs) {
            rest -= limb.leg().thigh().mass()
                    + limb.leg().shank().mass()
                    + limb.leg().foot().mass();
        }
        return rest;
    }
}
