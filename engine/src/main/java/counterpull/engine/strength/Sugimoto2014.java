package counterpull.engine.strength;

import counterpull.engine.body.Action;
import counterpull.engine.body.Sex;
import java.util.List;

/**
 * Hip abduction, standing: Sugimoto D, Mattacola CG, Mullineaux DR, Palmer TG, Hewett TE 2014, Clin J Sport Med 24:422–428; abstract
 * looked up.
 *
 * <p>The greatest torque while moving at 60°/s, corrected for the limb's weight: 16 men 1.29 ± 0.24 N·m/kg, 20 women 1.13 ± 0.20
 * N·m/kg, college athletes.
 *
 * <p>Ours: held still it is e^0.258 = 1.29 of that, by 18 young men at 60°/s in all actions of the leg with abduction (Stotz 2022, abstract
 * looked up; that its model is of the logarithm is our reading); level from 10° of adduction to 30° of abduction, although strength falls
 * as the leg goes out (Neumann 1988 tested 10° of adduction to 40°; abstract looked up, without the torques): hopeful at the top; 0.15 is
 * added to the spread, for other people than athletes. Age: older women 34 % weaker than young (Johnson 2004, abstract looked up), taken as
 * 73 and 25 years old (from memory), the same for men.
 */
record Sugimoto2014() implements NormSource {
    static final double STILL = Math.exp(0.258);
    static final SpeedLaw SLOWING = new SpeedLaw.OneSpeed(Math.toRadians(60), 1 / STILL);
    static final double OTHER_PEOPLE = 0.15;
    static final double VARIATION = 0.24 / 1.29;

    /** Torque held still for each kg of body mass, N·m/kg. */
    static double perMass(Sex sex) {
        return STILL * (sex == Sex.MALE ? 1.29 : 1.13);
    }

    @Override
    public List<Action> actions() {
        return List.of(Action.HIP_ABDUCTION);
    }

    @Override
    public Norm norm(Action action, Sex sex) {
        Norm.Likeness spread = new Norm.Likeness(VARIATION, OTHER_PEOPLE, 0.25);
        String words =
                "Sugimoto 2014, 36 college athletes moving at 60°/s, raised to torque held still after Stotz 2022;"
                        + " level over the angles by our assumption, so hopeful far out";
        return new Norm(
                Polyline.level(-10, 30, perMass(sex)), 1, spread, AgeLoss.between(25, 73, 1 - 0.34), SLOWING, words);
    }
}
