package counterpull.engine.load;

import counterpull.engine.Constants;
import counterpull.engine.body.Anthropometry;
import counterpull.engine.body.DempsterWinter;
import counterpull.engine.body.Joint;
import counterpull.engine.body.MeasuredLengths;
import counterpull.engine.body.Sex;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Course;
import counterpull.engine.motion.FullStop;
import counterpull.engine.motion.Hinge;
import counterpull.engine.motion.Motion;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.Tempo;
import counterpull.engine.motion.WorkingRange;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.ChainMotion;
import counterpull.engine.planar.NewtonEuler;
import counterpull.engine.planar.PointLoads;
import counterpull.engine.planar.Vec;
import java.util.List;
import java.util.Map;

/** The worked examples' body (1.75 m, 80 kg, Dempster/Winter) with one joint turning, and what that joint must give. */
final class HeldLimb {
    private HeldLimb() {}

    /** An elbow that turns with the upper arm hanging, 2 s up and 2 s down, full stops; degrees. */
    static ChainPath elbow(double bottom, double top, int positions) {
        return path(new Hinge(Joint.ELBOW, -Math.PI / 2, Map.of(), Hinge.Lie.UPRIGHT), bottom, top, positions);
    }

    static ChainPath path(Hinge hinge, double bottom, double top, int positions) {
        WorkingRange range = new WorkingRange(Angles.radians(bottom), Angles.radians(top), Angles.radians(bottom));
        Tempo tempo = new FullStop(new Tempo.Seconds(2, 0, 2, 0));
        Course course = Course.even(Math.abs(range.top() - range.bottom()), positions, tempo);
        var body = new Anthropometry(new DempsterWinter(), Sex.MALE, 1.75, 80, MeasuredLengths.none()).side();
        return hinge.path(new Motion.Moving(body, 1, range, course, List.of()));
    }

    /** Torque of the first joint in the sense of its action, N·m: the limb's own weight and inertia and all that resists. */
    static double torque(ChainPath path, Resistance resistance, Phase phase, int i) {
        ChainMotion motion = new ChainMotion(path.segments());
        path.put(motion, phase, i);
        PointLoads loads = new PointLoads(path.segments());
        for (Pull pull : resistance.on(path, Constants.STANDARD_GRAVITY)) {
            Vec arm = path.track(pull.at()).at(i).minus(path.joint(pull.at().segment(), i));
            Vec force = pull.direction(i).times(pull.size(path.course().cell(phase, i), 0));
            loads.add(pull.at().segment(), arm.x(), arm.y(), force.x(), force.y());
        }
        double[] torque = new double[path.segments()];
        new NewtonEuler(path.chain()).gravity(0, -Constants.STANDARD_GRAVITY).torques(motion, loads, torque);
        return path.senses().get(0).torqueSign() * torque[0];
    }
}
