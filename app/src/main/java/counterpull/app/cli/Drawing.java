package counterpull.app.cli;

import counterpull.engine.uncertainty.EffortBands;
import counterpull.engine.uncertainty.Sampling;
import counterpull.engine.uncertainty.Tally;
import counterpull.engine.uncertainty.Trial;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;

/** Draws the parts of a sampling on two threads; the answer does not depend on who draws which. */
final class Drawing {
    private static final int THREADS = 2;

    private Drawing() {}

    static <T extends Trial<T>> EffortBands of(Sampling<T> sampling) {
        ExecutorService threads = Executors.newFixedThreadPool(THREADS);
        try {
            AtomicInteger next = new AtomicInteger();
            List<Future<Tally>> drawn = new ArrayList<>();
            for (int k = 0; k < THREADS; k++) {
                drawn.add(threads.submit(() -> parts(sampling, next)));
            }
            Tally all = drawn.get(0).get();
            for (Future<Tally> other : drawn.subList(1, THREADS)) {
                all.add(other.get());
            }
            return sampling.bands(all);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("stopped while drawing", stopped);
        } catch (ExecutionException failed) {
            throw new IllegalStateException("a draw failed", failed.getCause());
        } finally {
            threads.shutdownNow();
        }
    }

    private static <T extends Trial<T>> Tally parts(Sampling<T> sampling, AtomicInteger next) {
        Tally tally = sampling.tally();
        for (int part = next.getAndIncrement(); part < sampling.parts(); part = next.getAndIncrement()) {
            sampling.draw(part, tally);
        }
        return tally;
    }
}
