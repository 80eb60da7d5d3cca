package counterpull.engine.strength;

import counterpull.engine.body.Action;
import counterpull.engine.body.Sex;
import java.util.List;

/**
 * Hip adduction by ratio to abduction: Jaenada-Carrilero E and others 2024, BMC Sports Sci Med Rehabil 16, doi
 * 10.1186/s13102-024-00838-0; abstract looked up.
 *
 * <p>Women who play football one level below the highest, held still against a hand-held dynamometer: adduction 2.40 ± 0.67 N·m/kg,
 * abduction 2.07 ± 0.50 N·m/kg, a ratio of 1.16 (1.12 at the highest level). They are much stronger than others, so only the ratio is
 * taken.
 *
 * <p>Ours: the ratio holds for both sexes and other people, × {@link Sugimoto2014}; level from 10° of adduction to 30° of abduction; 0.30 is
 * added to the spread in all, because publications disagree: adductors are the stronger in 72 people standing (Cahalan 1989, abstract
 * looked up), the weaker by 1 : 1.52 in 134 while moving (2022, S0268-0033(22)00239-X, abstract looked up). Age:
 * older women 24 % weaker than young (Johnson 2004, abstract looked up), as for abduction.
 */
record JaenadaCarrilero2024() implements NormSource {
    private static final double TO_ABDUCTION = 2.40 / 2.07;

    @Override
    public List<Action> actions() {
        return List.of(Action.HIP_ADDUCTION);
    }

    @Override
    public Norm norm(Action action, Sex sex) {
        Polyline torque = Polyline.level(-10, 30, TO_ABDUCTION * Sugimoto2014.perMass(sex));
        Norm.Likeness spread = new Norm.Likeness(Sugimoto2014.VARIATION, 0.30, 0.25);
        String words =
                "by ratio, 1.16 of the abduction of Sugimoto 2014, as women who play football in Jaenada-Carrilero 2024;"
                        + " publications disagree on which is the stronger; level over the angles by our assumption";
        return new Norm(torque, 1, spread, AgeLoss.between(25, 73, 1 - 0.24), Sugimoto2014.SLOWING, words);
    }
}
