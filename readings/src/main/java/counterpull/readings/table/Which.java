package counterpull.readings.table;

import java.util.List;
import java.util.Map;

/**
 * The column that says to which list of readings a row belongs.
 *
 * @param key its name ("side", "readings")
 * @param names how else a heading may call it
 * @param also other words for the lists' names
 */
record Which(String key, List<String> names, Map<String, String> also) {
    Wanted wanted(List<String> lists) {
        return Wanted.must(key, new Due.OneOf(lists, also), names.toArray(new String[0]));
    }

    /** What a row says of it. */
    String of(Map<String, String> row) {
        return row.getOrDefault(key, "");
    }
}
