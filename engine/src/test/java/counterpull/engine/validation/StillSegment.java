package counterpull.engine.validation;

import counterpull.engine.planar.Chain;
import counterpull.engine.planar.ChainMotion;
import counterpull.engine.planar.NewtonEuler;
import counterpull.engine.planar.PointLoads;
import counterpull.engine.planar.Vec;

/**
 * One segment held still in a stated direction, solved by the engine as a chain of one: the joint's torque, and what the joint's
 * surfaces carry beside a muscle. Places along the segment in m from the joint, forces in N, the plane's axes.
 */
final class StillSegment {
    private final Chain chain;
    private final ChainMotion motion = new ChainMotion(1);
    private final PointLoads loads = new PointLoads(1);
    private final NewtonEuler pass;
    private final double[] torque = new double[1];

    /** A segment of this mass, its centre of mass so far from the joint; direction in degrees from level. */
    StillSegment(double mass, double com, double degrees, double gravity) {
        chain = Chain.build().segment(1, mass, new Vec(com, 0), 0).done();
        motion.direction(0, Math.toRadians(degrees));
        pass = new NewtonEuler(chain).gravity(0, -gravity);
    }

    /** One without weight, level. */
    static StillSegment weightless() {
        return new StillSegment(1, 0, 0, 0);
    }

    /** A force at a place along the segment. */
    StillSegment force(double along, Vec force) {
        loads.add(0, motion.armX(0, along, 0), motion.armY(0, along, 0), force.x(), force.y());
        return this;
    }

    /** A weight at a place along the segment. */
    StillSegment weight(double along, double newtons) {
        return force(along, new Vec(0, -newtons));
    }

    /** Torque of the joint, counter-clockwise on the segment, N·m. */
    double torque() {
        pass.torques(motion, loads, torque);
        return torque[0];
    }

    /** Pull of a muscle with this lever arm, m, that gives the whole torque. */
    double muscle(double arm) {
        return torque() / arm;
    }

    /** What the joint's surfaces push on the segment with, beside a muscle's pull. */
    Vec surfaces(Vec musclePull) {
        torque();
        return new Vec(pass.baseForceX(), pass.baseForceY()).minus(musclePull);
    }
}
