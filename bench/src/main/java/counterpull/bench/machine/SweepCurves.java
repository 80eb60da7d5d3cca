package counterpull.bench.machine;

import counterpull.bench.Estimate;
import counterpull.bench.Way;
import counterpull.bench.fit.Noise;
import counterpull.bench.fit.SmoothCurves;
import counterpull.bench.fit.SmoothCurves.Bend;
import counterpull.bench.fit.SmoothCurves.Expected;
import counterpull.bench.fit.SmoothCurves.Repeats;
import counterpull.bench.fit.SmoothCurves.Sight;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** Mean and half difference of readings up and down as smooth curves. */
final class SweepCurves {
    private static final double MEAN_BENDS = 0.185;
    private static final double HALF_BENDS = 0.011;

    private final SmoothCurves curves;
    private final double[] positions;

    private SweepCurves(SmoothCurves curves, double[] positions) {
        this.curves = curves;
        this.positions = positions;
    }

    static SweepCurves of(List<Seen> readings, Noise scale) {
        double[] positions = readings.stream()
                .mapToDouble(Seen::position)
                .distinct()
                .sorted()
                .toArray();
        List<Sight> sights = new ArrayList<>();
        double squares = 0;
        int degrees = 0;
        for (double position : positions) {
            for (Way way : Way.values()) {
                double[] here = at(readings, way, position);
                if (here.length > 0) {
                    double mean = mean(here);
                    sights.add(new Sight(position, new double[] {1, way.sense()}, mean, here.length));
                    squares += squares(here, mean);
                    degrees += here.length - 1;
                }
            }
        }
        double level = readings.stream().mapToDouble(Seen::size).average().orElse(1);
        Expected expected = new Expected(
                List.of(new Bend(1, MEAN_BENDS * level), new Bend(1, HALF_BENDS * level)), List.of(0.8, 1.3, 2.1));
        return new SweepCurves(SmoothCurves.of(sights, expected, new Repeats(squares, degrees), scale), positions);
    }

    static double[] at(List<Seen> readings, Way way, double position) {
        return readings.stream()
                .filter(each -> each.way() == way && each.position() == position)
                .mapToDouble(Seen::size)
                .toArray();
    }

    static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value / values.length;
        }
        return sum;
    }

    static double squares(double[] values, double mean) {
        double sum = 0;
        for (double value : values) {
            sum += (value - mean) * (value - mean);
        }
        return sum;
    }

    Estimate mean(double at) {
        return curves.value(at, 1, 0);
    }

    Estimate half(double at) {
        return curves.value(at, 0, 1);
    }

    Estimate way(Way way, double at) {
        return curves.value(at, 1, way.sense());
    }

    double noise() {
        return curves.noise();
    }

    double first() {
        return positions[0];
    }

    double last() {
        return positions[positions.length - 1];
    }

    /** So many equal steps from the first position to the last, and the positions that were read. */
    double[] grid(int steps) {
        TreeSet<Double> all = new TreeSet<>();
        for (int i = 0; i <= steps; i++) {
            all.add(first() + (last() - first()) * i / steps);
        }
        return all.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
