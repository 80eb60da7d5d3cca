package counterpull.engine.motion;

import counterpull.engine.Require;
import counterpull.engine.body.Joint;
import java.util.List;

/** Which joint drives a balanced stand, how the others follow, and which part of the body leans so as to keep the balance. */
public sealed interface StandDrive permits StandDrive.Knee, StandDrive.Hip {
    /** The joint whose angle counts the positions. */
    Joint joint();

    /** Which driving angles can be, rad. */
    Require.Limits angles();

    /**
     * Directions of shank (ankle → knee), thigh (knee → hip) and trunk at a driving angle, rad, with derivatives by it; those from
     * {@link #leansFrom} on less one common angle, which balance adds.
     */
    List<Jet> directions(double driving);

    /** The first segment that leans for balance: 0 shank and all above, 2 the trunk alone. */
    int leansFrom();

    /** The drive in words. */
    String words();

    /**
     * The knee bends, the ankle follows as far as it gives, the trunk leans for balance: squat, split squat, step.
     *
     * @param ankle how dorsiflexion follows the knee
     */
    record Knee(AnkleGive ankle) implements StandDrive {
        private static final Require.Limits ANGLES = new Require.Limits(0, Math.PI * 0.95);
        private static final int TRUNK = 2;

        @Override
        public Joint joint() {
            return Joint.KNEE;
        }

        @Override
        public Require.Limits angles() {
            return ANGLES;
        }

        @Override
        public List<Jet> directions(double driving) {
            Jet shank = Jet.constant(Math.PI / 2).minus(ankle.dorsiflexion(driving));
            Jet thigh = shank.plus(Jet.line(0, 1, driving));
            return List.of(shank, thigh, Jet.constant(0));
        }

        @Override
        public int leansFrom() {
            return TRUNK;
        }

        @Override
        public String words() {
            return "the knee bends and the trunk leans for balance";
        }
    }

    /**
     * The hip bends, the knee follows, and all of the body leans at the ankle for balance: hip hinge, deadlift. Knee flexion = its
     * value at hip flexion 0 + a ratio × hip flexion.
     *
     * @param kneeUpright knee flexion where hip flexion is 0, rad, 0 to 1.5
     * @param kneePerHip how much the knee bends with the hip, 0 to 2; 0 holds the knee
     */
    record Hip(double kneeUpright, double kneePerHip) implements StandDrive {
        private static final Require.Limits ANGLES = new Require.Limits(-0.5, Math.PI * 0.9);
        private static final Require.Limits KNEE = new Require.Limits(0, 1.5);
        private static final Require.Limits RATIO = new Require.Limits(0, 2);

        public Hip {
            Require.within(kneeUpright, KNEE, "knee flexion where the hip is straight", "rad");
            Require.within(kneePerHip, RATIO, "knee flexion per hip flexion", "");
        }

        @Override
        public Joint joint() {
            return Joint.HIP;
        }

        @Override
        public Require.Limits angles() {
            return ANGLES;
        }

        @Override
        public List<Jet> directions(double driving) {
            Jet knee = Jet.line(kneeUpright, kneePerHip, driving);
            return List.of(Jet.constant(0), knee, knee.minus(Jet.line(0, 1, driving)));
        }

        @Override
        public int leansFrom() {
            return 0;
        }

        @Override
        public String words() {
            return "the hip bends and the body leans at the ankle for balance";
        }
    }
}
