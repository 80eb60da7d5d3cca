package counterpull.app.cli;

import counterpull.engine.choice.Search;
import java.io.PrintWriter;
import java.util.concurrent.TimeUnit;

/** Tells how far a search is: on a terminal, on one line that is written over, from the second second on; else nothing. */
final class Telling {
    /** Set by the launcher where standard error is a terminal. */
    private static final String TERMINAL = "counterpull.terminal";

    private static final long EVERY = TimeUnit.SECONDS.toNanos(1);
    private final PrintWriter to;
    private final boolean terminal;
    private long next = System.nanoTime() + EVERY;
    private int written;

    Telling(PrintWriter to) {
        this(to, Boolean.getBoolean(TERMINAL));
    }

    Telling(PrintWriter to, boolean terminal) {
        this.to = to;
        this.terminal = terminal;
    }

    /** Tells where a second has gone by. */
    void of(Search search) {
        if (terminal && System.nanoTime() - next > 0) {
            over(words(search));
            next = System.nanoTime() + EVERY;
        }
    }

    /** Takes the line off again. */
    void end() {
        if (written > 0) {
            over("");
            over("");
        }
    }

    private void over(String line) {
        to.print("\r" + line + " ".repeat(Math.max(0, written - line.length())) + (line.isEmpty() ? "\r" : ""));
        to.flush();
        written = line.length();
    }

    /** What the search does now and how far that is. */
    static String words(Search search) {
        Search.Progress now = search.progress();
        String judged = now.considered() + " setups judged; ";
        String stage = search.splits()
                .map(splits -> "pairing heavy and light sets, seat and row " + Math.min(splits.done() + 1, splits.all())
                        + " of " + splits.all())
                .orElse("single setups, place " + Math.min(now.placesDone() + 1, now.places()) + " of " + now.places());
        return judged + stage + " (Ctrl-C: what it has)";
    }
}
