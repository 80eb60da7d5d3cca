package counterpull.engine.jointload;

/**
 * The load on the kneecap (patellofemoral) joint of one limb, from the net torque of knee extension.
 *
 * <p>Quadriceps force = torque / lever arm, none for a flexion torque; reaction = ratio × quadriceps force; stress =
 * reaction / contact area. Knee flexion in rad, 0 straight; lever arm m; ratio a pure number; area m²; force N;
 * stress Pa. NaN where a curve is not published. A net torque ignores co-contraction: the hamstrings working against
 * the quadriceps load the kneecap more than any number here says.
 */
public sealed interface Kneecap permits BrechterPowers2002 {
    /** Effective lever arm of the quadriceps, m. */
    double leverArm(double kneeFlexion);

    /** Reaction force of the kneecap joint over quadriceps force. */
    double reactionRatio(double kneeFlexion);

    /** Contact area, m². */
    double contactArea(double kneeFlexion);

    /** How far the published curves carry at this angle. */
    Reach reach(double kneeFlexion);

    /** The source, in a sentence for a person, without a full stop. */
    String source();

    /** Quadriceps force, N; 0 for a flexion torque (below 0), NaN outside the published range. */
    default double quadricepsForce(double kneeFlexion, double extensionTorque) {
        return Math.max(0, extensionTorque) / leverArm(kneeFlexion);
    }

    /** Reaction force, N. */
    default double reaction(double kneeFlexion, double extensionTorque) {
        return reactionRatio(kneeFlexion) * quadricepsForce(kneeFlexion, extensionTorque);
    }

    /** Mean contact stress, Pa. */
    default double stress(double kneeFlexion, double extensionTorque) {
        return reaction(kneeFlexion, extensionTorque) / contactArea(kneeFlexion);
    }

    /**
     * {@link #stress} for a whole range at once. The three arrays have one length.
     *
     * @param kneeFlexion rad
     * @param extensionTorque N·m
     * @param out receives stress, Pa; NaN outside the published range
     */
    default void fillStress(double[] kneeFlexion, double[] extensionTorque, double[] out) {
        for (int i = 0; i < out.length; i++) {
            out[i] = stress(kneeFlexion[i], extensionTorque[i]);
        }
    }

    /** How far the published curves carry. */
    enum Reach {
        /** Every curve is inside its published range. */
        PUBLISHED,
        /** Lever arm and ratio are published, the contact area is held at its last published value. */
        AREA_HELD,
        /** Nothing is published here: the load is absent. */
        ABSENT
    }
}
