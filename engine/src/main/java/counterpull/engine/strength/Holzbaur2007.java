package counterpull.engine.strength;

import counterpull.engine.body.Action;
import counterpull.engine.body.Sex;
import java.util.List;

/**
 * Shoulder adduction held still: Holzbaur KRS, Delp SL, Gold GE, Murray WM 2007, J Biomech 40:2442–2449, "Moment-generating capacity
 * of upper limb muscles in healthy adults"; abstract looked up.
 *
 * <p>67.9 ± 28.4 N·m, ten young people from a small woman to a large man. The position is not in the abstract.
 *
 * <p>Ours: five of each sex (from memory), and women with 60 % of the men's torque, as 28.8 to 48.0 N·m of 20 women and 20 men while
 * moving (1989, doi 10.1016/0268-0033(89)90046-6, abstract looked up): 84.9 and 50.9 N·m. What the two sexes do not explain of the
 * deviation is 22.7 N·m, a third; 0.15 is added to the spread for the unknown position. Level from 0° to 90° of abduction. What speed does is not in it.
 */
record Holzbaur2007() implements NormSource {
    private static final double MEAN = 67.9;
    private static final double DEVIATION = 28.4;
    private static final double OF_POSITION = 0.15;
    private static final double OF_WOMEN = 28.8 / 48.0;
    private static final double MAN = 2 * MEAN / (1 + OF_WOMEN);
    private static final double WOMAN = OF_WOMEN * MAN;

    static final double VARIATION = Math.sqrt(DEVIATION * DEVIATION - (MAN - WOMAN) * (MAN - WOMAN) / 4) / MEAN;

    /** Torque of a sex, N·m. */
    static double adduction(Sex sex) {
        return sex == Sex.MALE ? MAN : WOMAN;
    }

    @Override
    public List<Action> actions() {
        return List.of(Action.SHOULDER_ADDUCTION);
    }

    @Override
    public Norm norm(Action action, Sex sex) {
        Norm.Likeness spread = new Norm.Likeness(VARIATION, OF_POSITION, 0.25);
        String words = "Holzbaur 2007, ten young people, split by sex and level over the angles by our assumption";
        return new Norm(
                Polyline.level(0, 90, adduction(sex)),
                Norm.usualMass(sex),
                spread,
                AgeLoss.OF_ARM,
                new SpeedLaw.AnySpeed(),
                words);
    }
}
