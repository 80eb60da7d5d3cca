package counterpull.engine.profile;

import counterpull.engine.motion.Phase;
import counterpull.engine.motion.Ride;

/**
 * What starting and stopping adds near the bottom of the stroke.
 *
 * @param inertialForce the largest |m·a| of what rides in the bottom half of the stroke, N; with full stops m (10/√3) D/T²;
 *     a stack counts with m/R².
 *     Where the seat rides, the person without the moving legs counts with it
 * @param total the largest contact force of both moving phases in the bottom half, N
 * @param movingOverHeld the largest ratio of a moving phase's contact force to the held one at the same place, anywhere in
 *     the range
 */
public record Turnaround(double inertialForce, double total, double movingOverHeld) {
    static Turnaround of(PressProfile profile) {
        double total = 0;
        double ratio = 0;
        for (Phase phase : new Phase[] {Phase.LIFTING, Phase.LOWERING}) {
            for (int i = 0; i < profile.positions(); i++) {
                double force = profile.force(phase, i);
                ratio = Math.max(ratio, force / profile.force(Phase.HELD, i));
                if (profile.ground().motion().fraction(i) <= 0.5) {
                    total = Math.max(total, force);
                }
            }
        }
        double travel = profile.ground().motion().stroke().travel();
        return new Turnaround(ridingMass(profile) * profile.task().tempo().peakNearBottom(travel), total, ratio);
    }

    private static double ridingMass(PressProfile profile) {
        double mass = profile.task().sled().feltMass(profile.loading().plates());
        boolean person = profile.task().sled().rail().ride() == Ride.SEAT;
        return person ? mass + profile.task().person().restOfBody() : mass;
    }
}
