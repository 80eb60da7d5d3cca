package counterpull.engine.strength;

/** How much of the held torque is left while an action shortens. */
public sealed interface SpeedLaw permits PublishedCurve, SpeedLaw.AnySpeed {
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
}
