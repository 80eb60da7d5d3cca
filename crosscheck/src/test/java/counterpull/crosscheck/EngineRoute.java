package counterpull.crosscheck;

import counterpull.engine.planar.ChainMotion;
import counterpull.engine.planar.NewtonEuler;
import counterpull.engine.planar.PointLoads;
import counterpull.engine.planar.Vec;

/** A moving chain with all that pulls on it, asked of the engine: lines by summing link by link. */
final class EngineRoute {
    private final MovingChain moving;
    private final PointLoads loads;
    private final NewtonEuler pass;
    final double[] torque;

    EngineRoute(MovingChain moving) {
        this.moving = moving;
        torque = new double[moving.chain.size()];
        loads = new PointLoads(torque.length);
        pass = new NewtonEuler(moving.chain).gravity(0, -MovingChain.GRAVITY);
        hang();
        pass.torques(motion(), loads, torque);
    }

    private void hang() {
        for (MovingChain.Load load : moving.loads) {
            add(load.segment(), moving.arm(load.segment(), load.along(), load.across(), 0), load.force());
        }
        for (StackCable cable : moving.cables) {
            Vec pull = cable.pull(StackCable::tension, moving.line(cable, 0), MovingChain.GRAVITY);
            add(cable.segment(), moving.arm(cable.segment(), cable.along(), cable.across(), 0), pull);
        }
    }

    private void add(int segment, Vec arm, Vec force) {
        loads.add(segment, arm.x(), arm.y(), force.x(), force.y());
    }

    private ChainMotion motion() {
        ChainMotion motion = new ChainMotion(torque.length);
        motion.base(moving.baseAcceleration.x(), moving.baseAcceleration.y());
        for (int i = 0; i < torque.length; i++) {
            motion.direction(i, moving.direction[i]);
            motion.turning(i, moving.rate[i], moving.turning[i]);
        }
        return motion;
    }

    Vec baseForce() {
        return new Vec(pass.baseForceX(), pass.baseForceY());
    }

    /** What joints, first joint and loads put in, W; cables are left out: their stacks are part of what gains. */
    double power() {
        double power = moving.baseVelocity.dot(baseForce());
        for (int i = 0; i < torque.length; i++) {
            power += torque[i] * (moving.rate[i] - (i == 0 ? 0 : moving.rate[i - 1]));
        }
        for (MovingChain.Load load : moving.loads) {
            PlainPoint at = moving.point(load.segment(), load.along(), load.across(), 0);
            power += load.force().dot(at.velocity());
        }
        return power;
    }
}
