package counterpull.engine.profile;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import java.util.List;
import java.util.Optional;

/**
 * What one exercise with one setup asks of one person, over phases and positions (bottom first), beside what they have: what every
 * kind of exercise has in common, so that they can be laid side by side. Torques N·m, angles rad. Read-only.
 */
public abstract sealed class Profile permits PressProfile, ExerciseProfile {
    Profile() {}

    /** How many positions there are, bottom first. */
    public abstract int positions();

    /** The limbs, in the person's order. */
    public abstract List<? extends LimbProfile> limbs();

    /** Whose anatomical angle counts the positions; empty where travel along a path does. */
    public abstract Optional<Joint> driver();

    /** Driving coordinate at a position: the driver's angle, rad, of the limb that counts the positions, or travel, m. */
    public abstract double driving(int position);

    /** What its numbers are made of. */
    public abstract Reasons why();

    /** Its joints that are computed, proximal first. */
    public List<Joint> joints() {
        return limbs().get(0).joints();
    }

    /** Effort at a joint: the larger of the limbs' known ones; NaN where none is known. */
    public double effort(Joint joint, Phase phase, int position) {
        double most = Double.NaN;
        for (LimbProfile limb : limbs()) {
            double effort = limb.effort(joint, phase, position);
            if (!(effort <= most)) {
                most = Double.isNaN(effort) ? most : effort;
            }
        }
        return most;
    }

    /**
     * {@link #effort} everywhere at once: by phase (held, lifting, lowering), then position, then {@linkplain #joints() joint}; NaN where
     * none is known.
     */
    public double[] efforts() {
        double[] efforts = new double[Phase.values().length * positions() * joints().size()];
        java.util.Arrays.fill(efforts, Double.NaN);
        for (LimbProfile limb : limbs()) {
            limb.raise(efforts);
        }
        return efforts;
    }

    /**
     * The limiting joint among the named ones, or empty where no effort is known.
     *
     * @param named the joints looked at, proximal first: ties go to the one listed first
     */
    public Optional<Limiting> limiting(List<Joint> named, Phase phase, int position) {
        Limiting found = null;
        for (Joint joint : named) {
            for (LimbProfile limb : limbs()) {
                double effort = limb.effort(joint, phase, position);
                if (found == null ? !Double.isNaN(effort) : effort > found.effort() + Limiting.TIE) {
                    found = new Limiting(joint, limb.side(), limb.asked(joint, phase, position), effort);
                }
            }
        }
        return Optional.ofNullable(found);
    }
}
