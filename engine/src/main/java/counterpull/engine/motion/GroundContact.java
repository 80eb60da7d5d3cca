package counterpull.engine.motion;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.body.Foot;
import counterpull.engine.planar.Vec;

/**
 * What the ground does to one flat foot that stands still. From force F and CCW torque τ of the foot on the shank, foot mass m with its
 * centre x_f before the ankle, ankle height h: N = F_y + m g, and the pressure point lies (τ + m g x_f − h F_x) / N before the ankle.
 *
 * @param upward force of the ground on this foot, N; not above zero where the foot would leave it
 * @param forward the same, forward, N: what friction has to hold
 * @param fraction pressure point as a fraction of foot length from the heel; outside 0 to 1 the foot tips
 */
public record GroundContact(double upward, double forward, double fraction) {
    /**
     * The contact under one foot.
     *
     * @param foot the foot
     * @param gravity m/s², downward
     * @param onShank force of the foot on the shank, N
     * @param torque of the foot on the shank, N·m, counter-clockwise; the plantarflexion torque
     */
    public static GroundContact under(Foot foot, double gravity, Vec onShank, double torque) {
        double weight = foot.mass() * gravity;
        double upward = onShank.y() + weight;
        double moment = torque + weight * foot.asSegment().comAlong() - foot.ankleHeight() * onShank.x();
        double fraction = (moment / upward + foot.ankleFromHeel()) / foot.length();
        return new GroundContact(upward, onShank.x(), fraction);
    }

    /** Whether the ground can do this: it pushes only, and only under the foot. */
    public boolean stands() {
        return upward > 0 && fraction >= 0 && fraction <= 1;
    }

    /** This contact where it {@linkplain #stands() stands}, else a refusal that names what it passes and {@code where}. */
    public GroundContact standing(String where) {
        if (upward <= 0) {
            throw new Refusal(
                    Fault.CONTACT_LOST,
                    "force of the ground on the foot " + where,
                    upward,
                    0,
                    "N",
                    "the foot would leave the ground " + where + ": move slower");
        }
        if (!stands()) {
            throw new Refusal(
                    Fault.CONTACT_LOST,
                    "pressure point (fraction of foot length from the heel) " + where,
                    fraction,
                    fraction < 0 ? 0 : 1,
                    "",
                    "the person would tip over the " + (fraction < 0 ? "heel" : "toes") + " " + where
                            + ": move slower or balance elsewhere");
        }
        return this;
    }
}
