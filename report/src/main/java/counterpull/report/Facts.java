package counterpull.report;

import counterpull.engine.choice.Verdict;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.PressLimb;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.Turnaround;

/**
 * The few numbers by which setups are compared; SI, NaN where not known.
 *
 * @param shortfall root mean square of what is missing from the target effort, a fraction
 * @param peak largest effort
 * @param kneecapStress largest mean contact stress of the kneecap joint, Pa
 * @param turnForce inertial force near the bottom, N
 * @param forceBottom contact force at the bottom while lifting, N
 * @param forceTop the same at the top, N
 */
public record Facts(
        double shortfall, double peak, double kneecapStress, double turnForce, double forceBottom, double forceTop) {

    /** The facts of a profile and its verdict. */
    public static Facts of(PressProfile profile, Verdict verdict) {
        Turnaround turn = profile.turnaround();
        return new Facts(
                verdict.shortfall(),
                verdict.peak().map(peak -> peak.limiting().effort()).orElse(Double.NaN),
                stress(profile),
                turn.inertialForce(),
                profile.force(Phase.LIFTING, 0),
                profile.force(Phase.LIFTING, profile.positions() - 1));
    }

    private static double stress(PressProfile profile) {
        double most = Double.NaN;
        for (PressLimb limb : profile.limbs()) {
            for (Phase phase : Phase.values()) {
                for (int i = 0; i < profile.positions(); i++) {
                    double stress = limb.kneecapStress(phase, i);
                    most = Double.isNaN(most) || stress > most ? stress : most;
                }
            }
        }
        return most;
    }
}
