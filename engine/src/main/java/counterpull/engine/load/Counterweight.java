package counterpull.engine.load;

import counterpull.engine.Require;

/**
 * A weight that balances part of the carriage through a line: taken off its weight, added to its inertia.
 *
 * @param mass kg, zero or more
 * @param run how the weight moves
 */
public record Counterweight(double mass, Run run) {
    /** How a counterweight moves, and so what share of its weight it pulls along the rail. */
    public enum Run {
        /** On the same incline: pulls with m g sin θ. */
        ALONG_RAIL,
        /** Hanging free over a pulley, moving as far as the carriage does: pulls with m g. */
        HANGING
    }

    public Counterweight {
        Require.within(mass, new Require.Limits(0, 1000), "counterweight", "kg");
    }

    /** No counterweight. */
    public static Counterweight none() {
        return new Counterweight(0, Run.ALONG_RAIL);
    }
}
