package counterpull.scenario.content;

import counterpull.engine.elastic.BenchReading;
import counterpull.engine.elastic.LossFraction;
import counterpull.engine.elastic.Unloading;
import counterpull.engine.elastic.UnloadingCurve;
import java.util.List;

/** What a piece gives back while it shortens, as a file describes it. */
public sealed interface GivesBack {

    /** As the engine takes it, for a piece of that natural length, m. */
    Unloading unloading(double naturalLength);

    /**
     * The same fraction less at every stretch.
     *
     * @param loss 0 to below 1
     */
    record Less(double loss) implements GivesBack {
        @Override
        public Unloading unloading(double naturalLength) {
            return new LossFraction(loss);
        }
    }

    /**
     * Readings while it shortened.
     *
     * @param readings in order of rising length
     */
    record Bench(List<BenchReading> readings) implements GivesBack {
        public Bench {
            readings = List.copyOf(readings);
        }

        @Override
        public Unloading unloading(double naturalLength) {
            return new UnloadingCurve(naturalLength, readings);
        }
    }
}
