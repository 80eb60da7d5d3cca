package counterpull.scenario.read;

import counterpull.scenario.problem.Code;
import counterpull.scenario.problem.Found;
import counterpull.scenario.problem.Place;
import counterpull.scenario.problem.Problem;
import counterpull.scenario.problem.Problems;
import counterpull.scenario.tree.Node.Entry;
import counterpull.scenario.tree.Node.MapNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Puts the top-level keys of several files together; each file says the format, every other key stands in one file. */
final class Merged {
    static final String FORMAT = "counterpull/1";

    private Merged() {}

    static MapNode of(List<MapNode> files, Problems problems) {
        Map<String, Entry> all = new LinkedHashMap<>();
        for (MapNode file : files) {
            FormatLine.check(file, FORMAT, problems);
            for (Entry entry : file.entries()) {
                Entry first = all.putIfAbsent(entry.key(), entry);
                if (first != null && !entry.key().equals(FormatLine.KEY)) {
                    problems.add(twice(first.place(), entry));
                }
            }
        }
        return new MapNode(files.get(0).place(), new ArrayList<>(all.values()));
    }

    /** A file without anything but who it is about. */
    static MapNode personOf(MapNode file) {
        List<Entry> kept = file.entries().stream()
                .filter(entry ->
                        entry.key().equals(FormatLine.KEY) || entry.key().equals("person"))
                .toList();
        return new MapNode(file.place(), kept);
    }

    private static Problem twice(Place first, Entry second) {
        return new Problem(
                Code.DUPLICATE_KEY,
                second.place(),
                Found.value(second.key()),
                "this key stands in two files: here and in " + first.inWords(),
                "Keep one of them");
    }
}
