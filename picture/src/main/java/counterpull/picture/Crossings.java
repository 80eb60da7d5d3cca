package counterpull.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Where two series cross: intersections of the straight pieces between their points. Two that only touch, or run on top of each other,
 * do not cross.
 */
final class Crossings {
    private static final double SAME = 1e-9;
    private final Series one;
    private final Series other;

    Crossings(Series one, Series other) {
        this.one = one;
        this.other = other;
    }

    /** The crossings, larger coordinates first, named so that {@code first} of each is the one above at larger coordinates. */
    List<Crossing> between(String oneName, String otherName) {
        List<Crossing> found = new ArrayList<>();
        for (int i = 1; i < one.size(); i++) {
            for (int j = 1; j < other.size(); j++) {
                if (known(one, i) && known(other, j)) {
                    cross(found, new Piece(one, i), new Piece(other, j), new String[] {oneName, otherName});
                }
            }
        }
        found.sort(Comparator.comparingDouble(crossing -> -crossing.angle()));
        return found;
    }

    private static boolean known(Series series, int i) {
        return series.known(i - 1) && series.known(i);
    }

    private record Piece(Series series, int i) {
        double low() {
            return Math.min(series.x(i - 1), series.x(i));
        }

        double high() {
            return Math.max(series.x(i - 1), series.x(i));
        }

        double at(double x) {
            double width = series.x(i) - series.x(i - 1);
            double part = width == 0 ? 0 : (x - series.x(i - 1)) / width;
            return series.y(i - 1) + part * (series.y(i) - series.y(i - 1));
        }
    }

    // over the stretch that two pieces share, open at its right end so that a crossing at a point counts once
    private static void cross(List<Crossing> found, Piece a, Piece b, String[] names) {
        double low = Math.max(a.low(), b.low());
        double high = Math.min(a.high(), b.high());
        if (high - low < SAME) {
            return;
        }
        double before = a.at(low) - b.at(low);
        double after = a.at(high) - b.at(high);
        boolean crosses = before < 0 ? after >= 0 : before > 0 && after <= 0;
        if (crosses) {
            double x = low + (high - low) * before / (before - after);
            boolean oneAbove = before < 0;
            found.add(new Crossing(names[oneAbove ? 0 : 1], names[oneAbove ? 1 : 0], x, a.at(x)));
        }
    }
}
