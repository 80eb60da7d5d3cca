package counterpull.picture;

import counterpull.engine.profile.PressProfile;

/**
 * The range along a chart: from the bottom (left) to the top (right) in knee angle, with the tape reading at each position of
 * the profile that it belongs to. Read-only.
 */
public final class Range {
    private final double[] angle;
    private final double[] mark;
    private final double bottom;
    private final double top;

    private Range(double[] angle, double[] mark, double bottom, double top) {
        this.angle = angle;
        this.mark = mark;
        this.bottom = bottom;
        this.top = top;
    }

    /** The range of a profile. */
    public static Range of(PressProfile profile) {
        int n = profile.positions();
        double[] angle = new double[n];
        double[] mark = new double[n];
        for (int i = 0; i < n; i++) {
            angle[i] = profile.driving(i);
            mark[i] = profile.mark(i);
        }
        return new Range(angle, mark, angle[0], angle[n - 1]);
    }

    /** The same range made wide enough to hold another one too; marks stay this one's. */
    public Range holding(Range other) {
        return new Range(angle, mark, Math.max(bottom, other.bottom), Math.min(top, other.top));
    }

    double bottom() {
        return bottom;
    }

    double top() {
        return top;
    }

    double angle(int position) {
        return angle[position];
    }

    /** Smallest and largest tape reading. */
    double lowestMark() {
        return Math.min(mark[0], mark[mark.length - 1]);
    }

    double highestMark() {
        return Math.max(mark[0], mark[mark.length - 1]);
    }

    /** Knee angle at a tape reading between the two. */
    double angleAtMark(double reading) {
        double sense = mark[mark.length - 1] > mark[0] ? 1 : -1;
        int i = 1;
        while (i < mark.length - 1 && sense * mark[i] < sense * reading) {
            i++;
        }
        double part = (reading - mark[i - 1]) / (mark[i] - mark[i - 1]);
        return angle[i - 1] + part * (angle[i] - angle[i - 1]);
    }
}
