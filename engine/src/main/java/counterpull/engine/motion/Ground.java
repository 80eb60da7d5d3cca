package counterpull.engine.motion;

import counterpull.engine.body.Foot;
import counterpull.engine.planar.ChainMotion;
import counterpull.engine.planar.NewtonEuler;
import counterpull.engine.planar.PointLoads;
import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;

/**
 * What the ground does to one foot of a balanced stand in each phase, by Newton–Euler from the top down: with the limb's share of the
 * masses that it carries, or with any forces on its segments. Read-only.
 */
public final class Ground {
    private final Course course;
    private final GroundContact[] contacts;

    private Ground(Course course) {
        this.course = course;
        contacts = new GroundContact[course.cells()];
    }

    /** Forces of anything on the limb's segments, this limb's share of them. */
    @FunctionalInterface
    public interface Forces {
        /** Adds them as they are in a phase at position i, for a chain as it is there. */
        void add(PointLoads loads, ChainMotion motion, Phase phase, int i);
    }

    /**
     * Under one limb that carries its share of masses.
     *
     * @param path its path, from the ankle upward
     * @param limb whose limb, carrying what
     * @param gravity m/s², downward
     */
    public static Ground of(ChainPath path, Motion.Moving limb, double gravity) {
        return of(path, limb.body().leg().foot(), gravity, weights(path, limb, gravity));
    }

    /**
     * Under one limb with any forces on it.
     *
     * @param path its path, from the ankle upward
     * @param foot its foot
     * @param gravity m/s², downward
     * @param forces this limb's share of what acts on its segments
     */
    public static Ground of(ChainPath path, Foot foot, double gravity, Forces forces) {
        Ground ground = new Ground(path.course());
        NewtonEuler solver = new NewtonEuler(path.chain()).gravity(0, -gravity);
        ChainMotion motion = new ChainMotion(path.segments());
        PointLoads loads = new PointLoads(path.segments());
        double[] torque = new double[path.segments()];
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < path.positions(); i++) {
                path.put(motion, phase, i);
                loads.clear();
                forces.add(loads, motion, phase, i);
                solver.torques(motion, loads, torque);
                Vec onShank = new Vec(solver.baseForceX(), solver.baseForceY());
                ground.contacts[path.course().cell(phase, i)] = GroundContact.under(foot, gravity, onShank, torque[0]);
            }
        }
        return ground;
    }

    private static Forces weights(ChainPath path, Motion.Moving limb, double gravity) {
        List<PointTrack> tracks = new ArrayList<>();
        for (Motion.Carried carried : limb.carried()) {
            tracks.add(path.track(carried.at()));
        }
        return (loads, motion, phase, i) -> {
            for (int c = 0; c < tracks.size(); c++) {
                BodyPoint at = limb.carried().get(c).at();
                Vec a = tracks.get(c).acceleration(path.course(), phase, i);
                double mass = limb.share() * limb.carried().get(c).mass();
                double armX = motion.armX(at.segment(), at.at().x(), at.at().y());
                double armY = motion.armY(at.segment(), at.at().x(), at.at().y());
                loads.add(at.segment(), armX, armY, -mass * a.x(), -mass * (gravity + a.y()));
            }
        };
    }

    /** The contact in a phase at position i. */
    public GroundContact at(Phase phase, int i) {
        return contacts[course.cell(phase, i)];
    }

    /** This ground where the foot stands in every phase at every position, else a refusal; {@code where} says a position in words. */
    public Ground standing(IntFunction<String> where) {
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < course.positions(); i++) {
                at(phase, i).standing(where.apply(i) + " while " + phase.words());
            }
        }
        return this;
    }
}
