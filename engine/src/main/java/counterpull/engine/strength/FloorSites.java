package counterpull.engine.strength;

import java.util.ArrayList;
import java.util.List;

/**
 * The normal readings that stand in for all floors together: each in turn is matched against what the tests that were
 * reached and the other floors say, until none changes (expectation propagation, see {@link FloorSite}).
 *
 * <p>With one floor the mean and the variance are exact. With several they are near, because what the other floors
 * leave is lopsided and a normal curve stands in for it: see {@link BentCurve} for how near.
 */
final class FloorSites {
    private static final int MOST_ROUNDS = 200;
    private static final double SETTLED = 1e-12;

    private final List<LogReading> floors;
    private final double[] mean;
    private final double[][] covariance;
    private final FloorSite[] sites;

    private FloorSites(Posterior reached, List<LogReading> floors) {
        this.floors = floors;
        int size = floors.size();
        mean = new double[size];
        covariance = new double[size][size];
        sites = new FloorSite[size];
        for (int i = 0; i < size; i++) {
            double angle = floors.get(i).angle();
            mean[i] = reached.mean(angle);
            sites[i] = FloorSite.silent(mean[i]);
            for (int j = 0; j < size; j++) {
                covariance[i][j] = reached.covariance(angle, floors.get(j).angle());
            }
        }
    }

    /** A reading in place of each floor, given what the tests that were reached say. */
    static List<LogReading> inPlaceOf(List<LogReading> floors, Posterior reached) {
        FloorSites all = new FloorSites(reached, floors);
        all.settle();
        List<LogReading> readings = new ArrayList<>();
        for (int i = 0; i < all.sites.length; i++) {
            FloorSite site = all.sites[i];
            readings.add(new LogReading(floors.get(i).angle(), site.mean(), site.variance()));
        }
        return readings;
    }

    private void settle() {
        double change = 1;
        for (int round = 0; round < MOST_ROUNDS && change > SETTLED; round++) {
            change = 0;
            for (int i = 0; i < sites.length; i++) {
                change = Math.max(change, renewed(i));
            }
        }
    }

    /** Matches one floor against all else; how much that changed of its mean and variance there, as a share of them. */
    private double renewed(int which) {
        FloorSite before = sites[which];
        sites[which] = FloorSite.silent(mean[which]);
        double[] shared = covariance[which];
        Cholesky others = new Cholesky(withSites());
        double[] weights = others.solve(surprise());
        double[] half = others.forward(shared);
        double believed = mean[which];
        double variance = shared[which];
        for (int i = 0; i < half.length; i++) {
            believed += weights[i] * shared[i];
            variance -= half[i] * half[i];
        }
        LogReading floor = floors.get(which);
        sites[which] = FloorSite.of(floor.value(), floor.noise(), believed, variance);
        return sites[which].differs(before, believed, variance);
    }

    private double[][] withSites() {
        double[][] matrix = new double[sites.length][];
        for (int i = 0; i < matrix.length; i++) {
            matrix[i] = covariance[i].clone();
            matrix[i][i] += sites[i].variance();
        }
        return matrix;
    }

    private double[] surprise() {
        double[] surprise = new double[sites.length];
        for (int i = 0; i < surprise.length; i++) {
            surprise[i] = sites[i].mean() - mean[i];
        }
        return surprise;
    }
}
