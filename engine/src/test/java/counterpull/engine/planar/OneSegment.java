package counterpull.engine.planar;

/**
 * One rigid body of a free-body diagram, as textbooks set it: given the acceleration of its centre of mass, what must its
 * proximal joint give? Uses the chain of one segment. Coordinates in m, forces in N, moments in N·m, counter-clockwise.
 */
final class OneSegment {
    private static final double COUPLE_ARM = 1;

    private final Chain chain;
    private final Vec com;
    private final PointLoads loads = new PointLoads(1);

    /** A body of this mass and inertia whose centre of mass lies at com from its proximal joint, in the plane's axes. */
    OneSegment(double mass, double inertia, Vec com) {
        this.com = com;
        chain = Chain.build().segment(1, mass, com, inertia).done();
    }

    /** A force on the body at a place relative to its proximal joint. */
    OneSegment force(Vec arm, Vec force) {
        loads.add(0, arm.x(), arm.y(), force.x(), force.y());
        return this;
    }

    /** What this body hands on to the next one at its far end: the reverse of what that one needs. */
    OneSegment carries(Vec arm, Answer distal) {
        force(arm, distal.force().times(-1));
        loads.add(0, COUPLE_ARM, 0, 0, -distal.moment());
        loads.add(0, 0, 0, 0, distal.moment());
        return this;
    }

    /** Force and moment on the body by what holds it at its proximal joint. */
    Answer moving(Vec comAcceleration, double angularAcceleration, double gravity) {
        ChainMotion motion = new ChainMotion(1);
        motion.turning(0, 0, angularAcceleration);
        Vec base = comAcceleration.minus(com.left().times(angularAcceleration));
        motion.base(base.x(), base.y());
        NewtonEuler pass = new NewtonEuler(chain).gravity(0, -gravity);
        double[] torque = new double[1];
        pass.torques(motion, loads, torque);
        return new Answer(new Vec(pass.baseForceX(), pass.baseForceY()), torque[0]);
    }

    /** Force and counter-clockwise moment at the proximal joint, on the body. */
    record Answer(Vec force, double moment) {}
}
