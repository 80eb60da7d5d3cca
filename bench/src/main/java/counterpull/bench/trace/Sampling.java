package counterpull.bench.trace;

import java.util.Arrays;

/** How a trace was sampled. */
final class Sampling {
    private Sampling() {}

    /** The usual time between two samples: the median, s. */
    static double interval(Trace trace) {
        double[] steps = new double[trace.size() - 1];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = trace.time(i + 1) - trace.time(i);
        }
        Arrays.sort(steps);
        return steps[steps.length / 2];
    }
}
