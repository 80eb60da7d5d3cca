package counterpull.engine.load;

import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Phase;
import counterpull.engine.planar.ChainMotion;
import counterpull.engine.planar.NewtonEuler;
import counterpull.engine.planar.PointLoads;
import counterpull.engine.planar.Vec;
import java.util.List;

/** Torques of a limb's joints under pulls and its own weight and inertia, straight from Newton–Euler. */
final class HeldTorque {
    private HeldTorque() {}

    /** Counter-clockwise torque of every joint, N·m, for a limb that bears all of the load. */
    static double[] of(List<Pull> pulls, PowerBalance.Setting setting, Phase phase, int i) {
        ChainPath path = setting.path();
        ChainMotion motion = new ChainMotion(path.segments());
        path.put(motion, phase, i);
        PointLoads loads = new PointLoads(path.segments());
        for (Pull pull : pulls) {
            double size = pull.size(path.course().cell(phase, i), setting.plates());
            int k = pull.at().segment();
            if (pull.isCouple()) {
                loads.add(k, 1, 0, 0, size);
                loads.add(k, 0, 0, 0, -size);
                continue;
            }
            Vec place = pull.at().at();
            Vec force = pull.direction(i).times(size);
            loads.add(
                    k,
                    motion.armX(k, place.x(), place.y()),
                    motion.armY(k, place.x(), place.y()),
                    force.x(),
                    force.y());
        }
        double[] torque = new double[path.segments()];
        new NewtonEuler(path.chain()).gravity(0, -setting.gravity()).torques(motion, loads, torque);
        return torque;
    }
}
