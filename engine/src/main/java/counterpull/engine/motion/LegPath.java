package counterpull.engine.motion;

import counterpull.engine.body.Joint;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.ChainMotion;
import counterpull.engine.planar.Vec;
import java.util.List;

/**
 * One leg at every position of a range on a sled: directions of its segments and its joint angles (rad), and how fast they
 * turn in each phase (rad/s, rad/s²). Directions are from the rail's <b>u</b>. Read-only once made.
 *
 * <p>Rates follow from the ankle's velocity v along <b>u</b> by the two-link Jacobian: t′ = −v·e(s)/(a sin κ), s′ = v·e(t)/(b
 * sin κ), κ the knee's flexion; accelerations from the same with v replaced by the ankle's acceleration + a t′² e(t) + b s′²
 * e(s). Both grow without bound at straight, so a moving range ends 2° before.
 */
public final class LegPath implements LimbPath {
    private static final int JOINTS = Joint.LEG.size();
    private final double[] thighDirection;
    private final double[] shankDirection;
    private final double footDirection;
    private final double[] thighCos;
    private final double[] thighSin;
    private final double[] shankCos;
    private final double[] shankSin;
    private final double footCos;
    private final double footSin;
    private final double[] angle;
    private final double[][] rate;
    private final double[][] acceleration;

    private LegPath(int n, double footDirection) {
        this.footDirection = footDirection;
        thighDirection = new double[n];
        shankDirection = new double[n];
        thighCos = new double[n];
        thighSin = new double[n];
        shankCos = new double[n];
        shankSin = new double[n];
        footCos = Math.cos(footDirection);
        footSin = Math.sin(footDirection);
        angle = new double[n * JOINTS];
        rate = new double[Phase.values().length][2 * n];
        acceleration = new double[Phase.values().length][2 * n];
    }

    /**
     * The path of one leg.
     *
     * @param leg the leg's triangle
     * @param plate hip-to-plate distance at each position, m
     * @param frame the rail and the trunk's direction
     * @param strokes how the plate moves in each phase, by the phase's ordinal
     */
    static LegPath of(LegOnPlate leg, double[] plate, Frame frame, StrokeMotion[] strokes) {
        LegPath path = new LegPath(plate.length, Math.PI / 2 + frame.rail().plateTilt());
        for (int i = 0; i < plate.length; i++) {
            path.place(i, leg, plate[i], frame);
        }
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < plate.length; i++) {
                path.turn(i, leg, phase, strokes[phase.ordinal()]);
            }
        }
        return path;
    }

    /**
     * Where the plane's axes and the trunk lie.
     *
     * @param rail the rail
     * @param trunkDirection hip → shoulder, rad from the horizontal
     */
    record Frame(Rail rail, double trunkDirection) {}

    private void place(int i, LegOnPlate leg, double plate, Frame frame) {
        double cos = leg.cosineOfKnee(plate);
        double knee = Math.acos(cos);
        Vec bend = new Vec(cos, Math.sqrt((1 - cos) * (1 + cos)));
        Vec along = leg.alongThigh(plate, bend);
        thighCos[i] = along.x();
        thighSin[i] = along.y();
        shankCos[i] = along.x() * bend.x() + along.y() * bend.y();
        shankSin[i] = along.y() * bend.x() - along.x() * bend.y();
        double thigh = Math.atan2(along.y(), along.x());
        thighDirection[i] = thigh;
        shankDirection[i] = thigh - knee;
        angle[i * JOINTS + Joint.HIP.ordinal()] =
                Angles.wrap(thigh + frame.rail().angle() - frame.trunkDirection() + Math.PI);
        angle[i * JOINTS + Joint.KNEE.ordinal()] = knee;
        angle[i * JOINTS + Joint.ANKLE.ordinal()] = Angles.wrap(footDirection - shankDirection[i] - Math.PI / 2);
    }

    private void turn(int i, LegOnPlate leg, Phase phase, StrokeMotion stroke) {
        double v = stroke.speed(i);
        double acceleration = stroke.acceleration(i);
        if (v == 0 && acceleration == 0) {
            return;
        }
        double sin = thighSin[i] * shankCos[i] - thighCos[i] * shankSin[i];
        double perThigh = 1 / (leg.thigh() * sin);
        double perShank = 1 / (leg.shank() * sin);
        double thighRate = -v * shankCos[i] * perThigh;
        double shankRate = v * thighCos[i] * perShank;
        double alongThigh = leg.thigh() * thighRate * thighRate;
        double alongShank = leg.shank() * shankRate * shankRate;
        double wx = acceleration + alongThigh * thighCos[i] + alongShank * shankCos[i];
        double wy = alongThigh * thighSin[i] + alongShank * shankSin[i];
        double[] rates = rate[phase.ordinal()];
        double[] accelerations = this.acceleration[phase.ordinal()];
        rates[2 * i] = thighRate;
        rates[2 * i + 1] = shankRate;
        accelerations[2 * i] = -(wx * shankCos[i] + wy * shankSin[i]) * perThigh;
        accelerations[2 * i + 1] = (wx * thighCos[i] + wy * thighSin[i]) * perShank;
    }

    @Override
    public List<Joint> joints() {
        return Joint.LEG;
    }

    @Override
    public int positions() {
        return thighDirection.length;
    }

    /** Direction of hip → knee from the rail, rad. */
    public double thigh(int i) {
        return thighDirection[i];
    }

    /** Direction of knee → ankle from the rail, rad. */
    public double shank(int i) {
        return shankDirection[i];
    }

    /** Direction heel → toe from the rail, rad; the same everywhere. */
    public double foot() {
        return footDirection;
    }

    /** Points a chain hip → knee → ankle → toe as the leg is at position i; its rates stay as they are. */
    public void point(ChainMotion chain, int i) {
        chain.direction(0, thighCos[i], thighSin[i]);
        chain.direction(1, shankCos[i], shankSin[i]);
        chain.direction(2, footCos, footSin);
    }

    @Override
    public double angle(Joint joint, int i) {
        return angle[i * JOINTS + joint.ordinal()];
    }

    /** How fast the thigh turns, rad/s, counter-clockwise. */
    public double thighRate(Phase phase, int i) {
        return rate[phase.ordinal()][2 * i];
    }

    /** How fast the shank turns, rad/s, counter-clockwise. */
    public double shankRate(Phase phase, int i) {
        return rate[phase.ordinal()][2 * i + 1];
    }

    /** Angular acceleration of the thigh, rad/s². */
    public double thighAcceleration(Phase phase, int i) {
        return acceleration[phase.ordinal()][2 * i];
    }

    /** Angular acceleration of the shank, rad/s². */
    public double shankAcceleration(Phase phase, int i) {
        return acceleration[phase.ordinal()][2 * i + 1];
    }

    @Override
    public double actionSpeed(Joint joint, Phase phase, int i) {
        double thigh = thighRate(phase, i);
        double shank = shankRate(phase, i);
        double flexing = joint == Joint.HIP ? thigh : joint == Joint.KNEE ? thigh - shank : -shank;
        return joint.angleSenseOfAction() * flexing;
    }
}
