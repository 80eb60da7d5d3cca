package counterpull.engine.elastic;

import counterpull.engine.Require;

/**
 * One reading from a bench: a piece held at a length, and the force that a scale showed.
 *
 * @param length of the rubber, m, above zero
 * @param force of one strand, N, ≥ 0
 */
public record BenchReading(double length, double force) {
    private static final Require.Limits NOT_NEGATIVE = new Require.Limits(0, Double.POSITIVE_INFINITY);

    public BenchReading {
        Require.positive(length, "length in a bench reading", "m");
        Require.within(force, NOT_NEGATIVE, "force in a bench reading", "N");
    }
}
