package counterpull.benchmarks;

import counterpull.engine.body.Joint;
import counterpull.engine.uncertainty.Doubts;
import counterpull.engine.uncertainty.EffortBands;
import counterpull.engine.uncertainty.Looked;
import counterpull.engine.uncertainty.PressTrial;
import counterpull.engine.uncertainty.Sampling;
import counterpull.engine.uncertainty.Stated;
import counterpull.engine.uncertainty.Tally;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * Bands of effort for the whole profile of {@link ProfileBenchmark}, every input at its usual uncertainty, in µs: 10,000 draws on two
 * threads, and 100 on one.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class SureBenchmark {
    private static final int THREADS = 2;
    private static final int DRAWS = 10_000;
    private Sampling<PressTrial> sampling;
    private Tally used;

    /** Lays the draws out; what that takes is not timed. */
    @Setup
    public void setUp() {
        Doubts<PressTrial> doubts = Doubts.of(BenchTask.task(), Stated.nothing());
        sampling = new Sampling<>(doubts, new Looked(Joint.LEG, 0.9), 1, DRAWS);
        used = sampling.tally();
    }

    /** One part: 100 draws, each a whole profile, counted. */
    @Benchmark
    public Tally hundredDraws() {
        sampling.draw(0, used);
        return used;
    }

    /** From nothing to the bands. */
    @Benchmark
    public double tenThousandDraws() throws InterruptedException {
        AtomicInteger next = new AtomicInteger();
        Tally[] tallies = new Tally[THREADS];
        Thread[] threads = new Thread[THREADS];
        for (int k = 0; k < THREADS; k++) {
            Tally own = sampling.tally();
            tallies[k] = own;
            threads[k] = new Thread(() -> draw(next, own));
            threads[k].start();
        }
        for (int k = 0; k < THREADS; k++) {
            threads[k].join();
            if (k > 0) {
                tallies[0].add(tallies[k]);
            }
        }
        EffortBands bands = sampling.bands(tallies[0]);
        return bands.peak().high();
    }

    private void draw(AtomicInteger next, Tally into) {
        for (int part = next.getAndIncrement(); part < sampling.parts(); part = next.getAndIncrement()) {
            sampling.draw(part, into);
        }
    }
}
