package counterpull.engine.architecture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;

/** Does everything that the engine must not; the rules are tried on it. */
final class Impure {
    static final ArrayList<String> NAMES = new ArrayList<>(List.of("a"));
    static final double[] OPEN = {1};
    static int count;

    private Impure() {}

    static synchronized void bump() {
        count++;
        System.out.println(String.format(Locale.ROOT, "%d %d", count, System.nanoTime()));
        new Thread(Impure::bump).setName(NAMES.get(0) + OPEN[0] + TimeUnit.DAYS);
    }
}
