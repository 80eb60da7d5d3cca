package counterpull.picture;

import counterpull.engine.body.Joint;
import counterpull.engine.body.Side;
import counterpull.engine.load.Pull;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.ExerciseLimb;
import java.util.List;
import java.util.Optional;

/** The whole person of an exercise figure, seen from one side: what is held and what moves. */
interface WholeBody {
    /** Points that the picture has to hold, with the limb at a position. */
    List<Vec> extent(int i);

    /** What does not move, and supports under it. */
    void rest(Sheet sheet, int i);

    /** The limb that moves. */
    void limb(Sheet sheet, int i, Sheet.Look look);

    /** From where it is seen, in words; empty for the usual view from the side. */
    String seenFrom();

    /**
     * The body of a limb's exercise.
     *
     * @param limb the limb
     * @param work where its points are
     * @param build how big the rest is drawn
     * @param gravity of the plane, m/s²; 0 where it is level
     */
    static WholeBody of(ExerciseLimb limb, Limbwork work, Build build, double gravity) {
        Joint fixed = work.fixed();
        if (fixed == Joint.SHOULDER_TURNING) {
            return new BodyFromAbove(work, build, gravity);
        }
        if (fixed == Joint.HIP_SIDEWAYS || fixed == Joint.SHOULDER_SIDEWAYS) {
            return new BodyFromFront(work, build, limb.limb().leg());
        }
        return new BodyFromSide(
                work, build, new BodyFromSide.Setting(limb.limb().leg(), gravity, held(limb, work)));
    }

    private static Optional<BodyPoint> held(ExerciseLimb limb, Limbwork work) {
        return limb.pulls().stream()
                .map(Pull::at)
                .filter(at -> work.stands() && at.segment() == work.path().segments() - 1 && !work.hangs(at))
                .findFirst();
    }

    /** How the axes lie on the picture: planes that are those of a left limb are mirrored for a right one. */
    static Sight sight(ExerciseLimb limb) {
        boolean sideways = switch (limb.path().senses().get(0).joint()) {
            case HIP_SIDEWAYS, SHOULDER_SIDEWAYS, SHOULDER_TURNING -> true;
            default -> false;
        };
        return new Sight(0, sideways && limb.side() == Side.RIGHT ? -1 : 1);
    }
}
