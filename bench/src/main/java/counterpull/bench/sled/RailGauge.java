package counterpull.bench.sled;

import counterpull.bench.Budget;
import java.util.List;

/**
 * The rail's angle as an angle gauge read it.
 *
 * <p>Where any reading was turned end for end, only those count, and the zero's uncertainty drops out. Type A uncertainty from the
 * scatter of the readings, type B as stated (JCGM 100:2008, 4.2 and 4.3).
 *
 * @param readings one or more
 * @param zero standard uncertainty of the gauge's zero, rad, 0 where not stated
 * @param other standard uncertainty that remains when it is turned (its scale, how it lies), rad, 0 where not stated
 */
public record RailGauge(List<Inclination> readings, double zero, double other) {
    public RailGauge {
        readings = List.copyOf(readings);
    }

    /** Readings that count: those that were turned, or all where none was. */
    List<Inclination> counting() {
        List<Inclination> turned =
                readings.stream().filter(each -> each.turned().isPresent()).toList();
        return turned.isEmpty() ? readings : turned;
    }

    private boolean turned() {
        return readings.stream().anyMatch(each -> each.turned().isPresent());
    }

    /** Mean of the readings that count, rad. */
    double mean() {
        return counting().stream().mapToDouble(Inclination::mean).average().orElseThrow();
    }

    /** The angle with its uncertainty; for one reading or more. */
    public Budget budget() {
        List<Inclination> counting = counting();
        int n = counting.size();
        double mean = mean();
        Budget budget = Budget.of(mean).with(other).with(turned() ? 0 : zero);
        if (n < 2) {
            return budget;
        }
        double squares = 0;
        for (Inclination each : counting) {
            squares += (each.mean() - mean) * (each.mean() - mean);
        }
        return budget.with(Math.sqrt(squares / (n - 1) / n), n - 1);
    }
}
