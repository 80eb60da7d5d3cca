package counterpull.engine.load;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Course;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.PointTrack;
import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;

/**
 * A lever that a limb carries over a range: its direction φ (pivot → pad, rad) with first and second derivative by the stroke's
 * coordinate x, where the contact is, and what a torque on the lever makes of the contact's force. Read-only once made.
 *
 * <p>Formula: force on the body F = −σ Q/arm along −σ <b>n</b>, with Q the counter-clockwise torque that something puts on the lever
 * (its inertia as −I φ̈), <b>n</b> square to limb or lever on its left, σ = ±1 the lever's turning while the limb lifts, arm
 * the contact's about the pivot: F is positive where the lever resists the lift (for a pad that pushes with the lift all signs of F
 * and its direction are the reverse). Units N, N·m, m. Source: balance of power, own derivation.
 */
public final class LeverPath implements CarrierPath {
    /** A hand or a foot beyond its segment's far joint, where a pad may still rest; from memory. */
    private static final double BEYOND = 0.25;

    private final LeverFrame frame;
    private final ChainPath path;
    private final double[] angle;
    private final double[] slope;
    private final double[] curve;
    private final double[] along;
    private final double[] arm;
    private final int sense;

    LeverPath(LeverFrame frame, ChainPath path) {
        this.frame = frame;
        this.path = path;
        int n = path.positions();
        angle = new double[n];
        slope = new double[n];
        curve = new double[n];
        along = new double[n];
        arm = new double[n];
        requireSegment();
        PointTrack joint = path.track(new BodyPoint("joint", frame.contact().segment(), new Vec(0, 0)));
        for (int i = 0; i < n; i++) {
            place(i, frame.contact().meet(line(joint, i)));
        }
        sense = mainSense();
    }

    private void requireSegment() {
        Require.Limits inChain = new Require.Limits(0, path.segments() - 1.0);
        Require.within(frame.contact().segment(), inChain, "segment that the " + frame.words() + " touches", "");
    }

    private LimbLine line(PointTrack joint, int i) {
        int k = frame.contact().segment();
        LimbLine.Turn turn = new LimbLine.Turn(path.direction(k, i), path.slope(k, i), path.curve(k, i));
        return new LimbLine(joint.at(i).minus(frame.pivot()), joint.slope(i), joint.curve(i), turn);
    }

    private void place(int i, LeverPosture posture) {
        double end = path.chain().length(frame.contact().segment()) + BEYOND;
        if (posture.along() <= 0 || posture.along() > end) {
            throw new Refusal(
                    Fault.OUT_OF_REACH,
                    "place of the " + frame.words() + " on the limb, from the segment's joint",
                    posture.along(),
                    posture.along() <= 0 ? 0 : end,
                    "m",
                    "the " + frame.words()
                            + " would leave the limb in this range: measure the pivot again, or set it elsewhere");
        }
        angle[i] = posture.turn().angle();
        slope[i] = posture.turn().first();
        curve[i] = posture.turn().second();
        along[i] = posture.along();
        arm[i] = posture.arm();
    }

    /** Which way the lever turns where it turns fastest. */
    private int mainSense() {
        double most = 0;
        for (double turning : slope) {
            most = Math.abs(turning) > Math.abs(most) ? turning : most;
        }
        return most < 0 ? -1 : 1;
    }

    /** The lever's pivot and contact. */
    public LeverFrame frame() {
        return frame;
    }

    /** The limb that carries it. */
    public ChainPath limb() {
        return path;
    }

    /** Direction φ of the lever at position i, pivot → pad, rad counter-clockwise from the plane's x. */
    public double angle(int i) {
        return angle[i];
    }

    /** dφ/dx. */
    public double slope(int i) {
        return slope[i];
    }

    /** d²φ/dx². */
    public double curve(int i) {
        return curve[i];
    }

    /** +1 where the lever turns counter-clockwise while the limb lifts, −1 where clockwise. */
    public int sense() {
        return sense;
    }

    /** How fast the lever turns, rad/s. */
    public double speed(Phase phase, int i) {
        return slope[i] * path.course().speed(phase, i);
    }

