package counterpull.bench.fit;

/**
 * One setting of the Gaussian processes.
 *
 * @param scale positions and polynomials
 * @param width ℓ, in halves of the range
 * @param sizes r of each curve, in standard deviations of one reading
 * @param bends what is expected of each curve
 */
record SmoothSetting(SmoothScale scale, double width, double[] sizes, SmoothCurves.Bend[] bends) {
    /** A size of 0 stands for everything below half the next one. */
    private static final double NONE = 0.25;

    SmoothSetting with(int curve, double size) {
        double[] other = sizes.clone();
        other[curve] = size;
        return new SmoothSetting(scale, width, other, bends);
    }

    /** Covariance of two readings, or of a look (first) with a reading, in σ². */
    double between(SmoothScale.Look look, SmoothCurves.Sight sight) {
        double sum = 0;
        double apart = scale.place(look.at()) - scale.place(sight.at());
        for (int curve = 0; curve < sizes.length; curve++) {
            sum += sizes[curve] * sizes[curve] * look.weights()[curve] * sight.weights()[curve];
        }
        return sum == 0 ? 0 : sum * kernel(apart, look.order());
    }

    private double kernel(double apart, int order) {
        double u = apart / width;
        double value = Math.exp(-u * u / 2);
        return order == 0 ? value : -u / width * value;
    }

    /** Variance of a look before anything was read, in σ². */
    double prior(SmoothScale.Look look) {
        double sum = 0;
        for (int curve = 0; curve < sizes.length; curve++) {
            sum += sizes[curve] * sizes[curve] * look.weights()[curve] * look.weights()[curve];
        }
        return look.order() == 0 ? sum : sum / (width * width);
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
