package counterpull.engine.body;

import counterpull.engine.Require;
import java.util.EnumMap;
import java.util.Map;

/**
 * What was measured on a person, or on one limb, m. A measured length replaces a published length, never a mass.
 *
 * @param lengths m, each above zero and below 3
 */
public record MeasuredLengths(Map<BodyLength, Double> lengths) {
    private static final Require.Limits LIMITS = new Require.Limits(0, 3);

    public MeasuredLengths {
        lengths = Map.copyOf(lengths);
        lengths.forEach(MeasuredLengths::require);
    }

    private static void require(BodyLength which, double length) {
        Require.positive(length, which.words(), "m");
        Require.within(length, LIMITS, which.words(), "m");
    }

    /** Nothing measured. */
    public static MeasuredLengths none() {
        return new MeasuredLengths(Map.of());
    }

    /** These and one more, m; a second measurement of the same replaces the first. */
    public MeasuredLengths with(BodyLength which, double length) {
        Map<BodyLength, Double> more = new EnumMap<>(BodyLength.class);
        more.putAll(lengths);
        more.put(which, length);
        return new MeasuredLengths(more);
    }

    /** The measured length, or the other where there is none, m. */
    public double or(BodyLength which, double other) {
        Double measured = lengths.get(which);
        return measured == null ? other : measured;
    }
}
