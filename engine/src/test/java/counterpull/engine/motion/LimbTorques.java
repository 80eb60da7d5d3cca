package counterpull.engine.motion;

import counterpull.engine.body.Anthropometry;
import counterpull.engine.body.BodySide;
import counterpull.engine.body.DempsterWinter;
import counterpull.engine.body.Joint;
import counterpull.engine.body.MeasuredLengths;
import counterpull.engine.body.Sex;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.ChainMotion;
import counterpull.engine.planar.NewtonEuler;
import counterpull.engine.planar.PointLoads;
import counterpull.engine.planar.Vec;
import java.util.List;

/** A limb of the worked examples' body in a movement, with weights on it: its joints' torques in their named sense, N·m. */
public final class LimbTorques {
    private final Motion motion;
    private final Motion.Moving limb;
    private final ChainPath path;

    private LimbTorques(Motion motion, Motion.Moving limb) {
        this.motion = motion;
        this.limb = limb;
        path = motion.path(limb);
    }

    /** Stature 1.75 m, 80 kg, Dempster/Winter, Drillis and Contini. */
    public static BodySide body() {
        return new Anthropometry(new DempsterWinter(), Sex.MALE, 1.75, 80, MeasuredLengths.none()).side();
    }

    /** From bottom to top in 2 s and back in 2 s. */
    public static LimbTorques of(Motion motion, WorkingRange range, int positions, Load load) {
        Tempo tempo = new FullStop(new Tempo.Seconds(2, 0, 2, 0));
        Course course = Course.even(Math.abs(range.top() - range.bottom()), positions, tempo);
        return new LimbTorques(motion, new Motion.Moving(body(), load.share, range, course, load.carried));
    }

    /** A range in degrees. */
    public static WorkingRange degrees(double bottom, double top) {
        return new WorkingRange(Angles.radians(bottom), Angles.radians(top), Angles.radians(bottom));
    }

    /** A range in metres of travel. */
    public static WorkingRange metres(double bottom, double top) {
        return new WorkingRange(bottom, top, bottom);
    }

    /** What weighs, and this limb's share of it. */
    public record Load(double share, List<Motion.Carried> carried) {
        /** One weight. */
        public static Load of(double share, BodyPoint at, double mass) {
            return new Load(share, List.of(new Motion.Carried(at, mass)));
        }

        /** No weight. */
        public static Load none() {
            return new Load(1, List.of());
        }
    }

    /** The posture. */
    public ChainPath path() {
        return path;
    }

    /** The ground under it. */
    public Ground ground() {
        return Ground.of(path, limb, motion.gravity());
    }

    /** Torque of a joint in its named sense. */
    public double at(Joint joint, Phase phase, int i) {
        NewtonEuler solver = new NewtonEuler(path.chain()).gravity(0, -motion.gravity());
        ChainMotion state = new ChainMotion(path.segments());
        path.put(state, phase, i);
        PointLoads loads = new PointLoads(path.segments());
        for (Motion.Carried carried : limb.carried()) {
            BodyPoint at = carried.at();
            Vec a = path.track(at).acceleration(path.course(), phase, i);
            Vec arm = path.track(at).at(i).minus(path.joint(at.segment(), i));
            double mass = limb.share() * carried.mass();
            loads.add(at.segment(), arm.x(), arm.y(), -mass * a.x(), -mass * (motion.gravity() + a.y()));
        }
        double[] torque = new double[path.segments()];
        solver.torques(state, loads, torque);
        int k = path.index(joint);
        return path.senses().get(k).torqueSign() * torque[k];
    }
}
