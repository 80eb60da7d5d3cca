package counterpull.engine.motion;

import counterpull.engine.Constants;
import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;
import counterpull.engine.body.Joint;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One joint turns; what is before it is held at a stated attitude, the joints beyond it at stated angles.
 *
 * @param joint the joint that turns
 * @param attitude direction of what is before it, rad from x: the trunk (hip → shoulder) for hip and shoulder, the thigh for the
 *     knee, the shank for the ankle, the upper arm for the elbow, straight ahead for a turning shoulder
 * @param held anatomical angles of the joints beyond, rad; 0 where not stated
 * @param lie which way gravity lies in the plane
 */
public record Hinge(Joint joint, double attitude, Map<Joint, Double> held, Lie lie) implements Motion {

    /** How the plane of a movement lies. */
    public enum Lie {
        /** Upright: gravity acts in it, downward. */
        UPRIGHT(Constants.STANDARD_GRAVITY),
        /** Level: nothing weighs in it (a shoulder that turns about an upright upper arm). */
        LEVEL(0);

        private final double gravity;

        Lie(double gravity) {
            this.gravity = gravity;
        }
    }

    public Hinge {
        Require.finite(attitude, "attitude of what does not turn", "rad");
        held = Map.copyOf(held);
        List<Joint> moving = Anatomy.outward(joint);
        held.forEach((which, angle) -> {
            Require.finite(angle, "held angle of the " + which.words(), "rad");
            requireBeyond(moving, which, angle);
        });
    }

    private static void requireBeyond(List<Joint> moving, Joint which, double angle) {
        if (moving.indexOf(which) < 1) {
            throw new Refusal(
                    Fault.OUTSIDE_LIMITS,
                    "held angle of the " + which.words(),
                    angle,
                    Double.NaN,
                    "rad",
                    "the " + which.words() + " is not beyond the "
                            + moving.get(0).words() + ", so it cannot be held in this movement: leave it out");
        }
    }

    @Override
    public Optional<Joint> driver() {
        return Optional.of(joint);
    }

    @Override
    public List<Joint> joints() {
        return Anatomy.outward(joint);
    }

    @Override
    public ChainPath path(Moving limb) {
        Course course = limb.course();
        List<Joint> joints = joints();
        ChainPath.Bends bends = new ChainPath.Bends(course.positions(), joints.size());
        double turning = Anatomy.sense(joint).angleSign() * limb.sense();
        for (int i = 0; i < course.positions(); i++) {
            double before = attitude;
            for (int k = 0; k < joints.size(); k++) {
                double angle = k == 0 ? limb.driving(i) : held.getOrDefault(joints.get(k), 0.0);
                before = Anatomy.direction(joints.get(k), before, angle);
                bends.set(i, k, before, turning, 0);
            }
        }
        return new ChainPath(Anatomy.chain(limb.body(), joint), course, Anatomy.senses(joint, attitude), bends);
    }

    @Override
    public double gravity() {
        return lie.gravity;
    }

    @Override
    public String words() {
        return "the " + joint.words() + " turns";
    }
}
