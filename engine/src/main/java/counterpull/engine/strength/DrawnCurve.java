package counterpull.engine.strength;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;

/**
 * A person's own curve: straight lines between given points, so it never passes above or below them; beyond the first
 * and the last point their torque, but there it is not known.
 *
 * <p>Source: the person's own measurements; the form is ours. Uncertainty is one stated standard deviation of log
 * torque, the same error at all angles.
 */
public final class DrawnCurve implements StrengthCurve {
    private final double[] angle;
    private final double[] torque;
    private final Polyline line;
    private final double logSd;
    private final SpeedLaw speedLaw;

    private DrawnCurve(double[] angle, double[] torque, double logSd, SpeedLaw speedLaw) {
        this.angle = angle.clone();
        this.torque = torque.clone();
        this.logSd = Require.within(logSd, new Require.Limits(0, 2), "spread of the strength curve", "");
        this.speedLaw = speedLaw;
        checkPoints();
        line = new Polyline(this.angle, this.torque);
    }

    /**
     * @param angle rad, rising, two or more
     * @param torque N·m at these angles, each above 0
     * @param logSd standard deviation of log torque, 0 to 2
     * @param speedLaw what shortening does; of a published curve of the same action, or {@link SpeedLaw.AnySpeed}
     */
    public static DrawnCurve through(double[] angle, double[] torque, double logSd, SpeedLaw speedLaw) {
        return new DrawnCurve(angle, torque, logSd, speedLaw);
    }

    /** One torque (N·m) over a range of angles. */
    public static DrawnCurve flat(double torque, AngleRange angles, double logSd, SpeedLaw speedLaw) {
        return new DrawnCurve(
                new double[] {angles.low(), angles.high()}, new double[] {torque, torque}, logSd, speedLaw);
    }

    private void checkPoints() {
        if (angle.length < 2 || angle.length != torque.length) {
            String sentence = "a strength curve needs two or more points, each with an angle and a torque";
            throw new Refusal(Fault.EMPTY_RANGE, "points of the strength curve", angle.length, 2, "", sentence);
        }
        for (int i = 0; i < angle.length; i++) {
            Require.finite(angle[i], "angle of a point of the strength curve", "rad");
            Require.positive(torque[i], "torque of a point of the strength curve", "N·m");
            if (i > 0 && angle[i] <= angle[i - 1]) {
                String sentence = "the angles of a strength curve must rise from point to point";
                throw new Refusal(
                        Fault.OUTSIDE_LIMITS,
                        "angle of a point of the strength curve",
                        angle[i],
                        angle[i - 1],
                        "rad",
                        sentence);
            }
        }
    }

    @Override
    public double held(double at) {
        return line.at(at);
    }

    @Override
    public AngleRange angles() {
        return line.angles();
    }

    @Override
    public double peak() {
        return line.peak();
    }

    @Override
    public SpeedLaw speedLaw() {
        return speedLaw;
    }

    @Override
    public double logCovariance(double at, double other) {
        return logSd * logSd;
    }

    @Override
    public String source() {
        return flat()
                ? "one torque stated for all its angles, which is an assumption and no measurement"
                : "this person's own curve through " + angle.length + " points";
    }

    /** Nobody measures one torque at every angle: a curve that says so was assumed. */
    private boolean flat() {
        return angle.length == 2 && torque[0] == torque[1];
    }
}
