package counterpull.bench.fit;

import counterpull.engine.Require;

/** How far a reading may lie from the truth. */
public sealed interface Noise permits Noise.Stated, Noise.FromScatter {
    /**
     * Somebody says so: the instrument's standard uncertainty. Intervals are then normal ones, from as few readings as there are
     * parameters on.
     *
     * @param sd one standard deviation of a reading of weight one, in its own SI unit, above 0
     */
    record Stated(double sd) implements Noise {
        public Stated {
            Require.positive(sd, "standard uncertainty of one reading", "");
        }
    }

    /** The readings' own scatter about the fitted curve says so; needs at least one reading more than parameters. */
    record FromScatter() implements Noise {}
}
