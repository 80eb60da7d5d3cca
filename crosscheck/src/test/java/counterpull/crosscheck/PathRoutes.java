package counterpull.crosscheck;

import counterpull.engine.load.Pull;
import counterpull.engine.load.Resistance;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Phase;
import counterpull.engine.planar.ChainMotion;
import counterpull.engine.planar.NewtonEuler;
import counterpull.engine.planar.PointLoads;
import counterpull.engine.planar.Vec;
import java.util.List;

/** A movement at one phase and position, asked of the engine with its own things that resist, and set up in the multibody library. */
final class PathRoutes {
    private PathRoutes() {}

    /**
     * Where in a movement.
     *
     * @param phase which way
     * @param position which position
     */
    record Moment(Phase phase, int position) {}

    /** Torques by the engine, with everything that its elements say they pull. */
    static double[] engine(ChainPath path, List<Resistance> things, double plates, Moment at) {
        ChainMotion motion = new ChainMotion(path.segments());
        path.put(motion, at.phase, at.position);
        PointLoads loads = new PointLoads(path.segments());
        for (Resistance thing : things) {
            for (Pull pull : thing.on(path, MovingChain.GRAVITY)) {
                hang(path, pull, pull.size(path.course().cell(at.phase, at.position), plates), motion, loads, at);
            }
        }
        double[] torque = new double[path.segments()];
        new NewtonEuler(path.chain()).gravity(0, -MovingChain.GRAVITY).torques(motion, loads, torque);
        return torque;
    }

    private static void hang(ChainPath path, Pull pull, double size, ChainMotion motion, PointLoads loads, Moment at) {
        int segment = pull.at().segment();
        Vec place = pull.at().at();
        Vec force = pull.direction(at.position).times(size);
        double armX = motion.armX(segment, place.x(), place.y());
        double armY = motion.armY(segment, place.x(), place.y());
        loads.add(segment, armX, armY, force.x(), force.y());
    }

    /** The library's chain in the same posture and motion. */
    static LibraryChain library(LibraryChain library, ChainPath path, Moment at) {
        double speed = path.course().speed(at.phase, at.position);
        double acceleration = path.course().acceleration(at.phase, at.position);
        return library(library, path, at.position, new Vec(speed, acceleration));
    }

    /** The same with another speed and acceleration of the stroke's coordinate. */
    static LibraryChain library(LibraryChain library, ChainPath path, int i, Vec stroke) {
        library.begin(0, 0);
        for (int k = 0; k < path.segments(); k++) {
            double slope = path.slope(k, i);
            double turning = slope * stroke.y() + path.curve(k, i) * stroke.x() * stroke.x();
            library.segment(k, path.direction(k, i), slope * stroke.x(), turning);
        }
        return library;
    }

    /** Largest difference over the largest torque. */
    static double mismatch(double[] ours, double[] theirs) {
        double size = 0;
        double most = 0;
        for (int i = 0; i < ours.length; i++) {
            size = Math.max(size, Math.abs(theirs[i]));
            most = Math.max(most, Math.abs(ours[i] - theirs[i]));
        }
        return most / size;
    }
}
