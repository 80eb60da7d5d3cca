package counterpull.engine.body;

import java.util.Optional;

/**
 * One side of a person: its leg and arm, and the trunk that both sides share.
 *
 * @param leg thigh, shank, foot
 * @param arm upper arm, forearm and hand; empty where only the leg is known, which is enough for a press
 * @param trunk head, arms and trunk of the whole person as one segment from hip to shoulder; empty where the named table has no
 *     such row, and then nothing that stands can be computed
 */
public record BodySide(Leg leg, Optional<Arm> arm, Optional<Segment> trunk) {
    /** A side of which only the leg is known. */
    public static BodySide of(Leg leg) {
        return new BodySide(leg, Optional.empty(), Optional.empty());
    }

    /** A length of this side, m; NaN where nothing of it is known. */
    public double length(BodyLength which) {
        return switch (which) {
            case THIGH -> leg.thigh().length();
            case SHANK -> leg.shank().length();
            case FOOT -> leg.foot().length();
            case ANKLE_HEIGHT -> leg.foot().ankleHeight();
            case ANKLE_FROM_HEEL -> leg.foot().ankleFromHeel();
            case TRUNK -> trunk.map(Segment::length).orElse(Double.NaN);
            case UPPER_ARM -> arm.map(one -> one.upperArm().length()).orElse(Double.NaN);
            case FOREARM -> arm.map(one -> one.forearm().length()).orElse(Double.NaN);
        };
    }

    /** The same side with one other length, m; masses stay. What is not known of it stays not known. */
    public BodySide with(BodyLength which, double length) {
        Foot foot = leg.foot();
        return switch (which) {
            case THIGH -> with(new Leg(leg.thigh().ofLength(length), leg.shank(), foot));
            case SHANK -> with(new Leg(leg.thigh(), leg.shank().ofLength(length), foot));
            case FOOT -> with(foot.ofLength(length));
            case ANKLE_HEIGHT -> with(foot.ofAnkleHeight(length));
            case ANKLE_FROM_HEEL -> with(foot.ofAnkleFromHeel(length));
            case TRUNK -> new BodySide(leg, arm, trunk.map(one -> one.ofLength(length)));
            case UPPER_ARM -> withArm(arm.map(one -> new Arm(one.upperArm().ofLength(length), one.forearm())));
            case FOREARM ->
                withArm(arm.map(one -> new Arm(one.upperArm(), one.forearm().ofLength(length))));
        };
    }

    /** The same side with its leg and arm so many times as heavy; the trunk stays. */
    public BodySide limbsHeavier(double factor) {
        Leg heavier = new Leg(
                leg.thigh().heavier(factor),
                leg.shank().heavier(factor),
                leg.foot().heavier(factor));
        return new BodySide(
                heavier,
                arm.map(one ->
                        new Arm(one.upperArm().heavier(factor), one.forearm().heavier(factor))),
                trunk);
    }

    /** The same side with its trunk so many times as heavy. */
    public BodySide trunkHeavier(double factor) {
        return new BodySide(leg, arm, trunk.map(one -> one.heavier(factor)));
    }

    private BodySide with(Foot foot) {
        return with(new Leg(leg.thigh(), leg.shank(), foot));
    }

    private BodySide with(Leg other) {
        return new BodySide(other, arm, trunk);
    }

    private BodySide withArm(Optional<Arm> other) {
        return new BodySide(leg, other, trunk);
    }
}
