package counterpull.picture;

import counterpull.engine.body.Joint;
import counterpull.engine.body.Side;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.ExerciseLimb;
import java.util.List;

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

    /** The body of a limb's exercise; gravity says whether the plane is level, m/s². */
    static WholeBody of(ExerciseLimb limb, Build build, double gravity) {
        Limbwork work = new Limbwork(limb.path(), build);
        Joint fixed = work.fixed();
        if (fixed == Joint.SHOULDER_TURNING) {
            return new BodyFromAbove(work, build);
        }
        if (fixed == Joint.HIP_SIDEWAYS || fixed == Joint.SHOULDER_SIDEWAYS) {
            return new BodyFromFront(work, build, limb.limb().leg());
        }
        return new BodyFromSide(work, build, new BodyFromSide.Setting(limb.limb().leg(), gravity));
    }

    /** How the axes lie on the picture: planes that are those of a left limb are mirrored for a right one. */
    static Sight sight(ExerciseLimb limb) {
        boolean sideways =
                switch (limb.path().joints().get(0)) {
                    case HIP_SIDEWAYS, SHOULDER_SIDEWAYS, SHOULDER_TURNING -> true;
                    default -> false;
                };
        return new Sight(0, sideways && limb.side() == Side.RIGHT ? -1 : 1);
    }
}
