package counterpull.engine.motion;

import counterpull.engine.Require;

/**
 * One stroke as a fifth-degree polynomial of time that starts and ends at rest, with a stated acceleration at either end.
 * It is read from the bottom up: a lowering stroke is its own mirror in time, with the same accelerations and the speed
 * reversed.
 *
 * <p>x(τ) = D(10τ³ − 15τ⁴ + 6τ⁵) + ½a₀T²(τ² − 3τ³ + 3τ⁴ − τ⁵) + ½a₁T²(τ³ − 2τ⁴ + τ⁵), τ = t/T; with both accelerations 0
 * the minimum-jerk stroke.
 *
 * <p>Source: Flash and Hogan 1985, J Neurosci 5:1688, minimum-jerk polynomial (from memory); the end terms are the quintic
 * Hermite basis.
 *
 * @param travel D, in the stroke's coordinate (m or rad), above zero
 * @param seconds T, above zero
 * @param atBottom acceleration at the bottom, per s², positive toward the top
 * @param atTop acceleration at the top, per s², positive toward the top
 */
public record QuinticStroke(double travel, double seconds, double atBottom, double atTop) {
    private static final int MOST_HALVINGS = 80;
    private static final double ROUNDING = 5e-16;
    private static final double CLOSE = 1e-9;

    public QuinticStroke {
        Require.positive(travel, "travel of the stroke", "m or rad");
        Require.positive(seconds, "time of the stroke", "s");
        Require.finite(atBottom, "acceleration at the bottom", "m/s² or rad/s²");
        Require.finite(atTop, "acceleration at the top", "m/s² or rad/s²");
    }

    /** Distance from the bottom at a fraction of the time. */
    public double position(double time) {
        double t3 = time * time * time;
        double half = seconds * seconds / 2;
        return travel * t3 * (10 + time * (-15 + 6 * time))
                + half * atBottom * time * time * (1 + time * (-3 + time * (3 - time)))
                + half * atTop * t3 * (1 + time * (-2 + time));
    }

    /** Speed toward the top at a fraction of the time, per s. */
    public double speed(double time) {
        double t2 = time * time;
        double half = seconds / 2;
        return travel / seconds * t2 * (30 + time * (-60 + 30 * time))
                + half * atBottom * time * (2 + time * (-9 + time * (12 - 5 * time)))
                + half * atTop * t2 * (3 + time * (-8 + 5 * time));
    }

    /** Acceleration toward the top at a fraction of the time, per s². */
    public double acceleration(double time) {
        return travel / (seconds * seconds) * time * (60 + time * (-180 + 120 * time))
                + atBottom / 2 * (2 + time * (-18 + time * (36 - 20 * time)))
                + atTop / 2 * time * (6 + time * (-24 + 20 * time));
    }

    /** The fraction of the time at which the stroke is a stated fraction of its travel from the bottom. */
    public double timeAt(double fraction) {
        return timeAt(fraction, fraction);
    }

    /**
     * The same from a guess of the time, which saves work and changes nothing; any number, a useless one is not used. The stroke is monotone, so halving always
     * finds it; Newton steps inside the bracket make it quick. It ends where rounding hides the rest.
     */
    double timeAt(double fraction, double guess) {
        if (fraction <= 0) {
            return 0;
        }
        if (fraction >= 1) {
            return 1;
        }
        double goal = fraction * travel;
        double low = 0;
        double high = 1;
        double time = guess > 0 && guess < 1 ? guess : fraction;
        for (int i = 0; i < MOST_HALVINGS; i++) {
            double miss = position(time) - goal;
            if (Math.abs(miss) < ROUNDING * travel) {
                return time;
            }
            if (miss > 0) {
                high = time;
            } else {
                low = time;
            }
            double step = time - miss / (speed(time) * seconds);
            double next = step > low && step < high ? step : (low + high) / 2;
            // a Newton step leaves about its own square over the way to the stroke's end
            boolean close = Math.abs(next - time) < CLOSE * Math.min(time, 1 - time);
            if (close || high - low < ROUNDING) {
                return next;
            }
            time = next;
        }
        return time;
    }

    /** Largest |acceleration| while the stroke is in the half of its travel next to the bottom, per s². */
    public double peakNearBottom() {
        double end = timeAt(0.5);
        double most = Math.max(Math.abs(acceleration(0)), Math.abs(acceleration(end)));
        double d = travel / (seconds * seconds);
        double quadratic = 360 * d - 30 * atBottom + 30 * atTop;
        double linear = -360 * d + 36 * atBottom - 24 * atTop;
        double constant = 60 * d - 9 * atBottom + 3 * atTop;
        return Math.max(most, peakAtRoots(new double[] {quadratic, linear, constant}, end));
    }

    private double peakAtRoots(double[] slope, double end) {
        double inside = slope[1] * slope[1] - 4 * slope[0] * slope[2];
        if (inside < 0) {
            return 0;
        }
        // the form without cancellation: where the leading coefficient vanishes the far root is infinite and drops out
        double larger = -(slope[1] + Math.copySign(Math.sqrt(inside), slope[1])) / 2;
        return Math.max(peakIfInside(larger / slope[0], end), peakIfInside(slope[2] / larger, end));
    }

    private double peakIfInside(double time, double end) {
        return time > 0 && time < end ? Math.abs(acceleration(time)) : 0;
    }
}
