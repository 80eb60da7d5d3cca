package counterpull.bench.sled;

import counterpull.bench.Estimate;
import counterpull.bench.Way;
import counterpull.bench.fit.Fit;
import java.util.function.ToDoubleFunction;

/** The two lines of pull against added plates, up and down, with their bands. Read-only. */
public final class SledLines {
    private final SledModel model;
    private final Fit fit;

    SledLines(SledModel model, Fit fit) {
        this.model = model;
        this.fit = fit;
    }

    /** The pull that the fit expects, N, with its 95 % interval. */
    public Estimate pull(Way way, double plates) {
        return fit.estimate(at(way.sense(), plates));
    }

    /** The share that weighs along the rail, half way between up and down, N. */
    public Estimate weight(double plates) {
        return fit.estimate(at(0, plates));
    }

    /** Friction alone, half the distance between up and down, N. */
    public Estimate friction(double plates) {
        return fit.estimate(parameters -> model.force(parameters, 1, plates) - model.force(parameters, 0, plates));
    }

    double weightDegrees(double plates) {
        return fit.degreesOfFreedom(at(0, plates));
    }

    private ToDoubleFunction<double[]> at(int sense, double plates) {
        return parameters -> model.force(parameters, sense, plates);
    }

    /** Reading less fit of pull number {@code i} from 0, N. */
    public double residual(int i) {
        return fit.residual(i);
    }

    /** One standard deviation of one pull, N. */
    public double noise() {
        return fit.noise();
    }

    /** Degrees of freedom of that; infinite where the scale's accuracy was stated. */
    double noiseDegrees() {
        return fit.degreesOfFreedom();
    }
}
