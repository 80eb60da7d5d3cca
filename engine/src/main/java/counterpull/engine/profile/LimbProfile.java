package counterpull.engine.profile;

import counterpull.engine.Require;
import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;
import counterpull.engine.body.Side;
import counterpull.engine.jointload.BrechterPowers2002;
import counterpull.engine.jointload.Kneecap;
import counterpull.engine.motion.LimbPath;
import counterpull.engine.motion.Phase;
import counterpull.engine.strength.StrengthCurve;
import java.util.List;
import java.util.Optional;

/**
 * One limb of a profile, whatever the exercise: angles (rad), torque asked and had (N·m, in the sense of each joint's named action),
 * effort (a pure number, 1 = all that this person has), kneecap load. NaN where a value is not known. Read-only.
 */
public abstract sealed class LimbProfile permits PressLimb, ExerciseLimb {
    private static final Kneecap KNEECAP = new BrechterPowers2002();
    private final Limb limb;
    private final Capacity capacity;
    private final int index;

    LimbProfile(Limb limb, Capacity capacity, int index) {
        this.limb = limb;
        this.capacity = capacity;
        this.index = index;
    }

    /** Its posture and joint speeds. */
    public abstract LimbPath path();

    /** Torque asked of a joint in the sense of its named action, N·m; negative asks for the opposite action. */
    public abstract double torque(Joint joint, Phase phase, int position);

    /** The same torques for all phases, positions and joints; read-only. */
    abstract double[] torques();

    /** Raises what stands for each phase, position and joint to this limb's effort, where that is known and larger. */
    final void raise(double[] efforts) {
        double[] torque = torques();
        for (int cell = 0; cell < efforts.length; cell++) {
            double effort = capacity.effort(index, cell, torque[cell]);
            efforts[cell] = effort <= efforts[cell] || Double.isNaN(effort) ? efforts[cell] : effort;
        }
    }

    /** The limb as it was given. */
    public Limb limb() {
        return limb;
    }

    /** Left or right. */
    public Side side() {
        return limb.side();
    }

    /** Its joints that are computed, proximal first. */
    public List<Joint> joints() {
        return capacity.grid().joints();
    }

    /** Anatomical angle of a joint, rad. */
    public double angle(Joint joint, int position) {
        return path().angle(joint, position);
    }

    /** Strength in the action that the torque asks for, N·m; NaN where not known, infinite for an opposite without a curve. */
    public double had(Joint joint, Phase phase, int position) {
        return torque(joint, phase, position) >= 0
                ? capacity.named(index, joint, phase, position)
                : capacity.opposite(index, joint, phase, position);
    }

    /** Strength in the joint's named action, N·m; NaN where not known. */
    public double named(Joint joint, Phase phase, int position) {
        return capacity.named(index, joint, phase, position);
    }

    /** Strength in the opposite of the joint's named action, N·m; NaN where not known, infinite for an opposite without a curve. */
    public double opposite(Joint joint, Phase phase, int position) {
        return capacity.opposite(index, joint, phase, position);
    }

    /** The action that a joint is asked for. */
    public Action asked(Joint joint, Phase phase, int position) {
        return torque(joint, phase, position) >= 0 ? joint.action() : joint.opposite();
    }

    /** Share of what this limb has that the joint is asked; NaN where not known. */
    public double effort(Joint joint, Phase phase, int position) {
        return effortOf(torque(joint, phase, position), joint, phase, position);
    }

    /** Effort of another torque of the same joint at the same phase and position. */
    double effortOf(double torque, Joint joint, Phase phase, int position) {
        return capacity.effort(index, capacity.grid().jointCell(joint, phase, position), torque);
    }

    /** What the 90 % band of the strength asked for makes of an effort; NaN at both ends where nothing is known. */
    public Require.Limits effortBand(Joint joint, Phase phase, int position) {
        double effort = effort(joint, phase, position);
        double factor = bandFactor(asked(joint, phase, position), angle(joint, position));
        return new Require.Limits(effort / factor, effort * factor);
    }

    /** Factor by which the 90 % band of the named action's strength lies above (and divides below) its middle. */
    public double bandFactor(Joint joint, int position) {
        return bandFactor(joint.action(), angle(joint, position));
    }

    /** The same factor for the opposite action; NaN where it has no curve. */
    public double oppositeBandFactor(Joint joint, int position) {
        return bandFactor(joint.opposite(), angle(joint, position));
    }

    private double bandFactor(Action action, double angle) {
        Optional<StrengthCurve> curve = limb.strength().of(action);
        return curve.map(c -> Math.exp(StrengthCurve.NINETY_PERCENT * c.logSd(angle)))
                .orElse(Double.NaN);
    }

    /** Quadriceps force, N; NaN outside the published range, and where no knee is computed. */
    public double quadricepsForce(Phase phase, int position) {
        return KNEECAP.quadricepsForce(knee(position), kneeTorque(phase, position));
    }

    /** Reaction force of the kneecap joint, N; NaN outside the published range, and where no knee is computed. */
    public double kneecapForce(Phase phase, int position) {
        return KNEECAP.reaction(knee(position), kneeTorque(phase, position));
    }

    /** Mean contact stress of the kneecap joint, Pa; NaN outside the published range, and where no knee is computed. */
    public double kneecapStress(Phase phase, int position) {
        return kneecapStress(position, kneeTorque(phase, position));
    }

    /** That stress for another knee torque (N·m, extension positive) at the same position, Pa. */
    public double kneecapStress(int position, double kneeTorque) {
        return KNEECAP.stress(knee(position), kneeTorque);
    }

    /** How far the published kneecap curves carry at this position. */
    public Kneecap.Reach kneecapReach(int position) {
        return KNEECAP.reach(knee(position));
    }

    private double knee(int position) {
        return joints().contains(Joint.KNEE) ? angle(Joint.KNEE, position) : Double.NaN;
    }

    private double kneeTorque(Phase phase, int position) {
        return joints().contains(Joint.KNEE) ? torque(Joint.KNEE, phase, position) : Double.NaN;
    }
}
