package counterpull.engine.motion;

import counterpull.engine.body.Foot;
import counterpull.engine.planar.ChainMotion;
import counterpull.engine.planar.NewtonEuler;
import counterpull.engine.planar.PointLoads;
import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;

/**
 * What the ground does to one foot of a balanced stand in each phase, with the limb's share of what it carries, by Newton–Euler
 * from the top down. For loads other than masses on the body take {@link GroundContact#under} with their forces. Read-only.
 */
public final class Ground {
    private final ChainPath path;
    private final GroundContact[] contacts;
    private final List<PointTrack> tracks = new ArrayList<>();

    private Ground(ChainPath path, Motion.Moving limb) {
        this.path = path;
        contacts = new GroundContact[path.course().cells()];
        for (Motion.Carried carried : limb.carried()) {
            tracks.add(path.track(carried.at()));
        }
    }

    /**
     * Under one limb.
     *
     * @param path its path, from the ankle upward
     * @param limb whose limb, carrying what
     * @param gravity m/s², downward
     */
    public static Ground of(ChainPath path, Motion.Moving limb, double gravity) {
        Ground ground = new Ground(path, limb);
        NewtonEuler solver = new NewtonEuler(path.chain()).gravity(0, -gravity);
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < path.positions(); i++) {
                ground.contacts[path.course().cell(phase, i)] =
                        ground.contact(limb, gravity, solver, new Moment(phase, i));
            }
        }
        return ground;
    }

    private record Moment(Phase phase, int i) {}

    private GroundContact contact(Motion.Moving limb, double gravity, NewtonEuler solver, Moment when) {
        ChainMotion motion = new ChainMotion(path.segments());
        path.put(motion, when.phase, when.i);
        PointLoads loads = new PointLoads(path.segments());
        for (int c = 0; c < tracks.size(); c++) {
            BodyPoint at = limb.carried().get(c).at();
            Vec a = tracks.get(c).acceleration(path.course(), when.phase, when.i);
            double mass = limb.share() * limb.carried().get(c).mass();
            double armX = motion.armX(at.segment(), at.at().x(), at.at().y());
            double armY = motion.armY(at.segment(), at.at().x(), at.at().y());
            loads.add(at.segment(), armX, armY, -mass * a.x(), -mass * (gravity + a.y()));
        }
        double[] torque = new double[path.segments()];
        solver.torques(motion, loads, torque);
        Foot foot = limb.body().leg().foot();
        return GroundContact.under(foot, gravity, new Vec(solver.baseForceX(), solver.baseForceY()), torque[0]);
    }

    /** The contact in a phase at position i. */
    public GroundContact at(Phase phase, int i) {
        return contacts[path.course().cell(phase, i)];
    }

    /** This ground where the foot stands in every phase at every position, else a refusal. */
    public Ground standing() {
        for (GroundContact contact : contacts) {
            contact.standing();
        }
        return this;
    }
}
