package counterpull.bench.fit;

/**
 * One setting of the Gaussian processes.
 *
 * @param kernel positions and width
 * @param sizes r of each curve, in standard deviations of one reading
 * @param bends what is expected of each curve
 */
record SmoothSetting(SmoothKernel kernel, double[] sizes, SmoothCurves.Bend[] bends) {
    /** A size of 0 stands for everything below half the next one. */
    private static final double NONE = 0.25;

    SmoothSetting with(int curve, double size) {
        double[] other = sizes.clone();
        other[curve] = size;
        return new SmoothSetting(kernel, other, bends);
    }

    SmoothScale scale() {
        return kernel.scale();
    }

    /** How much two weighted sums of the curves share, in σ², before the distance between them counts. */
    double shared(double[] one, double[] other) {
        double sum = 0;
        for (int curve = 0; curve < sizes.length; curve++) {
            sum += sizes[curve] * sizes[curve] * one[curve] * other[curve];
        }
        return sum;
    }

    /** Logarithm of how well the sizes are expected, for so large a noise of one reading: half a normal in the size itself. */
    double expected(double noise) {
        double sum = 0;
        for (int curve = 0; curve < sizes.length; curve++) {
            double share = Math.max(NONE, sizes[curve]) * noise / bends[curve].size();
            sum += Math.log(share) - share * share / 2;
        }
        return sum;
    }
}
