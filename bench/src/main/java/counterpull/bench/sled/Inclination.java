package counterpull.bench.sled;

import java.util.OptionalDouble;

/**
 * One reading of the angle gauge on the rail, turned end for end and read again if that was done: the mean of both has no error of the
 * gauge's zero in it.
 *
 * @param laid first reading, rad from level
 * @param turned second reading with the gauge turned end for end, rad; empty where it was not turned
 */
public record Inclination(double laid, OptionalDouble turned) {
    /** A reading of a gauge that was not turned. */
    public static Inclination once(double laid) {
        return new Inclination(laid, OptionalDouble.empty());
    }

    /** Both readings of a gauge that was turned end for end. */
    public static Inclination turned(double laid, double turned) {
        return new Inclination(laid, OptionalDouble.of(turned));
    }

    /** The reading, or the mean of both, rad. */
    public double mean() {
        return turned.isPresent() ? (laid + turned.getAsDouble()) / 2 : laid;
    }

    /** Half of what turning changed: the gauge's zero, rad; 0 where it was not turned. */
    public double zero() {
        return turned.isPresent() ? (laid - turned.getAsDouble()) / 2 : 0;
    }
}
