package counterpull.app.cli;

import counterpull.engine.choice.Choice;
import counterpull.engine.choice.Question;
import counterpull.engine.choice.Search;
import java.io.PrintWriter;
import java.util.concurrent.TimeUnit;

/**
 * Runs a search in the open: says how far it is when it takes longer than a second, and stops when asked, by an interrupt or
 * by its time, with what it has so far.
 */
final class Searching {
    private static final int SETUPS_AT_ONCE = 200;
    private static final long FIRST_WORD = TimeUnit.SECONDS.toNanos(1);
    private volatile boolean stopped;
    private final PrintWriter progress;

    Searching(PrintWriter progress) {
        this.progress = progress;
    }

    /**
     * Searches until all is seen, the time is over or somebody interrupts.
     *
     * @param question what to search
     * @param seconds how long at most
     */
    Choice run(Question question, double seconds) {
        Thread searching = Thread.currentThread();
        Thread interrupt = new Thread(() -> stopAndWait(searching));
        Runtime.getRuntime().addShutdownHook(interrupt);
        Search search = new Search(question);
        long start = System.nanoTime();
        long end = start + (long) (seconds * TimeUnit.SECONDS.toNanos(1));
        long next = start + FIRST_WORD;
        while (!stopped && System.nanoTime() < end && search.advance(SETUPS_AT_ONCE)) {
            if (System.nanoTime() > next) {
                tell(search.progress());
                next = System.nanoTime() + FIRST_WORD;
            }
        }
        if (!stopped) {
            Runtime.getRuntime().removeShutdownHook(interrupt);
        }
        return search.result();
    }

    private void tell(Search.Progress now) {
        String stage = now.placesDone() < now.places()
                ? now.placesDone() + " of " + now.places() + " places done"
                : "pairing sets of a split range";
        progress.println(
                "searching… " + now.considered() + " setups judged, " + stage + " (Ctrl-C stops it with what it has)");
    }

    /** Holds the end of the program back until the answer so far is out. */
    private void stopAndWait(Thread searching) {
        stopped = true;
        try {
            searching.join(TimeUnit.SECONDS.toMillis(10));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
