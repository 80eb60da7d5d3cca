package counterpull.picture;

import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Labels in a column beside the plot, each as near to its line's end as the others let it be. */
final class LabelColumn {
    private static final double KEY = 26;
    private static final double GAP = 3;
    private final Box column;
    private final Lettering lettering;
    private final List<Entry> entries = new ArrayList<>();

    LabelColumn(Box column, Lettering lettering) {
        this.column = column;
        this.lettering = lettering;
    }

    /** Draws the short piece of line that stands before a label. */
    interface Key {
        void draw(Svg svg, Vec from, Vec to);
    }

    private final class Entry {
        final Vec end;
        final List<String> lines;
        final Key key;
        final Rank rank;
        double middle;

        Entry(Text text, List<String> lines, Key key) {
            end = text.end;
            rank = text.rank;
            this.lines = lines;
            this.key = key;
            middle = end.y();
        }

        double height() {
            return lines.size() * lettering.size() * 1.15 + GAP;
        }
    }

    /** Which labels give way where there is no room for all. */
    enum Rank {
        FIRST,
        SECOND
    }

    /**
     * A label.
     *
     * @param end where its line ends, px
     * @param words what it says
     * @param rank whether it may be left out
     */
    record Text(Vec end, String words, Rank rank) {}

    void add(Text text, Key key) {
        double room = column.width() - KEY - 12;
        entries.add(new Entry(text, Wrap.lines(text.words, room, lettering), key));
    }

    void draw(Svg svg) {
        entries.sort(Comparator.comparingDouble(entry -> entry.middle));
        thin();
        spread();
        for (Entry entry : entries) {
            draw(svg, entry);
        }
    }

    // a curve of second rank is told by its marker and arrow heads too, so its label may go
    private void thin() {
        for (int i = entries.size() - 1; i >= 0 && needed() > column.height(); i--) {
            if (entries.get(i).rank == Rank.SECOND) {
                entries.remove(i);
            }
        }
    }

    private double needed() {
        double sum = 0;
        for (Entry entry : entries) {
            sum += entry.height();
        }
        return sum;
    }

    // pushes down from the top, then back up from the bottom, halving what is moved so that both ends share it
    private void spread() {
        for (int round = 0; round < 60; round++) {
            for (int i = 1; i < entries.size(); i++) {
                part(entries.get(i - 1), entries.get(i));
            }
            clamp();
        }
        settle();
    }

    private void part(Entry upper, Entry lower) {
        double lacking = (upper.height() + lower.height()) / 2 - (lower.middle - upper.middle);
        if (lacking > 0) {
            upper.middle -= lacking / 2;
            lower.middle += lacking / 2;
        }
    }

    private void clamp() {
        for (Entry entry : entries) {
            double half = entry.height() / 2;
            entry.middle = Math.max(column.top() + half, Math.min(column.bottom() - half, entry.middle));
        }
    }

    private void settle() {
        double floor = column.top();
        for (Entry entry : entries) {
            entry.middle = Math.max(entry.middle, floor + entry.height() / 2);
            floor = entry.middle + entry.height() / 2;
        }
    }

    private void draw(Svg svg, Entry entry) {
        double left = column.left() + 10;
        Vec start = new Vec(left, entry.middle);
        svg.line(entry.end.plus(new Vec(2, 0)), start.plus(new Vec(-2, 0)), Pen.of(Ink.QUIET, 0.6));
        entry.key.draw(svg, start, start.plus(new Vec(KEY - 4, 0)));
        double line = lettering.size() * 1.15;
        double y = entry.middle - (entry.lines.size() - 1) * line / 2 + 0.36 * lettering.size();
        for (String words : entry.lines) {
            svg.text(new Vec(left + KEY, y), words, lettering);
            y += line;
        }
    }
}
