package counterpull.engine.profile;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.LegPath;
import counterpull.engine.motion.Phase;

/**
 * One limb of a rail press: what any limb of a profile tells, and how it changes with the way of pushing. Read-only.
 */
public final class PressLimb extends LimbProfile {
    private final Groundwork ground;
    private final Asked asked;
    private final int index;

    PressLimb(Groundwork ground, Asked asked, int index) {
        super(ground.task().person().limbs().get(index), ground.capacity(), index);
        this.ground = ground;
        this.asked = asked;
        this.index = index;
    }

    @Override
    public LegPath path() {
        return ground.motion().path(index);
    }

    @Override
    public double torque(Joint joint, Phase phase, int position) {
        return asked.torque[index][grid().jointCell(joint, phase, position)];
    }

    @Override
    double[] torques() {
        return asked.torque[index];
    }

    /** Effort if the limb pushed at another angle to the rail; {@code tangent} is tan α. */
    public double effortPushing(Joint joint, Phase phase, int position, double tangent) {
        return effortOf(torquePushing(joint, phase, position, tangent), joint, phase, position);
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

    private Grid grid() {
        return ground.terms().grid();
    }
}
