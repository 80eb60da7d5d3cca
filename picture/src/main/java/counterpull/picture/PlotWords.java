package counterpull.picture;

import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;

/** Words inside a plot: over a hatched stretch, in a gap, under the zero line. */
final class PlotWords {
    private static final Lettering SMALL = Lettering.small(Ink.QUIET).aligned(Lettering.Align.MIDDLE);
    private static final double LEAST_GAP = 14;
    private final Svg svg;
    private final Plot plot;
    private final LabelRoom room;

    PlotWords(Svg svg, Plot plot, List<Vec> obstacles) {
        this.svg = svg;
        this.plot = plot;
        room = new LabelRoom(plot.frame().grown(4), obstacles);
    }

    void over(Box stretch, String words) {
        if (stretch.width() < LEAST_GAP) {
            return;
        }
        List<String> lines = Wrap.lines(words, Math.max(70, stretch.width() - 6), SMALL);
        block(stretch.left() + stretch.width() / 2, lines, 0);
    }

    void note(Layer.Note note) {
        double width = TextSize.width(note.words(), SMALL);
        double top = note.place() == Layer.Note.Place.MIDDLE
                ? plot.frame().top() + plot.frame().height() / 2
                : plot.level(0) + 4;
        List<Box> candidates = new ArrayList<>();
        for (double left = plot.frame().left() + 6; left + width < plot.frame().right(); left += 12) {
            candidates.add(new Box(left, top, width, 12));
            candidates.add(new Box(left, top + 16, width, 12));
        }
        if (!candidates.isEmpty()) {
            Box box = room.place(candidates);
            svg.text(new Vec(box.left() + width / 2, box.top() + 10), note.words(), SMALL);
        }
    }

    /** A word near a point, joined to it where it has to stand apart. */
    void beside(Vec at, String words) {
        Lettering lettering = Lettering.body(Ink.INK);
        List<LabelRoom.Spot> spots = new ArrayList<>();
        for (double distance = 12; distance < 90; distance += 8) {
            for (int turn = 0; turn < 12; turn++) {
                Vec near = at.plus(Vec.unit(-Math.PI / 2 + turn * Math.PI / 6).times(distance));
                spots.add(new LabelRoom.Spot(around(near, at, words), distance * 0.4));
            }
        }
        Box box = room.place(spots, List.of(at));
        Vec end = box.nearest(at);
        if (end.minus(at).norm() > 14) {
            svg.line(at.plus(end.minus(at).times(6 / end.minus(at).norm())), end, Pen.of(Ink.QUIET, 0.6));
        }
        svg.rect(box, new Fill(Ink.PAPER, 0.8), Pen.of(Ink.PAPER, 0));
        svg.text(new Vec(box.left(), box.top() + 0.8 * lettering.size()), words, lettering);
    }

    // the word's box, moved off the point to the side on which it stands
    private static Box around(Vec near, Vec at, String words) {
        Box size = Box.of(new Vec(0, 0), words, Lettering.body(Ink.INK));
        Vec way = near.minus(at).times(1 / near.minus(at).norm());
        double left = near.x() + (way.x() - 1) * size.width() / 2;
        double top = near.y() + (way.y() - 1) * size.height() / 2;
        return new Box(left, top, size.width(), size.height());
    }

    void gaps(Layer.Curve curve) {
        Series series = curve.series();
        int i = 0;
        while (i < series.size()) {
            int end = i;
            while (end < series.size() && !series.known(end)) {
                end++;
            }
            if (end > i) {
                gap(series, new int[] {Math.max(0, i - 1), Math.min(series.size() - 1, end)}, curve.gap());
            }
            i = end + 1;
        }
    }

    private void gap(Series series, int[] ends, String words) {
        double left = plot.x(series.x(ends[0]));
        double right = plot.x(series.x(ends[1]));
        if (right - left < LEAST_GAP) {
            return;
        }
        List<String> lines = Wrap.lines(words, Math.max(64, right - left), SMALL);
        double top = block((left + right) / 2, lines, right - left);
        double y = top - 4;
        Pen fine = Pen.of(Ink.QUIET, 0.8);
        svg.line(new Vec(left, y), new Vec(right, y), fine);
        svg.line(new Vec(left, y), new Vec(left, y + 4), fine);
        svg.line(new Vec(right, y), new Vec(right, y + 4), fine);
    }

    // a block of lines at the height where it covers least; returns its top
    private double block(double middle, List<String> lines, double bracket) {
        double width = bracket;
        for (String line : lines) {
            width = Math.max(width, TextSize.width(line, SMALL));
        }
        double height = lines.size() * 13.0;
        double left = Math.max(plot.frame().left() + 2, Math.min(plot.frame().right() - width, middle - width / 2));
        List<Box> candidates = new ArrayList<>();
        candidates.add(new Box(left, plot.frame().top() + 6, width, height));
        for (double top = plot.frame().top() + 14; top + height < plot.frame().bottom(); top += 8) {
            candidates.add(new Box(left, top, width, height));
        }
        Box box = room.place(candidates);
        svg.rect(new Box(box.left(), box.top(), width, height), new Fill(Ink.PAPER, 0.72), Pen.of(Ink.PAPER, 0));
        double y = box.top() + 10;
        for (String line : lines) {
            svg.text(new Vec(left + width / 2, y), line, SMALL);
            y += 13;
        }
        return box.top();
    }
}
