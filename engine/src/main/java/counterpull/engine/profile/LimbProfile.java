package counterpull.engine.profile;

import counterpull.engine.Require;
import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;
import counterpull.engine.body.Side;
import counterpull.engine.jointload.BrechterPowers2002;
import counterpull.engine.jointload.Kneecap;
import counterpull.engine.motion.LegPath;
import counterpull.engine.motion.Phase;
import counterpull.engine.strength.StrengthCurve;
import java.util.Optional;

/**
 * One limb of a profile: angles (rad), torque asked and had (N·m, in the sense of each joint's named action), effort (a pure
 * number, 1 = all that this person has), kneecap load. NaN where a value is not known. Read-only.
 */
public final class LimbProfile {
    private static final Kneecap KNEECAP = new BrechterPowers2002();
    private final Groundwork ground;
    private final Asked asked;
    private final int index;

    LimbProfile(Groundwork ground, Asked asked, int index) {
        this.ground = ground;
        this.asked = asked;
        this.index = index;
    }

    /** The limb as it was given. */
    public Limb limb() {
        return ground.task().person().limbs().get(index);
    }

    /** Left or right. */
    public Side side() {
        return limb().side();
    }

    /** Its posture and joint speeds. */
    public LegPath path() {
        return ground.motion().path(index);
    }

    /** Anatomical angle of a joint, rad. */
    public double angle(Joint joint, int position) {
        return path().angle(joint, position);
    }

    /** Torque asked of a joint in the sense of its named action, N·m; negative asks for the opposite action. */
    public double torque(Joint joint, Phase phase, int position) {
        return asked.torque[index][grid().jointCell(joint, phase, position)];
    }

    /** Strength in the action that the torque asks for, N·m; NaN where not known, infinite for an opposite without a curve. */
    public double had(Joint joint, Phase phase, int position) {
        return torque(joint, phase, position) >= 0
                ? ground.capacity().named(index, joint, phase, position)
                : ground.capacity().opposite(index, joint, phase, position);
    }

    /** Strength in the joint's named action, N·m; NaN where not known. */
    public double named(Joint joint, Phase phase, int position) {
        return ground.capacity().named(index, joint, phase, position);
    }

    /** What the 90 % band of the strength asked for makes of an effort; NaN at both ends where nothing is known. */
    public Require.Limits effortBand(Joint joint, Phase phase, int position) {
        Action action = torque(joint, phase, position) >= 0 ? joint.action() : joint.opposite();
        double effort = effort(joint, phase, position);
        double factor = bandFactor(action, angle(joint, position));
        return new Require.Limits(effort / factor, effort * factor);
    }

    /** Factor by which the 90 % band of the named action's strength lies above (and divides below) its middle. */
    public double bandFactor(Joint joint, int position) {
        return bandFactor(joint.action(), angle(joint, position));
    }

    private double bandFactor(Action action, double angle) {
        Optional<StrengthCurve> curve = limb().strength().of(action);
        return curve.map(c -> Math.exp(StrengthCurve.NINETY_PERCENT * c.logSd(angle)))
                .orElse(Double.NaN);
    }

    /** Share of what this limb has that the joint is asked; NaN where not known. */
    public double effort(Joint joint, Phase phase, int position) {
        int cell = grid().jointCell(joint, phase, position);
        return ground.capacity().effort(index, cell, asked.torque[index][cell]);
    }

    /** Effort if the limb pushed at another angle to the rail; {@code tangent} is tan α. */
    public double effortPushing(Joint joint, Phase phase, int position, double tangent) {
        int cell = grid().jointCell(joint, phase, position);
        return ground.capacity().effort(index, cell, torquePushing(joint, phase, position, tangent));
    }

    /** Torque if the limb pushed at another angle to the rail, N·m; {@code tangent} is tan α. */
    public double torquePushing(Joint joint, Phase phase, int position, double tangent) {
        int cell = grid().cell(phase, position);
        double shift = tangent - asked.tangent[index][cell];
        return torque(joint, phase, position)
                + shift * asked.force[cell] * ground.terms().armAcross(index, joint, position);
    }

    /** Push angle α, rad, positive toward head and toes. */
    public double pushAngle(Phase phase, int position) {
        return Math.atan(asked.tangent[index][grid().cell(phase, position)]);
    }

    /** How the torque changes as the push turns, N·m per rad of α. */
    public double torquePerPushAngle(Joint joint, Phase phase, int position) {
        int cell = grid().cell(phase, position);
        double tangent = asked.tangent[index][cell];
        double slope = asked.force[cell] * ground.terms().armAcross(index, joint, position);
        return slope * (1 + tangent * tangent);
    }

    /** Contact force of this limb along the rail, N. */
    public double force(Phase phase, int position) {
        return limb().share() * asked.force[grid().cell(phase, position)];
    }

    /** Moment arm of the contact force's line about a joint, m, without sign. */
    public double momentArm(Joint joint, Phase phase, int position) {
        double tangent = asked.tangent[index][grid().cell(phase, position)];
        double turning = ground.terms().armAlong(index, joint, position)
                + tangent * ground.terms().armAcross(index, joint, position);
        return Math.abs(turning) / limb().share() / Math.sqrt(1 + tangent * tangent);
    }

    /** Quadriceps force, N; NaN outside the published range. */
    public double quadricepsForce(Phase phase, int position) {
        return KNEECAP.quadricepsForce(angle(Joint.KNEE, position), torque(Joint.KNEE, phase, position));
    }

    /** Reaction force of the kneecap joint, N; NaN outside the published range. */
    public double kneecapForce(Phase phase, int position) {
        return KNEECAP.reaction(angle(Joint.KNEE, position), torque(Joint.KNEE, phase, position));
    }

    /** Mean contact stress of the kneecap joint, Pa; NaN outside the published range. */
    public double kneecapStress(Phase phase, int position) {
        return kneecapStress(position, torque(Joint.KNEE, phase, position));
    }

    /** That stress for another knee torque (N·m, extension positive) at the same position, Pa. */
    public double kneecapStress(int position, double kneeTorque) {
        return KNEECAP.stress(angle(Joint.KNEE, position), kneeTorque);
    }

    /** How far the published kneecap curves carry at this position. */
    public Kneecap.Reach kneecapReach(int position) {
        return KNEECAP.reach(angle(Joint.KNEE, position));
    }

    private Grid grid() {
        return ground.terms().grid();
    }
}
