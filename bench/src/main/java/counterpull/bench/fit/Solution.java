package counterpull.bench.fit;

import org.hipparchus.linear.RealMatrix;

/** Where a regression settled, with or without limits. */
final class Solution {
    final double[] at;
    final RealMatrix covariance;
    final double noise;
    final double degreesOfFreedom;
    final double sumOfSquares;

    Solution(double[] at, RealMatrix covariance, double noise, double degreesOfFreedom, double sumOfSquares) {
        this.at = at;
        this.covariance = covariance;
        this.noise = noise;
        this.degreesOfFreedom = degreesOfFreedom;
        this.sumOfSquares = sumOfSquares;
    }

    double standardError(int parameter) {
        return Math.sqrt(Math.max(0, covariance.getEntry(parameter, parameter)));
    }
}
