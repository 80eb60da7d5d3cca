package counterpull.readings.table;

import java.util.List;

/**
 * Several things of which one at least must be said.
 *
 * @param keys which
 * @param question what is asked where no heading names any of them, and no row says that it is one
 */
public record Asked(List<String> keys, String question) {
    public Asked {
        keys = List.copyOf(keys);
    }
}
