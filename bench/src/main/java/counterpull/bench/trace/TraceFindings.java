package counterpull.bench.trace;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a trace says.
 *
 * @param rest what the device showed before the first effort; empty where the trace does not show it
 * @param efforts at least one, in order of time
 * @param interval the usual time between two samples (their median), s
 */
public record TraceFindings(Optional<Rest> rest, List<Effort> efforts, double interval) {
    public TraceFindings {
        efforts = List.copyOf(efforts);
    }

    /** The effort whose best second is highest; its peak decides where no effort lasted a second. */
    public Effort best() {
        Effort best = efforts.get(0);
        for (Effort effort : efforts) {
            best = rank(effort) > rank(best) ? effort : best;
        }
        return best;
    }

    private double rank(Effort effort) {
        boolean anyPlateau = efforts.stream().anyMatch(each -> each.plateau().isPresent());
        double without = anyPlateau ? Double.NEGATIVE_INFINITY : effort.peak().force();
        return effort.plateau().map(Plateau::mean).orElse(without);
    }

    /** Standard deviation over mean of the efforts' best seconds; empty with fewer than two of them. */
    public OptionalDouble scatter() {
        double[] means = efforts.stream()
                .flatMap(effort -> effort.plateau().stream())
                .mapToDouble(Plateau::mean)
                .toArray();
        if (means.length < 2) {
            return OptionalDouble.empty();
        }
        double sum = 0;
        for (double each : means) {
            sum += each;
        }
        double mean = sum / means.length;
        double square = 0;
        for (double each : means) {
            square += (each - mean) * (each - mean);
        }
        return OptionalDouble.of(Math.sqrt(square / (means.length - 1)) / mean);
    }
}
