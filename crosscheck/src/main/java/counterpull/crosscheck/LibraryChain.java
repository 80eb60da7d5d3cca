package counterpull.crosscheck;

import counterpull.engine.planar.Chain;
import java.util.ArrayList;
import java.util.List;
import us.ihmc.euclid.referenceFrame.ReferenceFrame;
import us.ihmc.euclid.tuple3D.Vector3D;
import us.ihmc.mecano.algorithms.InverseDynamicsCalculator;
import us.ihmc.mecano.multiBodySystem.OneDoFJoint;
import us.ihmc.mecano.multiBodySystem.PrismaticJoint;
import us.ihmc.mecano.multiBodySystem.RevoluteJoint;
import us.ihmc.mecano.multiBodySystem.RigidBody;

/**
 * The same planar chain in a general-purpose library for bodies in space: two sliding joints carry the first joint along x and
 * y, hinges about z follow. It takes what the engine takes: absolute directions and rates (rad, rad/s, rad/s²), forces in the
 * plane's axes (N) at arms from a segment's proximal joint (m).
 */
public final class LibraryChain {
    private static final Vector3D X = new Vector3D(1, 0, 0);
    private static final Vector3D Y = new Vector3D(0, 1, 0);
    private static final Vector3D Z = new Vector3D(0, 0, 1);
    private static final Vector3D HERE = new Vector3D();
    private final Chain chain;
    private final RigidBody root;
    private final OneDoFJoint baseX;
    private final OneDoFJoint baseY;
    private final List<RevoluteJoint> hinges = new ArrayList<>();
    private final List<RigidBody> bodies = new ArrayList<>();
    private final InverseDynamicsCalculator inverseDynamics;
    private final double[] direction;
    private double lastDirection;
    private double lastRate;
    private double lastAcceleration;

    /** The same chain; gravity in the plane's axes, m/s². */
    public LibraryChain(Chain chain, double gravityX, double gravityY) {
        this.chain = chain;
        direction = new double[chain.size()];
        root = new RigidBody("root", ReferenceFrame.getWorldFrame());
        baseX = new PrismaticJoint("base x", root, HERE, X);
        RigidBody slide = new RigidBody("slide x", baseX, 0, 0, 0, 0, HERE);
        baseY = new PrismaticJoint("base y", slide, HERE, Y);
        RigidBody before = new RigidBody("slide y", baseY, 0, 0, 0, 0, HERE);
        for (int i = 0; i < chain.size(); i++) {
            before = hang(before, i);
        }
        inverseDynamics = new InverseDynamicsCalculator(root);
        inverseDynamics.setGravitationalAcceleration(gravityX, gravityY, 0);
    }

    private RigidBody hang(RigidBody before, int i) {
        Vector3D offset = new Vector3D(i == 0 ? 0 : chain.length(i - 1), 0, 0);
        RevoluteJoint hinge = new RevoluteJoint("joint " + i, before, offset, Z);
        hinges.add(hinge);
        Vector3D com = new Vector3D(chain.comAlong(i), chain.comAcross(i), 0);
        // a body in space has three moments of inertia; only the one about z matters in the plane
        double inertia = chain.inertia(i);
        bodies.add(new RigidBody("segment " + i, hinge, inertia, inertia, inertia, chain.mass(i), com));
        return bodies.get(i);
    }

    /** Starts a new instant: no loads, the first joint at rest or accelerating, m/s². */
    public void begin(double accelerationX, double accelerationY) {
        baseX.setQdd(accelerationX);
        baseY.setQdd(accelerationY);
        glide(0, 0);
        lastDirection = 0;
        lastRate = 0;
        lastAcceleration = 0;
        inverseDynamics.setExternalWrenchesToZero();
    }

    /** Lets the first joint move as well, m/s; it changes no torque, but how fast every point goes. */
    public void glide(double velocityX, double velocityY) {
        baseX.setQd(velocityX);
        baseY.setQd(velocityY);
    }

    /** Points and turns the next segment; segments in their order, proximal first. */
    public void segment(int i, double angle, double rate, double acceleration) {
        direction[i] = angle;
        hinges.get(i).setQ(angle - lastDirection);
        hinges.get(i).setQd(rate - lastRate);
        hinges.get(i).setQdd(acceleration - lastAcceleration);
        lastDirection = angle;
        lastRate = rate;
        lastAcceleration = acceleration;
    }

    /** Adds a force on segment i at an arm from its proximal joint, all in the plane's axes. */
    public void load(int i, Vector3D arm, Vector3D force) {
        double c = Math.cos(direction[i]);
        double s = Math.sin(direction[i]);
        double along = c * force.getX() + s * force.getY();
        double across = -s * force.getX() + c * force.getY();
        add(i, c * arm.getX() + s * arm.getY(), -s * arm.getX() + c * arm.getY(), along, across);
    }

    /** Adds a force in the plane's axes on segment i at a place along and across it from its proximal joint. */
    public void loadAt(int i, Vector3D place, Vector3D force) {
        double c = Math.cos(direction[i]);
        double s = Math.sin(direction[i]);
        double along = c * force.getX() + s * force.getY();
        double across = -s * force.getX() + c * force.getY();
        add(i, place.getX(), place.getY(), along, across);
    }

    /** Adds a couple on segment i, N·m, counter-clockwise. */
    public void turn(int i, double couple) {
        inverseDynamics.getExternalWrench(bodies.get(i)).getAngularPart().add(0, 0, couple);
    }

    private void add(int i, double armAlong, double armAcross, double along, double across) {
        double fromComAlong = armAlong - chain.comAlong(i);
        double fromComAcross = armAcross - chain.comAcross(i);
        var wrench = inverseDynamics.getExternalWrench(bodies.get(i));
        wrench.getLinearPart().add(along, across, 0);
        wrench.getAngularPart().add(0, 0, fromComAlong * across - fromComAcross * along);
    }

    RigidBody root() {
        return root;
    }

    RigidBody body(int i) {
        return bodies.get(i);
    }

    ReferenceFrame axes(int i) {
        return hinges.get(i).getFrameAfterJoint();
    }

    /** Computes, and writes the torque of each joint, N·m. */
    public void torques(double[] torque) {
        root.updateFramesRecursively();
        inverseDynamics.compute();
        for (int i = 0; i < torque.length; i++) {
            torque[i] = inverseDynamics.getComputedJointTau(hinges.get(i)).get(0);
        }
    }

    /** Force on the first segment by what holds it, x, N; of the latest evaluation. */
    public double baseForceX() {
        return inverseDynamics.getComputedJointTau(baseX).get(0);
    }

    /** Force on the first segment by what holds it, y, N; of the latest evaluation. */
    public double baseForceY() {
        return inverseDynamics.getComputedJointTau(baseY).get(0);
    }
}
