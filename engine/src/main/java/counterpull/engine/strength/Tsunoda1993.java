package counterpull.engine.strength;

import counterpull.engine.body.Action;
import counterpull.engine.body.Sex;
import java.util.List;

/**
 * Elbow flexion held still: Tsunoda N, O'Hagan F, Sale DG, MacDougall JD 1993, Eur J Appl Physiol 66:235–239; abstract looked up.
 *
 * <p>18 young men 69.5 N·m (standard error 4.3) at their best angle, 60° of flexion, and 20 % less at 105°; 15 young women 35.4 N·m
 * (2.4) at their best angle, 90°, and no difference between 60° and 105°. Standard deviation = standard error × √people. The
 * position of the forearm is not in the abstract.
 *
 * <p>Tested from 15° to 105°; the torques near straight are not in the abstract. Ours: women level from 60° to 105°, and 70 % of the
 * peak at 15° for both, between the 83 % that four people had straight, of their torque at 90° (Dean and Voss 1999, table 10.24;
 * computed from the data), and the half of most drawn curves (from memory). What speed does is not in it.
 */
record Tsunoda1993() implements NormSource {
    private static final double[] DEGREES = {15, 60, 105};
    private static final double NEAR_STRAIGHT = 0.7;
    private static final double MAN = 69.5;
    private static final double WOMAN = 35.4;
    private static final double SHAPE = 0.15;

    @Override
    public List<Action> actions() {
        return List.of(Action.ELBOW_FLEXION);
    }

    @Override
    public Norm norm(Action action, Sex sex) {
        return sex == Sex.MALE
                ? of(sex, "18 young men", 0.8, Norm.Likeness.of(MAN, 4.3 * Math.sqrt(18), SHAPE))
                : of(sex, "15 young women", 1, Norm.Likeness.of(WOMAN, 2.4 * Math.sqrt(15), SHAPE));
    }

    private static Norm of(Sex sex, String people, double shareAt105, Norm.Likeness spread) {
        double peak = sex == Sex.MALE ? MAN : WOMAN;
        Polyline torque = Polyline.degrees(DEGREES, NEAR_STRAIGHT * peak, peak, shareAt105 * peak);
        String words = "Tsunoda 1993, " + people + "; near straight our assumption";
        return new Norm(torque, Norm.usualMass(sex), spread, AgeLoss.OF_ARM, new SpeedLaw.AnySpeed(), words);
    }
}
