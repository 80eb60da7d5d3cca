package counterpull.bench.machine;

import counterpull.bench.Estimate;
import counterpull.bench.Way;
import counterpull.bench.fit.Fit;
import counterpull.engine.load.LeverBody;
import java.util.Optional;

/**
 * What a lever's bench found.
 *
 * @param bench the readings
 * @param moment the lever's own m g r, N·m
 * @param offset of its centre of mass from the line pivot → pad, rad counter-clockwise
 * @param friction at the pivot, N·m
 * @param horn where the plates hang; empty where they were always the same
 * @param fit the fit, for {@link #reading}
 */
public record LeverFound(
        LeverBench bench, Estimate moment, Estimate offset, Estimate friction, Optional<HornFound> horn, Fit fit)
        implements MachineFound {

    /**
     * Where the horn is by the readings.
     *
     * @param radius from the pivot, m
     * @param offset from the line pivot → pad, rad counter-clockwise
     */
    public record HornFound(Estimate radius, Estimate offset) {}

    /** What the scale should read, in its own unit (N or N·m). */
    public Estimate reading(Way way, double angle, double plates) {
        return fit.estimate(p -> LeverEstimator.model(bench, p, new LeverReading(way, angle, plates, 0)));
    }

    /** Reading number {@code i} from 0 less the fit, in the scale's own unit. */
    public double residual(int i) {
        return fit.residual(i);
    }

    /** The lever as the engine takes it if it weighs so much, kg: its centre at the distance that the moment asks for, as a point. */
    public LeverBody body(double mass) {
        double radius = moment.value() / (mass * counterpull.engine.Constants.STANDARD_GRAVITY);
        return new LeverBody(mass, radius, offset.value(), mass * radius * radius);
    }
}
