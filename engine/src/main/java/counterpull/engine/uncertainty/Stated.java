package counterpull.engine.uncertainty;

import counterpull.engine.Require;
import counterpull.engine.body.BodyLength;
import counterpull.engine.body.MeasuredLengths;
import counterpull.engine.body.Side;
import java.util.Map;

/**
 * Which standard uncertainties somebody stated; the others are the usual ones of {@link Input}.
 *
 * @param inputs by what they are of, in the input's own unit
 * @param rubber of single pieces, by tag
 * @param measured which lengths of which side were measured; the others come from stature
 */
public record Stated(Map<Input, Double> inputs, Map<String, Rubber> rubber, Map<Side, MeasuredLengths> measured) {
    private static final Require.Limits NOT_NEGATIVE = new Require.Limits(0, 100);

    public Stated {
        inputs = Map.copyOf(inputs);
        rubber = Map.copyOf(rubber);
        measured = Map.copyOf(measured);
        inputs.forEach(
                (input, value) -> Require.within(value, NOT_NEGATIVE, "standard uncertainty of " + input.key(), ""));
    }

    /**
     * How sure one piece of rubber is.
     *
     * @param pull standard uncertainty of its pull, a share; NaN where not stated
     * @param naturalLength of its natural length, m; NaN where not stated
     */
    public record Rubber(double pull, double naturalLength) {}

    /** Nothing stated, nothing measured. */
    public static Stated nothing() {
        return new Stated(Map.of(), Map.of(), Map.of());
    }

    /** Everything stated as certain: what is left is strength. */
    public static Stated certain() {
        Map<Input, Double> none = new java.util.EnumMap<>(Input.class);
        for (Input input : Input.values()) {
            none.put(input, 0.0);
        }
        return new Stated(none, Map.of(), Map.of());
    }

    /** These and one more; a second statement of the same replaces the first. */
    public Stated with(Input input, double value) {
        Map<Input, Double> more = new java.util.EnumMap<>(Input.class);
        more.putAll(inputs);
        more.put(input, value);
        return new Stated(more, rubber, measured);
    }

    /** The standard uncertainty of an input. */
    public double of(Input input) {
        Double value = inputs.get(input);
        return value == null ? input.usual() : value;
    }

    /** Where the standard uncertainty of an input comes from. */
    public String source(Input input) {
        return inputs.containsKey(input) ? "stated" : input.source();
    }

    /** The pull of one piece of rubber. */
    Known pull(String tag) {
        Rubber one = rubber.get(tag);
        return one == null || Double.isNaN(one.pull()) ? known(Input.RUBBER_PULL) : new Known(one.pull(), "stated");
    }

    /** The natural length of one piece of rubber. */
    Known naturalLength(String tag) {
        Rubber one = rubber.get(tag);
        return one == null || Double.isNaN(one.naturalLength())
                ? known(Input.RUBBER_LENGTH)
                : new Known(one.naturalLength(), "stated");
    }

    /** An input's standard uncertainty with its source. */
    Known known(Input input) {
        return new Known(of(input), source(input));
    }

    /** Whether a length of a side was measured with a tape. */
    boolean isMeasured(Side side, BodyLength length) {
        MeasuredLengths lengths = measured.get(side);
        return lengths != null && lengths.lengths().containsKey(length);
    }

    /** A standard uncertainty and where it comes from. */
    record Known(double sd, String source) {}
}
