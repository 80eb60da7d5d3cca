package counterpull.picture;

import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.Profile;
import java.util.Optional;

/**
 * The range along a chart, from the bottom (left) to the top (right) in the driving coordinate, rad or m; for a press with the tape
 * reading at each position of the profile that it belongs to. Read-only.
 */
public final class Range {
    private static final Coordinate OF_A_PRESS = new Coordinate("knee angle", Coordinate.Kind.ANGLE);
    private final Coordinate coordinate;
    private final double[] at;
    private final Optional<Marks> marks;
    private final double[] ends;

    private Range(Coordinate coordinate, double[] at, Optional<Marks> marks, double... ends) {
        this.coordinate = coordinate;
        this.at = at;
        this.marks = marks;
        this.ends = ends;
    }

    /** The range of a profile; of a press with its tape readings. */
    public static Range of(Profile profile) {
        double[] at = new double[profile.positions()];
        for (int i = 0; i < at.length; i++) {
            at[i] = profile.driving(i);
        }
        if (profile instanceof PressProfile press) {
            return new Range(OF_A_PRESS, at, Optional.of(new Marks(at, marks(press))), at[0], at[at.length - 1]);
        }
        Coordinate coordinate = profile.driver().map(Coordinate::of).orElse(Coordinate.TRAVEL);
        return new Range(coordinate, at, Optional.empty(), at[0], at[at.length - 1]);
    }

    private static double[] marks(PressProfile press) {
        double[] marks = new double[press.positions()];
        for (int i = 0; i < marks.length; i++) {
            marks[i] = press.mark(i);
        }
        return marks;
    }

    /**
     * An axis that belongs to no single profile.
     *
     * @param coordinate what it counts
     * @param left at its left end, SI
     * @param right at its right end, SI
     */
    public static Range between(Coordinate coordinate, double left, double right) {
        return new Range(coordinate, new double[] {left, right}, Optional.empty(), left, right);
    }

    /** The same range made wide enough to hold another one too; marks stay this one's. */
    public Range holding(Range other) {
        double sense = sense();
        double from = sense * Math.min(sense * bottom(), sense * other.bottom());
        double to = sense * Math.max(sense * top(), sense * other.top());
        return new Range(coordinate, at, marks, from, to);
    }

    /** Whether its ends are the bottom and the top of a lift; an axis of several exercises has no such ends. */
    boolean ofOneProfile() {
        return at.length > 2;
    }

    Coordinate coordinate() {
        return coordinate;
    }

    /** +1 where the coordinate rises from left to right, else −1. */
    double sense() {
        return Math.signum(top() - bottom());
    }

    double bottom() {
        return ends[0];
    }

    double top() {
        return ends[1];
    }

    /** The coordinate at a position of the profile. */
    double at(int position) {
        return at[position];
    }

    Optional<Marks> marks() {
        return marks;
    }
}
