package counterpull.bench.person;

import counterpull.bench.Remark;
import java.util.List;

/** Whether left and right look exchanged against the last visit. */
public final class Exchanged {
    /** Each side moved more than this ... */
    private static final double MOVED = 0.15;

    /** ... and is nearer than this to what the other had. */
    private static final double ALIKE = 0.08;

    private Exchanged() {}

    /**
     * Says so where each side now has what the other had; else nothing.
     *
     * @param before torques of the last visit, N·m
     * @param now torques of this one, N·m
     */
    public static List<Remark> look(String what, Sides before, Sides now) {
        boolean moved = apart(now.left, before.left) > MOVED && apart(now.right, before.right) > MOVED;
        boolean crossed = apart(now.left, before.right) < ALIKE && apart(now.right, before.left) < ALIKE;
        return moved && crossed
                ? List.of(
                        Remark.doubts(
                                "sides-exchanged",
                                what
                                        + ": left now has what right had at the last visit, and right what left had. Were the sides exchanged?"))
                : List.of();
    }

    private static double apart(double one, double other) {
        return Math.abs(Math.log(one / other));
    }

    /**
     * One number for each side.
     *
     * @param left of the left
     * @param right of the right
     */
    public record Sides(double left, double right) {}
}
