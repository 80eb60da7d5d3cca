package counterpull.engine.load;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.elastic.Strand;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Course;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.PointTrack;
import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;

/**
 * One {@link StretchLine} over a whole range: its points, path, rubber length, looseness and what one strand pulls. Lengths m, forces N
 * per strand. Looseness = L₀ + w − P, positive loose, negative pre-stretched. Read-only once made.
 */
public final class StretchSeries {
    // points that keep their distance have a slope of some 1e-16, whose sign must not decide whether the line shortens
    private static final double STANDSTILL = 1e-12;
    private final StretchLine line;
    private final Course course;
    private final PointTrack from;
    private final PointTrack to;
    private final StretchedLength rubber;
    private final double[] runOut;
    private final double[] fromAside;
    private final double[] toAside;
    private final List<Vec> fromEnd = new ArrayList<>();
    private final List<Vec> toEnd = new ArrayList<>();

    StretchSeries(StretchLine line, ChainPath limb) {
        this.line = line;
        course = limb.course();
        from = line.from().track(limb);
        to = line.to().track(limb);
        int n = limb.positions();
        double[] path = new double[n];
        double[] growth = new double[n];
        runOut = new double[n];
        fromAside = new double[n];
        toAside = new double[n];
        double between = betweenGuides();
        for (int i = 0; i < n; i++) {
            path[i] = place(i, between);
            growth[i] = running(runOut[i] - fromEnd.get(i).dot(from.slope(i)));
        }
        rubber = new StretchedLength(line.strand(), line.deadLength(), path, growth);
    }

    private double betweenGuides() {
        double sum = 0;
        for (int k = 1; k < line.guides().size(); k++) {
            Guide near = line.guides().get(k - 1);
            Guide far = line.guides().get(k);
            sum += length(far.at().minus(near.at()), far.lateral() - near.lateral());
        }
        return sum;
    }

    /** Lays the line at position i and gives its whole path, m. */
    private double place(int i, double between) {
        List<Guide> guides = line.guides();
        boolean straight = guides.isEmpty();
        Vec first = straight ? to.at(i) : guides.get(0).at();
        Vec last = straight ? from.at(i) : guides.get(guides.size() - 1).at();
        double near = length(first.minus(from.at(i)), asideOf(true));
        double far = length(last.minus(to.at(i)), asideOf(false));
        Vec towardFirst = first.minus(from.at(i)).times(1 / near);
        Vec towardLast = last.minus(to.at(i)).times(1 / far);
        fromAside[i] = asideOf(true) / near;
        toAside[i] = asideOf(false) / far;
        fromEnd.add(towardFirst);
        toEnd.add(towardLast);
        runOut[i] = running(-towardLast.dot(to.slope(i)));
        return straight ? near : near + between + far;
    }

    private static double running(double slope) {
        return Math.abs(slope) < STANDSTILL ? 0 : slope;
    }

    /** How far to the side the next point of the line lies from one of its ends, m. */
    private double asideOf(boolean atFrom) {
        List<Guide> guides = line.guides();
        double start = line.from().lateral();
        double end = line.to().lateral();
        if (guides.isEmpty()) {
            return atFrom ? end - start : start - end;
        }
        return atFrom
                ? guides.get(0).lateral() - start
                : guides.get(guides.size() - 1).lateral() - end;
    }

    private double length(Vec inPlane, double aside) {
        double length = Math.sqrt(inPlane.dot(inPlane) + aside * aside);
        if (length < 1e-9) {
            throw new Refusal(
                    Fault.COINCIDENT_POINTS,
                    "straight piece of the " + line.name(),
                    length,
                    0,
                    "m",
                    "two points of the " + line.name()
                            + " meet in this range, so it has no direction there: use another hook");
        }
        return length;
    }

    /** The line itself. */
    public StretchLine line() {
        return line;
    }

    /** One of its strands. */
    public Strand strand() {
        return line.strand();
    }

    /** Its points in the plane at position i: from, guides, to; m from the fixed joint. */
    public List<Vec> points(int i) {
        List<Vec> points = new ArrayList<>();
        points.add(from.at(i));
        line.guides().forEach(guide -> points.add(guide.at()));
        points.add(to.at(i));
        return points;
    }

    /** Whole path at position i, m. */
    public double path(int i) {
        return rubber.path(i);
    }

    /** d(path)/dx: positive where it grows toward the top. */
    public double growth(int i) {
        return rubber.growth(i);
    }

    /** Length left for the rubber, P − w, m; below natural length it hangs loose. */
    public double rubberLength(int i) {
        return rubber.rubberLength(i);
    }

    /** Rubber length over natural length; below 1 the line is loose. */
    public double stretch(int i) {
        return rubber.stretch(i);
    }

    /** Looseness L₀ + w − P at position i, m: positive loose, negative pre-stretched. */
    public double looseness(int i) {
        return rubber.looseness(i);
    }

    /** Pull of one strand where the rubber hangs, N; NaN past the tested length. */
    public double tension(Phase phase, int i) {
        return rubber.tension(phase, i);
    }

    /** Pull of one strand on the other end, beyond the guides, N. */
    public double tensionAtTo(Phase phase, int i) {
        double factor = 1;
        double running = Math.signum(phase.sense() * runOut[i]);
        for (Guide guide : line.guides()) {
            factor *= 1 + running * guide.loss();
        }
        return tension(phase, i) * factor;
    }

    /** Power that one strand's rubber and guides turn into heat, W, zero or more. */
    double lost(Phase phase, int i) {
        double speed = course.speed(phase, i);
        double inRubber = rubber.shortens(phase, i) ? rubber.kept(i) * Math.abs(rubber.growth(i) * speed) : 0;
        return inRubber + (tensionAtTo(phase, i) - tension(phase, i)) * runOut[i] * speed;
    }

    /** At the from end, along the line: in-plane part of the unit vector, by position. */
    List<Vec> fromEnd() {
        return fromEnd;
    }

    /** At the to end, along the line back: in-plane part of the unit vector, by position. */
    List<Vec> toEnd() {
        return toEnd;
    }

    /** The longest rubber length of the range, m. */
    public double longest() {
        return rubber.longest();
    }

    /** Whether the line tightens anywhere in the range. */
    public boolean tightens() {
        return rubber.tightens();
    }

    /** Refuses a line that passes its tested length somewhere in the range. */
    public StretchSeries withinTestedLength() {
        rubber.requireTested("the " + line.name(), "hook");
        return this;
    }

    /**
     * What one fixed end of it carries at position i, N: all strands, or half of them where a matched pair hangs on a point at each side;
     * 0 where the line does not end on that point.
     */
    double[] on(FixedPoint point, Phase phase, int i) {
        double[] sum = new double[3];
        if (line.from().equals(point)) {
            carry(sum, fromEnd.get(i), fromAside[i], line.strands() * tension(phase, i));
        }
        if (line.to().equals(point)) {
            carry(sum, toEnd.get(i), toAside[i], line.strands() * tensionAtTo(phase, i));
        }
        return sum;
    }

    private void carry(double[] sum, Vec toward, double aside, double pull) {
        boolean half = line.pieces().placement() == Placement.MATCHED_PAIR && fixedAside();
        double share = half ? pull / 2 : pull;
        sum[0] += share * toward.x();
        sum[1] += share * toward.y();
        sum[2] += half ? share * aside : 0;
    }

    private boolean fixedAside() {
        LineEnd fixed = line.from().moves() ? line.to() : line.from();
        return fixed.lateral() != 0;
    }
}
