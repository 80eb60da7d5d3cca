package counterpull.bench.tubing;

import counterpull.bench.Estimate;

/** What another way of fitting says of a number, and how much worse it serves. */
record Rival(Estimate says, double worse) {
    private double half(double quantile, double width) {
        double left = 1 - worse / (quantile * quantile);
        return left > 0 ? Math.sqrt(left) * width * says.standardError() : Double.NaN;
    }

    double low(double quantile, double width) {
        double half = half(quantile, width);
        return half >= 0 ? says.value() - half : Double.POSITIVE_INFINITY;
    }

    double high(double quantile, double width) {
        double half = half(quantile, width);
        return half >= 0 ? says.value() + half : Double.NEGATIVE_INFINITY;
    }

    /** The number where, between two places, the readings stop allowing it; NaN where they do not. */
    double edge(Rival other, double quantile) {
        double mine = Math.sqrt(worse) - quantile;
        double theirs = Math.sqrt(other.worse) - quantile;
        if (mine < 0 == theirs < 0) {
            return Double.NaN;
        }
        double along = mine / (mine - theirs);
        return says.value() + along * (other.says.value() - says.value());
    }
}
