package counterpull.bench.tubing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A pull as the person knows it: its place in the list as noted. */
record NamedPull(String name, double length, double force) {
    static List<NamedPull> stretching(Pulls pulls) {
        return named(pulls.stretching(), "");
    }

    static List<NamedPull> lettingGo(Pulls pulls) {
        return named(pulls.lettingGo(), " of those letting go");
    }

    static List<NamedPull> firstStretch(Pulls pulls) {
        return named(pulls.firstStretch(), " of the first stretch");
    }

    static List<NamedPull> all(Pulls pulls) {
        List<NamedPull> all = new ArrayList<>(stretching(pulls));
        all.addAll(lettingGo(pulls));
        all.addAll(firstStretch(pulls));
        return all;
    }

    private static List<NamedPull> named(List<Pull> pulls, String which) {
        List<NamedPull> named = new ArrayList<>();
        for (int i = 0; i < pulls.size(); i++) {
            named.add(new NamedPull(
                    "pull " + (i + 1) + which,
                    pulls.get(i).length(),
                    pulls.get(i).force()));
        }
        return named;
    }

    /** In order of rising length; readings at one length in the order noted. */
    static List<NamedPull> rising(List<NamedPull> pulls) {
        return pulls.stream()
                .sorted(Comparator.comparingDouble(NamedPull::length))
                .toList();
    }
}
