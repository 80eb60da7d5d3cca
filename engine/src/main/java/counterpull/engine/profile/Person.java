package counterpull.engine.profile;

import counterpull.engine.Require;
import java.util.List;

/**
 * The person as the engine sees them.
 *
 * @param mass whole body mass, kg, above zero
 * @param limbs the legs that take part, left before right; their shares sum to 1
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
    }

    /** Mass of the body that is not part of the modelled legs, kg. */
    public double restOfBody() {
        double rest = mass;
        for (Limb limb : limbs) {
            rest -= limb.leg().thigh().mass()
                    + limb.leg().shank().mass()
                    + limb.leg().foot().mass();
        }
        return rest;
    }
}
