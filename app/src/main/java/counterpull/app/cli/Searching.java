package counterpull.app.cli;

import counterpull.engine.choice.Choice;
import counterpull.engine.choice.Question;
import counterpull.engine.choice.Search;
import java.io.PrintWriter;
import java.util.concurrent.TimeUnit;

/**
 * Runs a search in the open: says how far it is, and stops when asked, by an interrupt,
 * by its time, or before memory runs out, with what it has so far.
 */
final class Searching {
    private static final int SETUPS_AT_ONCE = 200;
    /** Seconds that an answer may take once the search is stopped. */
    private static final int LONGEST_ANSWER = 60;

    private volatile boolean stopped;
    private final Telling telling;

    Searching(PrintWriter progress) {
        telling = new Telling(progress);
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
        Room room = new Room();
        long start = System.nanoTime();
        while (!stopped
                && System.nanoTime() - start < seconds * 1e9
                && room.enough()
                && search.advance(SETUPS_AT_ONCE)) {
            telling.of(search);
        }
        telling.end();
        if (!stopped) {
            Runtime.getRuntime().removeShutdownHook(interrupt);
        }
        return search.result();
    }

    /** Holds the end of the program back until the answer so far is out. */
    private void stopAndWait(Thread searching) {
        stopped = true;
        try {
            searching.join(TimeUnit.SECONDS.toMillis(LONGEST_ANSWER));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
