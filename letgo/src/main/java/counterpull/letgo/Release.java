package counterpull.letgo;

import counterpull.engine.Require;

/**
 * The moment of letting go.
 *
 * @param place where, in the machine's coordinate, m or rad
 * @param speed how fast it moves just then, m/s or rad/s, upward positive; 0 where it was held
 */
public record Release(double place, double speed) {
    public Release {
        Require.finite(place, "place of letting go", "m or rad");
        Require.finite(speed, "speed when let go", "m/s or rad/s");
    }

    /** Let go where it was held still. */
    public static Release held(double place) {
        return new Release(place, 0);
    }
}
