package counterpull.app.cli;

import java.util.concurrent.TimeUnit;

/** Whether memory is left for more setups: a search keeps every one that keeps every limit, and needs room for its answer. */
final class Room {
    private static final double FULL = 0.75;
    private static final long EVERY = TimeUnit.SECONDS.toNanos(5);
    private long next = System.nanoTime() + EVERY;

    boolean enough() {
        if (System.nanoTime() - next < 0) {
            return true;
        }
        next = System.nanoTime() + EVERY;
        if (used() < FULL) {
            return true;
        }
        // what is used counts what nobody needs any more, until that is collected
        System.gc();
        return used() < FULL;
    }

    private static double used() {
        Runtime here = Runtime.getRuntime();
        return (double) (here.totalMemory() - here.freeMemory()) / here.maxMemory();
    }
}
