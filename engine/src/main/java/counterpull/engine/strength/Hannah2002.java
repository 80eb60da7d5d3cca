package counterpull.engine.strength;

import counterpull.engine.body.Action;
import counterpull.engine.body.Sex;
import java.util.List;

/**
 * External and internal rotation of the shoulder held still, upper arm along the trunk, elbow at 90°: "Strength curve comparisons
 * between gender for shoulder internal and external rotation"; abstract looked up, its authors not shown. Hannah DC 2002 is the thesis
 * on such curves (title looked up).
 *
 * <p>15 men (85.4 kg) and 15 women (70.1 kg) of 22 and 21 years, every 15° from 60° of external to 45° of internal rotation. Internal
 * rotation 54.6 ± 16.0 and 24.7 ± 6.5 N·m, greatest at 30° of external rotation; from 15° of external to 45° of internal rotation it falls
 * by 31 and 19 %. External rotation 39.6 ± 15.5 and 20.4 ± 3.7 N·m, greatest at 45° of internal rotation; to 15° of external rotation it
 * falls by 16 and 1 %. The abstract's 0° to 180° run the other way: 90° there is forearm straight ahead.
 *
 * <p>Ours: internal rotation as strong at 15° and at 60° of external rotation as at 30°; external rotation falls on at its rate to 60°.
 * What speed does is not in it.
 */
record Hannah2002() implements NormSource {
    private static final double[] DEGREES = {-45, 15, 60};
    private static final double SHAPE = 0.12;

    @Override
    public List<Action> actions() {
        return List.of(Action.SHOULDER_EXTERNAL_ROTATION, Action.SHOULDER_INTERNAL_ROTATION);
    }

    @Override
    public Norm norm(Action action, Sex sex) {
        boolean man = sex == Sex.MALE;
        if (action == Action.SHOULDER_INTERNAL_ROTATION) {
            return man ? internal(sex, 54.6, 16.0, 0.31) : internal(sex, 24.7, 6.5, 0.19);
        }
        return man ? external(sex, 39.6, 15.5, 0.16) : external(sex, 20.4, 3.7, 0.01);
    }

    private static Norm internal(Sex sex, double peak, double deviation, double fall) {
        return of(sex, Polyline.degrees(DEGREES, (1 - fall) * peak, peak, peak), deviation / peak);
    }

    private static Norm external(Sex sex, double peak, double deviation, double fall) {
        double further = fall * (60 + 45) / (15 + 45);
        return of(sex, Polyline.degrees(DEGREES, peak, (1 - fall) * peak, (1 - further) * peak), deviation / peak);
    }

    private static Norm of(Sex sex, Polyline torque, double variation) {
        double mass = sex == Sex.MALE ? 85.4 : 70.1;
        String words =
                "Hannah 2002, 15 young men and 15 young women, upper arm along the trunk; beyond 15° of external rotation"
                        + " our assumption";
        Norm.Likeness spread = new Norm.Likeness(variation, 0, SHAPE);
        return new Norm(torque, mass, spread, AgeLoss.OF_ARM, new SpeedLaw.AnySpeed(), words);
    }
}
