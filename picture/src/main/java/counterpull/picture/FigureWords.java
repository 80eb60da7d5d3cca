package counterpull.picture;

import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;

/** Words of a figure: asked for while it is drawn, placed where least is covered once all of it is known. */
final class FigureWords {
    private static final double STEP = 4;
    private static final int DIRECTIONS = 16;
    private static final double[] DISTANCES = {9, 15, 22, 32, 44, 60, 80, 104, 132, 164};
    private static final double FARTHER = 0.2;
    private static final double ASIDE = 0.5;
    private final Box outer;
    private final boolean roomy;
    private final List<Vec> obstacles = new ArrayList<>();
    private final List<Box> fixed = new ArrayList<>();
    private final List<Request> requests = new ArrayList<>();

    FigureWords(Box outer, Size size) {
        this.outer = outer;
        roomy = !size.small();
    }

    private record Request(Vec at, Vec prefer, String words, Lettering lettering) {}

    /** Whether there is room for second-rank words and lines. */
    boolean roomy() {
        return roomy;
    }

    /** The size of a number that matters: smaller in a small picture. */
    double strong() {
        return roomy ? Lettering.HEAD : Lettering.BODY;
    }

    /** Words stay off this stretch of picture. */
    void keepOff(Vec from, Vec to) {
        double length = to.minus(from).norm();
        int n = Math.max(1, (int) (length / STEP));
        for (int i = 0; i <= n; i++) {
            obstacles.add(from.plus(to.minus(from).times(i / (double) n)));
        }
    }

    /** Whether no word stands there yet. */
    boolean free(Box box) {
        for (Box other : fixed) {
            if (other.overlaps(box)) {
                return false;
            }
        }
        return true;
    }

    /** A word that stands where it is drawn; others keep off it. */
    void take(Box box) {
        fixed.add(box);
    }

    /** Asks for a word near a point, on the side that {@code prefer} points to if there is room. Earlier ones go first. */
    void ask(Vec at, Vec prefer, String words, Lettering lettering) {
        requests.add(new Request(at, prefer, words, lettering));
    }

    /** Asks for a word of second rank, which a small picture leaves out. */
    void askIfRoomy(Vec at, Vec prefer, String words, Lettering lettering) {
        if (roomy) {
            ask(at, prefer, words, lettering);
        }
    }

    void draw(Svg svg) {
        LabelRoom room = new LabelRoom(outer, obstacles);
        fixed.forEach(room::take);
        for (Request request : requests) {
            place(svg, room, request);
        }
    }

    private void place(Svg svg, LabelRoom room, Request request) {
        List<LabelRoom.Spot> spots = new ArrayList<>();
        double toward = Math.atan2(request.prefer.y(), request.prefer.x());
        for (double distance : DISTANCES) {
            for (int i = 0; i < DIRECTIONS; i++) {
                // 0, +1, −1, +2, −2 … steps away from the side that is preferred
                int turn = (i % 2 == 0 ? -1 : 1) * ((i + 1) / 2);
                Box box = box(request, Vec.unit(toward + turn * 2 * Math.PI / DIRECTIONS), distance);
                spots.add(new LabelRoom.Spot(box, distance * FARTHER + Math.abs(turn) * ASIDE));
            }
        }
        Box box = room.place(spots, List.of(request.at));
        leader(svg, request.at, box);
        svg.rect(box.grown(1), new Fill(Ink.PAPER, 0.72), Pen.of(Ink.PAPER, 0));
        svg.text(
                new Vec(box.left(), box.top() + 0.8 * request.lettering.size()),
                request.words,
                request.lettering.aligned(Lettering.Align.START));
    }

    private static Box box(Request request, Vec way, double distance) {
        Box size = Box.of(new Vec(0, 0), request.words, request.lettering);
        Vec near = request.at.plus(way.times(distance));
        // the box's middle moves from its near edge to its far edge as the direction turns
        double left = near.x() - size.width() / 2 + way.x() * size.width() / 2;
        double top = near.y() - size.height() / 2 + way.y() * size.height() / 2;
        return new Box(left, top, size.width(), size.height());
    }

    private static void leader(Svg svg, Vec at, Box box) {
        Vec end = box.nearest(at);
        if (end.minus(at).norm() > 16) {
            svg.line(at, end, Pen.of(Ink.QUIET, 0.6));
        }
    }
}
