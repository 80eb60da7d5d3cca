package counterpull.engine.profile;

import counterpull.engine.body.Foot;
import counterpull.engine.body.Joint;
import counterpull.engine.body.Leg;
import counterpull.engine.body.Segment;
import counterpull.engine.motion.LegPath;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.PressMotion;
import counterpull.engine.motion.Ride;
import counterpull.engine.planar.Chain;
import counterpull.engine.planar.ChainMotion;
import counterpull.engine.planar.NewtonEuler;
import counterpull.engine.planar.PointLoads;
import counterpull.engine.planar.Vec;

/**
 * One leg's own weight and inertia as joint torques (N·m, in the sense of each joint's named action), and how much torque a
 * newton of contact force makes at each joint (m), over a whole range. Working in the rail's axes.
 *
 * <p>Weight and inertia come from one Newton–Euler pass each; the contact enters through its moment arms alone, because the
 * torques are linear in every force.
 */
final class LegDynamics {
    private static final int JOINTS = Joint.LEG.size();
    private static final Phase[] PHASES = Phase.values();
    private static final Phase[] MOVING = {Phase.LIFTING, Phase.LOWERING};
    private final Grid grid;
    private final Chain chain;
    private final Foot foot;
    private final NewtonEuler weighing;
    private final NewtonEuler moving;
    private final PointLoads noLoads = new PointLoads(JOINTS);
    private final double[] torque = new double[JOINTS];
    final double[] weight;
    final double[] inertia;
    /** Force of the leg's accelerated mass along <b>u</b>, Σ m a·u, N, by phase × position. */
    final double[] inertiaAlong;
    /** N·m per newton of contact force along <b>u</b>, by position × joint. */
    final double[] armAlong;
    /** N·m per newton of contact force along <b>n</b>, by position × joint. */
    final double[] armAcross;

    private LegDynamics(Leg leg, Grid grid) {
        this.grid = grid;
        chain = chain(leg);
        foot = leg.foot();
        weighing = new NewtonEuler(chain);
        moving = new NewtonEuler(chain);
        weight = new double[grid.jointCells()];
        inertia = new double[grid.jointCells()];
        inertiaAlong = new double[grid.cells()];
        armAlong = new double[grid.positions() * JOINTS];
        armAcross = new double[grid.positions() * JOINTS];
    }

    /** The leg as a chain hip → knee → ankle → toe. */
    static Chain chain(Leg leg) {
        Chain.Builder builder = Chain.build();
        for (Segment part : new Segment[] {leg.thigh(), leg.shank(), leg.foot().asSegment()}) {
            builder.segment(part.length(), part.mass(), new Vec(part.comAlong(), part.comAcross()), part.inertia());
        }
        return builder.done();
    }

    /**
     * One leg over the range.
     *
     * @param leg the leg
     * @param press the movement
     * @param index which leg of the movement it is
     * @param frame gravity in the rail's axes, which end rides, and where the pressure is
     */
    static LegDynamics of(Leg leg, PressMotion press, int index, Frame frame) {
        LegDynamics dynamics = new LegDynamics(leg, Grid.leg(press.positions()));
        ChainMotion motion = new ChainMotion(JOINTS);
        for (int i = 0; i < press.positions(); i++) {
            dynamics.point(motion, press.path(index), i);
            dynamics.weigh(motion, i, frame.gravity());
            dynamics.arms(motion, i, frame.pressurePoint());
            for (Phase phase : MOVING) {
                dynamics.turn(motion, press.path(index), phase, i);
                double hip = frame.ride() == Ride.SEAT ? -press.acceleration(phase, i) : 0;
                dynamics.accelerate(motion, phase, i, hip);
            }
        }
        return dynamics;
    }

    /**
     * What surrounds the leg.
     *
     * @param gravity acceleration of gravity in the rail's axes, m/s²
     * @param ride which end moves
     * @param pressurePoint centre of pressure as a fraction of foot length from the heel
     */
    record Frame(Vec gravity, Ride ride, double pressurePoint) {}

    private void point(ChainMotion motion, LegPath path, int i) {
        path.point(motion, i);
        motion.rest();
    }

    private void turn(ChainMotion motion, LegPath path, Phase phase, int i) {
        motion.turning(0, path.thighRate(phase, i), path.thighAcceleration(phase, i));
        motion.turning(1, path.shankRate(phase, i), path.shankAcceleration(phase, i));
    }

    private void weigh(ChainMotion motion, int i, Vec gravity) {
        weighing.gravity(gravity.x(), gravity.y()).torques(motion, noLoads, torque);
        for (Phase phase : PHASES) {
            store(weight, phase, i);
        }
    }

    private void accelerate(ChainMotion motion, Phase phase, int i, double hipAcceleration) {
        motion.base(hipAcceleration, 0);
        moving.torques(motion, noLoads, torque);
        inertiaAlong[grid.cell(phase, i)] = moving.baseForceX();
        store(inertia, phase, i);
    }

    private void store(double[] into, Phase phase, int i) {
        int at = grid.cell(phase, i) * JOINTS;
        into[at] = -torque[0];
        into[at + 1] = torque[1];
        into[at + 2] = -torque[2];
    }

    private void arms(ChainMotion motion, int i, double pressurePoint) {
        double along = pressurePoint * foot.length() - foot.ankleFromHeel();
        double x = motion.armX(2, along, -foot.ankleHeight());
        double y = motion.armY(2, along, -foot.ankleHeight());
        int at = i * JOINTS;
        arm(at + 2, x, y, -1);
        x += motion.armX(1, chain.length(1), 0);
        y += motion.armY(1, chain.length(1), 0);
        arm(at + 1, x, y, 1);
        x += motion.armX(0, chain.length(0), 0);
        y += motion.armY(0, chain.length(0), 0);
        arm(at, x, y, -1);
    }

    /** Centre of pressure from a joint at position i, in the rail's axes, m. */
    Vec pressureFrom(Joint joint, int i) {
        int at = i * JOINTS + joint.ordinal();
        return new Vec(joint.senseOfAction() * armAcross[at], -joint.senseOfAction() * armAlong[at]);
    }

    // the plate pushes back with −F, so the torque about a joint is +(r × F)
    private void arm(int at, double x, double y, int sense) {
        armAlong[at] = -sense * y;
        armAcross[at] = sense * x;
    }
}
