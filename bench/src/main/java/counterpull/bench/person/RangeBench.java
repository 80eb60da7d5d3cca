package counterpull.bench.person;

import counterpull.bench.Answer;
import counterpull.bench.Budget;
import counterpull.bench.Estimate;
import counterpull.bench.Kind;
import counterpull.bench.Remark;
import counterpull.engine.body.Joint;
import counterpull.engine.body.Side;
import java.util.ArrayList;
import java.util.List;

/**
 * One end of a joint's range, read once or more.
 *
 * <p>Standard uncertainty: scatter/√readings and what the same person's range reads differently on another day, as independent parts.
 *
 * @param which joint, side, end, and how the person got there
 * @param with what it was read with
 * @param readings anatomical angle, rad, in their order, one or more
 */
public record RangeBench(Which which, AngleGauge with, List<Double> readings) {
    /** Readings of one end further apart than this are not of one end; ours. */
    private static final double APART = Math.toRadians(30);

    /** Past every published error of one reading by eye at hip, knee and ankle. */
    private static final double RESTLESS = Math.toRadians(15);

    /**
     * Which end.
     *
     * @param joint the joint
     * @param side left or right
     * @param end the smaller or the larger anatomical angle
     * @param how how the person got there
     */
    public record Which(Joint joint, Side side, End end, How how) {
        /** As a person says it ("knee flexion left, most, without pain"). */
        public String words() {
            return joint.angleWords() + " " + side.words() + ", " + end.words + ", " + how.words;
        }
    }

    /** The two ends of an angle. */
    public enum End {
        /** The smaller angle: straight for a knee. */
        LEAST("least"),
        /** The larger angle: bent for a knee. */
        MOST("most");

        private final String words;

        End(String words) {
            this.words = words;
        }

        /** How a table says it. */
        public String words() {
            return words;
        }
    }

    /** How far a person goes. */
    public enum How {
        /** By their own muscles, as far as they go. */
        ACTIVE("by their own muscles"),
        /** As far as it does not hurt. */
        PAIN_FREE("without pain");

        private final String words;

        How(String words) {
            this.words = words;
        }

        /** How a table says it. */
        public String words() {
            return words;
        }
    }

    public RangeBench {
        readings = List.copyOf(readings);
    }

    /** What the readings say. */
    public Answer<RangeResult> answer() {
        List<Remark> remarks = refusals();
        if (!remarks.isEmpty()) {
            return Answer.refused(remarks);
        }
        Scatter scatter = Scatter.of(readings);
        double between = with.sd(which.joint, which.end);
        Budget budget = scatter.into(Budget.none().with(between));
        Estimate angle = Estimate.student(scatter.mean(), budget.standardError(), budget.degreesOfFreedom());
        return Answer.of(
                new RangeResult(this, angle, scatter, Detectable.change(budget.standardError())), notes(scatter));
    }

    private String reading(int index) {
        return "reading " + (index + 1) + " of " + which.words();
    }

    private List<Remark> refusals() {
        List<Remark> remarks = new ArrayList<>();
        if (readings.isEmpty()) {
            remarks.add(Remark.refuses("no-readings", which.words() + ": there is no reading"));
        }
        for (int i = 0; i < readings.size(); i++) {
            if (!Double.isFinite(readings.get(i))) {
                remarks.add(Remark.refuses("not-a-number", reading(i) + ": the angle is no number"));
            } else {
                JointChecks.impossible(which.joint, readings.get(i), reading(i)).ifPresent(remarks::add);
            }
        }
        if (remarks.isEmpty()) {
            int farthest = farthest();
            double apart = Math.abs(readings.get(farthest) - readings.get(0));
            if (apart >= APART) {
                remarks.add(
                        Remark.refuses("readings-far-apart", reading(farthest) + " is ")
                                .then(readings.get(farthest), Kind.ANGLE)
                                .then(" and the first ")
                                .then(readings.get(0), Kind.ANGLE)
                                .then(
                                        ": they are not of one end. Was it the same joint and side, and zero where the limb is straight?"));
            }
        }
        return remarks;
    }

    private int farthest() {
        int found = 0;
        for (int i = 1; i < readings.size(); i++) {
            boolean farther =
                    Math.abs(readings.get(i) - readings.get(0)) > Math.abs(readings.get(found) - readings.get(0));
            found = farther ? i : found;
        }
        return found;
    }

    private List<Remark> notes(Scatter scatter) {
        List<Remark> remarks = new ArrayList<>();
        if (!scatter.repeated()) {
            remarks.add(Remark.note(
                    "one-reading", which.words() + ": read once; a second reading, from anew, shows a slip"));
        }
        int farthest = farthest();
        if (Math.abs(readings.get(farthest) - readings.get(0)) > RESTLESS) {
            remarks.add(Remark.doubts("readings-apart", reading(farthest) + " is ")
                    .then(readings.get(farthest), Kind.ANGLE)
                    .then(" and the first ")
                    .then(readings.get(0), Kind.ANGLE)
                    .then(": more apart than reading alone makes them"));
        }
        return remarks;
    }
}
