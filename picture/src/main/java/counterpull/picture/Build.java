package counterpull.picture;

import counterpull.engine.body.Anthropometry;
import counterpull.engine.body.BodyLength;
import counterpull.engine.body.BodySide;
import counterpull.engine.body.DrillisContini1966;
import counterpull.engine.body.Leg;
import counterpull.engine.body.Segment;

/**
 * How big the rest of a person is drawn: what the result of a press does not hold.
 *
 * @param stature m
 * @param trunk hip to shoulder, m
 * @param upperArm shoulder to elbow, m
 * @param forearm elbow to wrist, m
 */
public record Build(double stature, double trunk, double upperArm, double forearm) {
    /** From the person's own lengths. */
    public static Build of(Anthropometry body) {
        return new Build(
                body.stature(),
                body.length(BodyLength.TRUNK),
                body.length(BodyLength.UPPER_ARM),
                body.length(BodyLength.FOREARM));
    }

    /** From one side's segments; what they do not hold in proportion to its leg. */
    public static Build of(BodySide side) {
        Build leg = of(side.leg());
        return new Build(
                leg.stature,
                side.trunk().map(Segment::length).orElse(leg.trunk),
                side.arm().map(arm -> arm.upperArm().length()).orElse(leg.upperArm),
                side.arm().map(arm -> arm.forearm().length()).orElse(leg.forearm));
    }

    /** In proportion to a leg, by the published fractions of stature, where no more is known. */
    public static Build of(Leg leg) {
        double legs = leg.thigh().length() + leg.shank().length();
        double stature = legs / (DrillisContini1966.THIGH.fraction() + DrillisContini1966.SHANK.fraction());
        return new Build(
                stature,
                BodyLength.TRUNK.of(stature),
                BodyLength.UPPER_ARM.of(stature),
                BodyLength.FOREARM.of(stature));
    }

    /** A share of stature, m: half widths of the drawn outline are given so. */
    double share(double fraction) {
        return fraction * stature;
    }
}
