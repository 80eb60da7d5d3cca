package counterpull.bench.person;

import counterpull.bench.Answer;
import counterpull.bench.Budget;
import counterpull.bench.Kind;
import counterpull.bench.Remark;
import counterpull.engine.strength.Prior;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Lays one strength test beside another: left beside right, or today's beside the last visit's. The errors of the two are taken as
 * independent; what they share (the same tape, the same table of segments) only makes the interval wider than it need be.
 */
public final class Comparing {
    /** Angles nearer than this are one angle; two people read a knee further apart. */
    static final double ONE_ANGLE = Math.toRadians(2.5);

    private final Optional<Prior> shape;

    /**
     * @param shape published curve of the action for this person, to carry a torque from one angle to another; empty where there is
     *     none
     */
    public Comparing(Optional<Prior> shape) {
        this.shape = shape;
    }

    /** The left over the right. */
    public Answer<Comparison> sides(StrengthResult left, StrengthResult right) {
        return ratio(left, right, left.of().subject().action().words() + ", left beside right");
    }

    /** Now over before. */
    public Answer<Comparison> visits(StrengthResult before, StrengthResult now) {
        String what = now.of().subject().words();
        Answer<Comparison> answer = ratio(now, before, what);
        List<Remark> remarks = new ArrayList<>();
        if (before.of().way().tester() != now.of().way().tester()) {
            remarks.add(Remark.doubts(
                    "another-way",
                    what + ": tested in another way than the last time; instruments differ by up to"
                            + " 16 % on the same people, and that is in no interval here"));
        }
        answer.result().ifPresent(found -> remarks.add(said(found, now)));
        return answer.with(remarks);
    }

    private static Remark said(Comparison found, StrengthResult now) {
        String sign = found.ratio() >= 1 ? ": +" : ": ";
        Remark begun = (found.beyond()
                        ? Remark.note("change-beyond", now.of().subject().words() + " at ")
                        : Remark.note("change-within", now.of().subject().words() + " at "))
                .then(now.of().subject().angle(), Kind.ANGLE)
                .then(sign)
                .then(found.ratio() - 1, Kind.SHARE);
        return found.beyond()
                ? begun.then(", more than the ")
                        .then(found.detectable(), Kind.SHARE)
                        .then(" that this way of testing can tell from nothing")
                : begun.then(", less than the ")
                        .then(found.detectable(), Kind.SHARE)
                        .then(" that this way of testing can tell from nothing");
    }

    private Answer<Comparison> ratio(StrengthResult one, StrengthResult other, String what) {
        List<Remark> remarks = new ArrayList<>();
        if (one.of().subject().action() != other.of().subject().action()) {
            remarks.add(Remark.refuses(
                    "other-action",
                    what + ": " + one.of().subject().words() + " cannot be laid beside "
                            + other.of().subject().words()));
        }
        if (one.floorOnly() || other.floorOnly()) {
            StrengthResult floor = one.floorOnly() ? one : other;
            remarks.add(Remark.refuses("floor-compared", what + ": the test at ")
                    .then(floor.of().subject().angle(), Kind.ANGLE)
                    .then(" (" + floor.of().subject().side().words()
                            + ") was stopped before the most, and what is only a floor is neither more nor less than"
                            + " anything"));
        }
        boolean same =
                Math.abs(one.of().subject().angle() - other.of().subject().angle()) <= ONE_ANGLE;
        if (!same && (shape.isEmpty() || !carries(one, other))) {
            remarks.add(Remark.refuses("angles-differ", what + ": tested at ")
                    .then(one.of().subject().angle(), Kind.ANGLE)
                    .then(" and at ")
                    .then(other.of().subject().angle(), Kind.ANGLE)
                    .then(", and no curve carries the one to the other: test both at one angle"));
        }
        if (!remarks.isEmpty()) {
            return Answer.refused(remarks);
        }
        if (same) {
            return Answer.of(of(one, other, 1, 0), List.of());
        }
        return Answer.of(
                byCurve(one, other),
                List.of(
                        Remark.note("compared-by-curve", what + ": tested at ")
                                .then(one.of().subject().angle(), Kind.ANGLE)
                                .then(" and at ")
                                .then(other.of().subject().angle(), Kind.ANGLE)
                                .then(
                                        "; the second is carried to the first by the published curve, and the interval is wider for it")));
    }

    private boolean carries(StrengthResult one, StrengthResult other) {
        return shape.get().known(one.of().subject().angle(), 0)
                && shape.get().known(other.of().subject().angle(), 0);
    }

    private Comparison byCurve(StrengthResult one, StrengthResult other) {
        double here = one.of().subject().angle();
        double there = other.of().subject().angle();
        Prior curve = shape.orElseThrow();
        double variance = curve.logCovariance(here, here)
                + curve.logCovariance(there, there)
                - 2 * curve.logCovariance(here, there);
        return of(one, other, curve.held(here) / curve.held(there), Math.sqrt(Math.max(0, variance)));
    }

    /** {@code carried}: factor that brings the other's torque to the one's angle, with its log's standard deviation. */
    private static Comparison of(StrengthResult one, StrengthResult other, double carried, double carriedSd) {
        double ratio = one.log().value() / (other.log().value() * carried);
        Budget budget = one.log().budget().and(other.log().budget()).with(carriedSd);
        return new Comparison(ratio, budget, carriedSd == 0 ? Comparison.How.SAME_ANGLE : Comparison.How.BY_CURVE);
    }
}