    /** How its turning gains, rad/s². */
    public double acceleration(Phase phase, int i) {
        double v = path.course().speed(phase, i);
        return slope[i] * path.course().acceleration(phase, i) + curve[i] * v * v;
    }

    /** Which way the lever turns in a phase: +1, −1, or 0 when held; the phase's way also where the speed is zero. */
    public double turning(Phase phase, int i) {
        return phase.sense() * Math.signum(slope[i]);
    }

    /** Where the contact is on the limb, m from the segment's joint. */
    public double along(int i) {
        return along[i];
    }

    /** Where the contact is, in the plane's axes from the fixed joint, m. */
    public Vec contact(int i) {
        int k = frame.contact().segment();
        return path.joint(k, i).plus(Vec.unit(path.direction(k, i)).times(along[i]));
    }

    /** Arm of the contact's force about the pivot, m, above zero. */
    public double arm(int i) {
        return arm[i];
    }

    /** Unit vector of the contact's force on the body where its size is positive. */
    public Vec direction(int i) {
        double square = frame.contact().squareTo(path.direction(frame.contact().segment(), i), angle[i]);
        return Vec.unit(square).left().times(-sense * frame.contact().sense());
    }

    /** Size of the contact's force for each newton metre put on the lever counter-clockwise, 1/m. */
    public double perTorque(int i) {
        return -sense * frame.contact().sense() / arm[i];
    }

    @Override
    public PointTrack track(Vec own) {
        PointTrack track = new PointTrack(path.positions());
        for (int i = 0; i < path.positions(); i++) {
            Vec out = turned(own, i);
            Vec bend = out.left().times(curve[i]).minus(out.times(slope[i] * slope[i]));
            track.set(i, frame.pivot().plus(out), out.left().times(slope[i]), bend);
        }
        return track;
    }

    private Vec turned(Vec own, int i) {
        Vec e = Vec.unit(angle[i]);
        return e.times(own.x()).plus(e.left().times(own.y()));
    }

    @Override
    public double load(Vec own, Vec force, int i) {
        return turned(own, i).cross(force);
    }

    @Override
    public List<Pull> pulls(String words, List<Share> load) {
        BodyPoint at = restingPlace();
        double[][] direction = new double[path.positions()][];
        double[] size = new double[path.positions()];
        double[] couple = new double[path.positions()];
        for (int i = 0; i < direction.length; i++) {
            Vec way = direction(i);
            direction[i] = new double[] {way.x(), way.y()};
            size[i] = perTorque(i);
            couple[i] = size[i]
                    * (along[i] - at.at().x())
                    * Vec.unit(path.direction(at.segment(), i)).cross(way);
        }
        List<Pull> pulls = new ArrayList<>();
        Pull.Holds holds = frame.contact().holds();
        pulls.add(Pull.force(words, at, direction, holds, scaled(load, size)).through(frame));
        if (!frame.contact().staysOnLimb()) {
            String rolled = words + ", as its pad rolls along the limb";
            pulls.add(Pull.couple(rolled, at, Pull.Holds.BOTH_WAYS, scaled(load, couple))
                    .through(frame));
        }
        return pulls;
    }

    /** A pad that rolls is put at the middle of its way; what that leaves out is a couple of force times the rest of the way. */
    private BodyPoint restingPlace() {
        double least = along[0];
        double most = along[0];
        for (double place : along) {
            least = Math.min(least, place);
            most = Math.max(most, place);
        }
        return new BodyPoint(frame.words(), frame.contact().segment(), new Vec((least + most) / 2, 0));
    }

    private List<Share> scaled(List<Share> shares, double[] factor) {
        List<Share> scaled = new ArrayList<>();
        for (Share share : shares) {
            scaled.add(Shares.times(share, factor, path.course()));
        }
        return scaled;
    }

    /** The course of the stroke. */
    Course course() {
        return path.course();
    }

    /** Torque on the lever, N·m counter-clockwise, that goes with its angular acceleration times a factor, by phase × position. */
    double[] timesAcceleration(double factor) {
        Course course = course();
        double[] torque = new double[course.cells()];
        for (Phase phase : Phase.values()) {
            for (int at = 0; at < course.positions(); at++) {
                torque[course.cell(phase, at)] = factor * acceleration(phase, at);
            }
        }
        return torque;
    }
}
