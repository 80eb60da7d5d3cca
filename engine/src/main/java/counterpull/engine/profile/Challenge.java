package counterpull.engine.profile;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;

/**
 * Where in the range one joint is challenged: what is asked of it, whichever action, in each third of the range and at its largest.
 * Torques N·m without sign, of the limb that is asked most; efforts pure numbers, NaN where no effort is known.
 *
 * @param joint the joint
 * @param phase the phase that was looked at
 * @param thirds mean |torque| over the bottom, middle and top third of the positions, N·m
 * @param efforts mean known effort over the same thirds
 * @param peak the largest |torque|, N·m
 * @param peakAt position of the largest |torque|
 */
public record Challenge(Joint joint, Phase phase, Thirds thirds, Thirds efforts, double peak, int peakAt) {
    private static final double EVEN = 0.1;

    /**
     * Three parts of a range.
     *
     * @param bottom next to where the lift starts
     * @param middle between
     * @param top next to where it ends
     */
    public record Thirds(double bottom, double middle, double top) {
        /** The part with the largest value in words, "nearly even" where they differ by no more than 10 % of the largest, "not known" where one is not. */
        public String hardest() {
            double most = Math.max(bottom, Math.max(middle, top));
            double least = Math.min(bottom, Math.min(middle, top));
            if (Double.isNaN(most)) {
                return "not known";
            }
            if (!(most > 0) || most - least <= EVEN * most) {
                return "nearly even";
            }
            if (most == bottom) {
                return "most at the bottom";
            }
            return most == top ? "most at the top" : "most in the middle";
        }
    }

    /** A joint's challenge in a profile. */
    public static Challenge of(Profile profile, Joint joint, Phase phase) {
        double[] torque = new double[profile.positions()];
        double[] effort = new double[profile.positions()];
        int at = 0;
        for (int i = 0; i < torque.length; i++) {
            for (LimbProfile limb : profile.limbs()) {
                torque[i] = Math.max(torque[i], Math.abs(limb.torque(joint, phase, i)));
            }
            effort[i] = profile.effort(joint, phase, i);
            at = torque[i] > torque[at] ? i : at;
        }
        return new Challenge(joint, phase, thirds(torque), thirds(effort), torque[at], at);
    }

    private static Thirds thirds(double[] values) {
        int n = values.length;
        return new Thirds(mean(values, 0, n / 3), mean(values, n / 3, n - n / 3), mean(values, n - n / 3, n));
    }

    // of what is known: a value that is not is left out, all of them unknown give NaN
    private static double mean(double[] values, int from, int to) {
        double sum = 0;
        int known = 0;
        for (int i = from; i < to; i++) {
            if (!Double.isNaN(values[i])) {
                sum += values[i];
                known++;
            }
        }
        return sum / known;
    }
}
