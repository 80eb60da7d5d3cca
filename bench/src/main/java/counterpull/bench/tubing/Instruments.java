package counterpull.bench.tubing;

import java.util.OptionalDouble;

/**
 * How sure the scale and the tape are, as stated; one standard deviation each.
 *
 * @param scale of one reading of all strands together, N; empty: the readings' own scatter says it
 * @param tape of one length beside the stretched piece, m; empty: none is added to what the scatter or the scale say
 */
public record Instruments(OptionalDouble scale, OptionalDouble tape) {
    /** Nothing stated. */
    public static final Instruments NOT_STATED = new Instruments(OptionalDouble.empty(), OptionalDouble.empty());

    /** A scale of that standard uncertainty, N. */
    public static Instruments scale(double newton) {
        return new Instruments(OptionalDouble.of(newton), OptionalDouble.empty());
    }
}
