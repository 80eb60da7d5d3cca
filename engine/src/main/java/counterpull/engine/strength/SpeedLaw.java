package counterpull.engine.strength;

import counterpull.engine.Require;

/** How much of the held torque is left while an action shortens. */
public sealed interface SpeedLaw permits PublishedCurve, SpeedLaw.OneSpeed, SpeedLaw.AnySpeed {
    /**
     * Share of the held torque left, in [0, 1]; 1 at speed 0.
     *
     * @param angle anatomical angle, rad
     * @param speed speed of shortening, rad/s, ≥ 0
     */
    double factor(double angle, double speed);

    /** The held torque at every speed: for a person's own curve where nothing is known of speed. Too high when fast. */
    record AnySpeed() implements SpeedLaw {
        @Override
        public double factor(double angle, double speed) {
            return 1;
        }
    }

    /**
     * One speed was measured: a straight line from all of the held torque at rest to the share left at that speed, then level,
     * since nothing is known of faster ones. Too high when faster; the straight line is ours.
     *
     * @param speed the speed measured, rad/s, above 0
     * @param share share of the held torque left at it, 0 to 1
     */
    record OneSpeed(double speed, double share) implements SpeedLaw {
        public OneSpeed {
            Require.positive(speed, "speed of shortening", "rad/s");
            Require.within(share, new Require.Limits(0, 1), "share of the held torque left", "");
        }

        @Override
        public double factor(double angle, double atSpeed) {
            return 1 - (1 - share) * Math.min(1, atSpeed / speed);
        }
    }
}
