package counterpull.engine.strength;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.body.Action;
import counterpull.engine.body.Sex;

/**
 * Greatest voluntary torque of one action of the leg against joint angle and angular velocity, one row of the
 * published table.
 *
 * <p>T = C1 · W · cos(C2 (q − C3)) held still; W body weight × stature (N·m), q the joint's anatomical angle (rad;
 * hip flexion, knee flexion with 0 straight, ankle dorsiflexion positive). Shortening at w ≥ 0 rad/s multiplies it by
 * (2 C4 C5 + w (C5 − 3 C4)) / (2 C4 C5 + w (2 C5 − 4 C4)): C4 and C5 are the speeds at which 75 % and 50 % of the
 * held torque are left. T is a positive number in the sense of the action.
 *
 * <p>Valid between the angles that were measured (see {@link SourceAngles}) and 18 years upwards, for healthy people.
 * It is a net torque about one joint, one limb: muscles that cross two joints are neglected, although the hamstrings,
 * rectus femoris and gastrocnemius make a joint's strength depend on its neighbour's angle.
 *
 * <p>Source: Anderson DE, Madigan ML, Nussbaum MA 2007, J Biomech 40:3105–3113, equations 1–9 and Table 3;
 * coefficients looked up in a public copy, the eccentric factor from memory.
 *
 * <p>Ours differs: the cosine and the shortening factor are cut off at 0; the passive torque and the eccentric factor
 * can be computed here but no curve uses them, because the mean passive coefficients explode in deep hip flexion and
 * the fitted eccentric factor falls below 1 in some rows.
 *
 * @param action the action
 * @param sex the half of the sample
 * @param group the age group
 * @param mean the row's mean coefficients
 * @param deviation their standard deviations; correlated in the sample, so never to be drawn independently
 */
public record Anderson2007(Action action, Sex sex, AgeGroup group, Coefficients mean, Coefficients deviation) {
    /**
     * Coefficients in the paper's letters.
     *
     * @param held C1 to C3
     * @param speed C4 to C6
     * @param passive B1, k1, B2, k2
     */
    public record Coefficients(Held held, Speed speed, Passive passive) {
        static Coefficients of(double[] c) {
            return new Coefficients(
                    new Held(c[0], c[1], c[2]), new Speed(c[3], c[4], c[5]), new Passive(c[6], c[7], c[8], c[9]));
        }
    }

    /**
     * The torque held still.
     *
     * @param c1 C1, its peak as a share of body weight × stature
     * @param c2 C2, how narrow the curve is: the cosine's argument in rad per rad of joint angle
     * @param c3 C3, the angle of greatest torque, rad
     */
    public record Held(double c1, double c2, double c3) {}

    /**
     * What speed does.
     *
     * @param c4 C4, the speed that leaves 75 % of the held torque, rad/s
     * @param c5 C5, the speed that leaves 50 %, rad/s
     * @param c6 C6, slope of the eccentric factor, s/rad
     */
    public record Speed(double c4, double c5, double c6) {}

    /**
     * The passive torque B1 exp(k1 q) + B2 exp(k2 q).
     *
     * @param b1 B1, N·m
     * @param k1 1/rad
     * @param b2 B2, N·m
     * @param k2 1/rad
     */
    public record Passive(double b1, double k1, double b2, double k2) {}

    /** Whether the table has rows for this action. */
    public static boolean covers(Action action) {
        for (Anderson2007 row : Anderson2007Table3.ROWS) {
            if (row.action == action) {
                return true;
            }
        }
        return false;
    }

    /** The row for this action, sex and age group; a refusal where the table has none. */
    public static Anderson2007 row(Action action, Sex sex, AgeGroup group) {
        for (Anderson2007 row : Anderson2007Table3.ROWS) {
            if (row.action == action && row.sex == sex && row.group == group) {
                return row;
            }
        }
        throw notPublished(action);
    }

    static Refusal notPublished(Action action) {
        return new Refusal(
                Fault.OUTSIDE_PUBLISHED_RANGE,
                "strength of " + action.words(),
                Double.NaN,
                Double.NaN,
                "",
                "no published strength curve is at hand for " + action.words() + ": give the person's own");
    }

    /**
     * Torque held still, N·m, never below 0.
     *
     * @param angle anatomical angle, rad
     * @param weightTimesStature body weight (N) × stature (m), N·m
     */
    public double held(double angle, double weightTimesStature) {
        double argument = mean.held.c2 * (angle - mean.held.c3);
        // Past a quarter period the cosine comes back up: there is no second hump of strength.
        return Math.abs(argument) >= Math.PI / 2 ? 0 : mean.held.c1 * weightTimesStature * Math.cos(argument);
    }

    /** Share of the held torque left while shortening at {@code speed} ≥ 0 rad/s, in [0, 1]. */
    public double shorteningFactor(double speed) {
        double c4 = mean.speed.c4;
        double c5 = mean.speed.c5;
        double factor = (2 * c4 * c5 + speed * (c5 - 3 * c4)) / (2 * c4 * c5 + speed * (2 * c5 - 4 * c4));
        return Math.max(0, factor);
    }

    /**
     * The published factor while lengthening at {@code speed} ≤ 0 rad/s. No curve uses it: it can fall below 1, even
     * below 0.
     */
    public double lengtheningFactor(double speed) {
        double c4 = mean.speed.c4;
        double c5 = mean.speed.c5;
        double mirrored = (2 * c4 * c5 - speed * (c5 - 3 * c4)) / (2 * c4 * c5 - speed * (2 * c5 - 4 * c4));
        return mirrored * (1 - mean.speed.c6 * speed);
    }

    /** The published mean passive torque at an angle (rad), N·m, not scaled by body size. No curve uses it. */
    public double passive(double angle) {
        Passive p = mean.passive;
        return p.b1 * Math.exp(p.k1 * angle) + p.b2 * Math.exp(p.k2 * angle);
    }

    /** Standard deviation over mean of C1: how much people of one row differ in scale. */
    public double spread() {
        return deviation.held.c1 / mean.held.c1;
    }
}
