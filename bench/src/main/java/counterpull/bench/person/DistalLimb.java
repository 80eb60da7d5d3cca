package counterpull.bench.person;

import counterpull.bench.person.Attitude.Beyond;
import counterpull.engine.Constants;
import counterpull.engine.body.Action;
import counterpull.engine.body.Anthropometry;
import counterpull.engine.body.BodyLength;
import counterpull.engine.body.Foot;
import counterpull.engine.body.Joint;
import counterpull.engine.body.Segment;

/** What lies beyond a joint: how long it is and what its weight turns. Segments from the person's own table. */
final class DistalLimb {
    /** Hand over forearm: 0.108 and 0.146 of stature (Drillis and Contini 1966; looked up). */
    private static final double HAND_OVER_FOREARM = 0.108 / 0.146;

    private static final double DOWN = -Math.PI / 2;
    private static final double SQUARE = Math.PI / 2;

    private final Anthropometry body;
    private final Joint joint;

    DistalLimb(Anthropometry body, Joint joint) {
        this.body = body;
        this.joint = joint;
    }

    /** Farthest from the joint that a pad can lie, m. */
    double reach() {
        return switch (joint) {
            case HIP, HIP_SIDEWAYS ->
                length(BodyLength.THIGH) + length(BodyLength.SHANK) + length(BodyLength.ANKLE_HEIGHT);
            case KNEE -> length(BodyLength.SHANK) + length(BodyLength.ANKLE_HEIGHT);
            case ANKLE -> length(BodyLength.FOOT) - length(BodyLength.ANKLE_FROM_HEEL);
            case SHOULDER, SHOULDER_SIDEWAYS -> length(BodyLength.UPPER_ARM) + forearmAndHand();
            case SHOULDER_TURNING, ELBOW -> forearmAndHand();
        };
    }

    private double forearmAndHand() {
        return length(BodyLength.FOREARM) * (1 + HAND_OVER_FOREARM);
    }

    private double length(BodyLength which) {
        return body.length(which);
    }

    /** Torque in the sense of the action that holds the limb's weight, N·m; negative where the weight does the action's work. */
    double weight(Action action, Attitude attitude) {
        return JointOf.sense(action) * Constants.STANDARD_GRAVITY * firstMoment(attitude);
    }

    /** Σ mass × distance ahead of the joint, kg·m. */
    private double firstMoment(Attitude attitude) {
        double along = attitude.direction();
        return switch (joint) {
            case HIP -> moment(body.leg().thigh(), 0, along) + shin(attitude, ahead(BodyLength.THIGH, along));
            case KNEE -> shinAndFoot(along, 0);
            case ANKLE -> moment(body.foot().asSegment(), 0, along);
            case HIP_SIDEWAYS -> legSideways(along);
            case SHOULDER, SHOULDER_SIDEWAYS -> moment(body.upperArm(), 0, along) + forearm(attitude);
            case SHOULDER_TURNING, ELBOW -> moment(body.forearmAndHand(), 0, along);
        };
    }

    private double ahead(BodyLength length, double direction) {
        return length(length) * Math.cos(direction);
    }

    private double shin(Attitude attitude, double knee) {
        return attitude.beyond() == Beyond.BORNE ? 0 : shinAndFoot(next(attitude), knee);
    }

    private double forearm(Attitude attitude) {
        double elbow = ahead(BodyLength.UPPER_ARM, attitude.direction());
        return attitude.beyond() == Beyond.BORNE ? 0 : moment(body.forearmAndHand(), elbow, next(attitude));
    }

    private static double next(Attitude attitude) {
        return attitude.beyond() == Beyond.HANGING ? DOWN : attitude.direction();
    }

    /** The foot is square to the shin. */
    private double shinAndFoot(double along, double knee) {
        double ankle = knee + ahead(BodyLength.SHANK, along);
        return moment(body.leg().shank(), knee, along) + moment(body.foot().asSegment(), ankle, along + SQUARE);
    }

    /** Straight, seen from the front: the foot's mass half its ankle's height beyond the ankle. */
    private double legSideways(double along) {
        Foot foot = body.foot();
        double knee = ahead(BodyLength.THIGH, along);
        double ankle = knee + ahead(BodyLength.SHANK, along);
        return moment(body.leg().thigh(), 0, along)
                + moment(body.leg().shank(), knee, along)
                + foot.mass() * (ankle + foot.ankleHeight() / 2 * Math.cos(along));
    }

    private static double moment(Segment part, double start, double direction) {
        double ahead = part.comAlong() * Math.cos(direction) - part.comAcross() * Math.sin(direction);
        return part.mass() * (start + ahead);
    }
}
