package counterpull.picture;

import counterpull.engine.body.Foot;
import counterpull.engine.body.Joint;
import counterpull.engine.motion.LegPath;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.PressLimb;
import counterpull.engine.profile.PressProfile;

/**
 * Where one leg's points are, m, in the sled's own axes along and across the rail (x along <b>u</b>, y along <b>n</b>): the
 * same numbers as the result's posture. On a sled whose plate rides the origin is where the seat setting has the hip's line,
 * where the seat rides it is the plate point.
 *
 * @param hip joint
 * @param knee joint
 * @param ankle joint
 * @param heel on the sole
 * @param toe on the sole
 * @param pressure centre of pressure on the sole
 */
public record Posture(Vec hip, Vec knee, Vec ankle, Vec heel, Vec toe, Vec pressure) {
    /** One limb of a result, by its index, at a position. */
    public static Posture of(PressProfile profile, int limb, int position) {
        PressLimb leg = profile.limbs().get(limb);
        LegPath path = leg.path();
        Foot foot = leg.limb().leg().foot();
        Vec hip = new SledPoints(profile).hip(position);
        Vec knee = hip.plus(
                Vec.unit(path.thigh(position)).times(leg.limb().leg().thigh().length()));
        Vec ankle = knee.plus(
                Vec.unit(path.shank(position)).times(leg.limb().leg().shank().length()));
        Vec along = Vec.unit(path.foot());
        Vec heel =
                ankle.plus(along.times(-foot.ankleFromHeel())).plus(along.left().times(-foot.ankleHeight()));
        Vec toe = heel.plus(along.times(foot.length()));
        double pressed = profile.task().stance().pressurePoint() * foot.length();
        return new Posture(hip, knee, ankle, heel, toe, heel.plus(along.times(pressed)));
    }

    /** A joint's place. */
    public Vec at(Joint joint) {
        return switch (joint) {
            case HIP -> hip;
            case KNEE -> knee;
            case ANKLE -> ankle;
            default -> throw new IllegalArgumentException("no " + joint.words() + " in the posture of a leg");
        };
    }
}
