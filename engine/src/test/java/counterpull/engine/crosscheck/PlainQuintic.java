package counterpull.engine.crosscheck;

/**
 * A fifth-degree polynomial of time from its six end conditions, its coefficients found by solving for them: another route
 * than the closed form of the engine. Time from 0 to the stroke's seconds; position 0 to travel; speed 0 at both ends.
 */
final class PlainQuintic {
    private final double[] coefficient;
    final double seconds;

    PlainQuintic(double travel, double seconds, double startAcceleration, double endAcceleration) {
        this.seconds = seconds;
        double[][] system = new double[6][];
        double[] right = {0, 0, startAcceleration, travel, 0, endAcceleration};
        for (int order = 0; order < 3; order++) {
            system[order] = row(order, 0);
            system[3 + order] = row(order, seconds);
        }
        coefficient = PlainSolve.solve(system, right);
    }

    // derivative of the powers 0..5 of time
    private static double[] row(int order, double time) {
        double[] row = new double[6];
        for (int power = order; power < 6; power++) {
            double factor = 1;
            for (int k = 0; k < order; k++) {
                factor *= power - k;
            }
            row[power] = factor * Math.pow(time, power - order);
        }
        return row;
    }

    /** A derivative of the position (order 0) at a time in seconds. */
    double derivative(int order, double time) {
        double[] row = row(order, time);
        double sum = 0;
        for (int power = 0; power < 6; power++) {
            sum += row[power] * coefficient[power];
        }
        return sum;
    }

    /** Whether it never goes back, looked at in 2,000 places. */
    boolean monotone(double slack) {
        for (int i = 0; i <= 2000; i++) {
            if (derivative(1, seconds * i / 2000) < -slack) {
                return false;
            }
        }
        return true;
    }

    /** ∫ jerk² dt; three Gauss points are exact for this fourth-degree integrand. */
    double squaredJerk() {
        double half = seconds / 2;
        double root = Math.sqrt(0.6);
        double[] place = {half * (1 - root), half, half * (1 + root)};
        double[] weight = {5.0 / 9, 8.0 / 9, 5.0 / 9};
        double sum = 0;
        for (int i = 0; i < 3; i++) {
            double jerk = derivative(3, place[i]);
            sum += half * weight[i] * jerk * jerk;
        }
        return sum;
    }
}
