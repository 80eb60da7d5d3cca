package counterpull.bench.tubing;

import counterpull.bench.Estimate;
import java.util.function.ToDoubleFunction;

/** A fitted curve of one strand, force against length, whose every consequence has an uncertainty. */
interface CurveFit {
    /** Natural length, m, as tape and pull together say. */
    Estimate natural();

    /** Force at a length, N, and its 95 % interval; not negative. */
    Estimate force(double length);

    /** Something that follows from the forces at these lengths. */
    Estimate of(double[] lengths, ToDoubleFunction<double[]> forces);

    /** One standard deviation of a reading of spread 1, N. */
    double noise();

    double degreesOfFreedom();
}
