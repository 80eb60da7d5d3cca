package counterpull.bench.repetitions;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.Hinge;
import counterpull.engine.profile.ExerciseProfile;
import counterpull.engine.profile.Profile;

/**
 * The share p of the most that can be lifted once, against the repetitions N to failure at it, 1 to 20; and how far one person may lie
 * from it, as a standard deviation of ln p.
 *
 * <p>The published curves disagree by more than any of them says: at ten repetitions on a leg press 0.71 (Reynolds 2006, loads for a
 * stated number) against about 0.87 (Richens and Cleather 2014 and Hoeger 1990, repetitions at a stated load). The middle curves and the
 * wide spreads are ours; see each.
 */
public enum ShareOfMaximum {
    /**
     * Presses and pulls of the arm over several joints: p = 0.5551 e^(−0.0723 N) + 0.4847 (Reynolds JM, Gordon TJ, Robergs RA 2006, J
     * Strength Cond Res 20:584–592, chest press; coefficients from memory, held by its line from five repetitions, looked up). Spread
     * 0.14 (1 − e^(−(N−1)/9)), ours, through that study's errors at 5, 10 and 20 repetitions.
     */
    UPPER_BODY("pressing and pulling with the arms", 0.14, 9) {
        @Override
        double curve(double repetitions) {
            return 0.5551 * Math.exp(-0.0723 * repetitions) + 0.4847;
        }
    },
    /**
     * Leg press and what is like it: p = 0.35 + 0.65 e^(−(N−1)/22), ours, the middle between the two kinds of study. Spread 0.33 (1 −
     * e^(−(N−1)/16)), ours: half of what they differ by, and what people differ by.
     */
    LEG_PRESS("pressing with the legs", 0.33, 16) {
        @Override
        double curve(double repetitions) {
            return middle(repetitions);
        }
    },
    /**
     * One joint, and machines in general: the same curve, which the means of six machines follow within 0.02 (Kemmler 2024, Sports 12:233;
     * coefficients looked up). Spread 1.3 times that of the arms: the error is about double in a curl (Hutchins and Gearhart 2010; looked
     * up).
     */
    ONE_JOINT("one joint at a time", 0.14 * 1.3, 9) {
        @Override
        double curve(double repetitions) {
            return middle(repetitions);
        }
    };

    /** Most repetitions that the curves carry. */
    public static final double MOST = 20;

    private static final double STEP = 1e-4;

    private final String words;
    private final double widest;
    private final double widening;

    ShareOfMaximum(String words, double widest, double widening) {
        this.words = words;
        this.widest = widest;
        this.widening = widening;
    }

    /** The kind that a setup most likely is: by its movement. */
    public static ShareOfMaximum of(Profile profile) {
        if (profile.joints().size() == 1 || turnsOneJoint(profile)) {
            return ONE_JOINT;
        }
        boolean arms =
                profile.joints().contains(Joint.SHOULDER) || profile.joints().contains(Joint.SHOULDER_SIDEWAYS);
        return arms ? UPPER_BODY : LEG_PRESS;
    }

    private static boolean turnsOneJoint(Profile profile) {
        return profile instanceof ExerciseProfile exercise
                && exercise.task().exercise().motion() instanceof Hinge;
    }

    abstract double curve(double repetitions);

    private static double middle(double repetitions) {
        return 0.35 + 0.65 * Math.exp(-(repetitions - 1) / 22);
    }

    /** What kind of exercise it is for, as a person says it. */
    public String words() {
        return words;
    }

    /** Share of the most that can be lifted once, 0 to 1: 1 at one repetition, whatever the fitted curve says there. */
    public double share(double repetitions) {
        return repetitions <= 1 ? 1 : Math.min(1, curve(Math.min(MOST, repetitions)));
    }

    /** Standard deviation of ln p between people. */
    public double spread(double repetitions) {
        return widest * (1 - Math.exp(-(Math.min(MOST, Math.max(1, repetitions)) - 1) / widening));
    }

    /** How much ln p falls with one more repetition, above 0. */
    public double fall(double repetitions) {
        double at = Math.min(MOST, Math.max(1, repetitions));
        return (Math.log(curve(at - STEP)) - Math.log(curve(at + STEP))) / (2 * STEP);
    }
}
