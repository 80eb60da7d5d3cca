package counterpull.engine.motion;

import counterpull.engine.Require;
import counterpull.engine.body.BodySide;
import counterpull.engine.body.Joint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What goes along a straight path: a hand in the sagittal or in a frontal plane, or a foot that stays flat against a plate. */
public sealed interface Reach permits Reach.Hand, Reach.HandSideways, Reach.FlatFoot {
    /** The joint that does not move, where the limb starts. */
    Joint joint();

    /** The two links from that joint to what goes along the path. */
    TwoLinks links(BodySide body);

    /** How far the second segment's direction lies clockwise of the second link's, rad. */
    double offLink();

    /** Directions of the segments after the second, which do not turn, rad. */
    List<Double> beyond();

    /** What is led along the path, as a person says it. */
    String words();

    /** The senses of the chain's joints where what is before it points {@code attitude}, rad. */
    default List<JointSense> senses(double attitude) {
        return Anatomy.senses(joint(), attitude);
    }

    private static double alongForearm(BodySide body, Optional<BodyPoint> grip) {
        return grip.map(point -> point.at().norm())
                .orElseGet(() -> Anatomy.chain(body, Joint.ELBOW).length(0));
    }

    private static double angle(Optional<BodyPoint> grip) {
        return grip.map(point -> Math.atan2(point.at().y(), point.at().x())).orElse(0.0);
    }

    private static void checkGrip(Optional<BodyPoint> grip) {
        grip.ifPresent(point -> {
            Require.within(point.segment(), new Require.Limits(1, 1), "segment of the grip", "");
            Require.positive(point.at().x(), "place of the grip along the forearm", "m");
        });
    }

    /**
     * A hand in the sagittal plane; the elbow lies where its flexion is positive.
     *
     * @param grip where it holds, a point of the forearm's segment (index 1) from the elbow; the wrist where not measured
     */
    record Hand(Optional<BodyPoint> grip) implements Reach {
        public Hand {
            checkGrip(grip);
        }

        @Override
        public Joint joint() {
            return Joint.SHOULDER;
        }

        @Override
        public TwoLinks links(BodySide body) {
            return arm(body, Joint.SHOULDER, grip, 1);
        }

        @Override
        public double offLink() {
            return angle(grip);
        }

        @Override
        public List<Double> beyond() {
            return List.of();
        }

        @Override
        public String words() {
            return "the hand";
        }
    }

    /**
     * A hand in a frontal plane, seen so that the arm is raised counter-clockwise.
     *
     * @param grip where it holds, a point of the forearm's segment (index 1) from the elbow; the wrist where not measured
     * @param side to which side the elbow folds
     */
    record HandSideways(Optional<BodyPoint> grip, ElbowSide side) implements Reach {
        public HandSideways {
            checkGrip(grip);
        }

        @Override
        public Joint joint() {
            return Joint.SHOULDER_SIDEWAYS;
        }

        @Override
        public TwoLinks links(BodySide body) {
            return arm(body, Joint.SHOULDER_SIDEWAYS, grip, side.turn());
        }

        @Override
        public double offLink() {
            return angle(grip);
        }

        @Override
        public List<Double> beyond() {
            return List.of();
        }

        @Override
        public List<JointSense> senses(double attitude) {
            List<JointSense> senses = new ArrayList<>(Anatomy.senses(joint(), attitude));
            JointSense elbow = senses.get(1);
            senses.set(
                    1,
                    new JointSense(Joint.ELBOW, side.turn() * elbow.angleSign(), 0, side.turn() * elbow.torqueSign()));
            return senses;
        }

        @Override
        public String words() {
            return "the hand, sideways,";
        }
    }

    private static TwoLinks arm(BodySide body, Joint shoulder, Optional<BodyPoint> grip, int turn) {
        double upperArm = Anatomy.chain(body, shoulder).length(0);
        return new TwoLinks(upperArm, alongForearm(body, grip), turn, new TwoLinks.Names("shoulder to grip", "elbow"));
    }

    /**
     * A foot flat against a plate that does not turn; the ankle goes along the path, the knee lies where its flexion is positive.
     *
     * @param direction heel → toe, rad from x
     */
    record FlatFoot(double direction) implements Reach {
        public FlatFoot {
            Require.finite(direction, "direction of the foot", "rad");
        }

        @Override
        public Joint joint() {
            return Joint.HIP;
        }

        @Override
        public TwoLinks links(BodySide body) {
            double thigh = body.leg().thigh().length();
            double shank = body.leg().shank().length();
            return new TwoLinks(thigh, shank, -1, new TwoLinks.Names("hip to ankle", "knee"));
        }

        @Override
        public double offLink() {
            return 0;
        }

        @Override
        public List<Double> beyond() {
            return List.of(direction);
        }

        @Override
        public String words() {
            return "the foot";
        }
    }
}
