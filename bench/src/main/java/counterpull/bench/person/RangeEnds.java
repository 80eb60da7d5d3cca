package counterpull.bench.person;

import counterpull.bench.Kind;
import counterpull.bench.Remark;
import counterpull.bench.person.RangeBench.End;

/** The two ends of one range beside each other. */
final class RangeEnds {
    private RangeEnds() {}

    /** Whether the least of a joint lies above its most. */
    static boolean exchanged(RangeResult least, RangeResult most) {
        RangeBench.Which one = least.of().which();
        RangeBench.Which other = most.of().which();
        return one.joint() == other.joint()
                && one.side() == other.side()
                && one.end() == End.LEAST
                && other.end() == End.MOST
                && least.angle().value() >= most.angle().value();
    }

    static Remark remark(RangeResult least, RangeResult most) {
        return Remark.doubts("range-ends-exchanged", least.of().which().words() + " is ")
                .then(least.angle().value(), Kind.ANGLE)
                .then(" and the most ")
                .then(most.angle().value(), Kind.ANGLE)
                .then(": were the two ends exchanged?");
    }
}
