package counterpull.engine.strength;

import counterpull.engine.body.Action;
import counterpull.engine.body.Sex;
import java.util.List;

/**
 * Elbow extension held still at 90° of flexion: Askew LJ, An KN, Morrey BF, Chao EYS 1987, Clin Orthop 222:261–266; from memory, not
 * at hand.
 *
 * <p>104 people: men 421 kg·cm = 41 ± 11 N·m, women 210 kg·cm = 21 ± 6 N·m. The position of the forearm is not known to us.
 *
 * <p>Ours: level from 15° to 120°, since one angle was tested. It may be low: 199 young men extended with 0.67 N·m for each kg while
 * moving (Lategan and Krüger 2003, abstract looked up), 52 N·m at 77 kg, so 0.2 is added to the spread. What speed does is not in it.
 */
record Askew1987() implements NormSource {
    private static final double PER_KG_CM = 0.0980665;

    @Override
    public List<Action> actions() {
        return List.of(Action.ELBOW_EXTENSION);
    }

    @Override
    public Norm norm(Action action, Sex sex) {
        return sex == Sex.MALE ? of(sex, 421, 11.0 / 41) : of(sex, 210, 6.0 / 21);
    }

    private static Norm of(Sex sex, double kilogramCentimetres, double variation) {
        Polyline torque = Polyline.level(15, 120, kilogramCentimetres * PER_KG_CM);
        Norm.Likeness spread = new Norm.Likeness(variation, 0.2, 0.2);
        String words = "Askew 1987, 104 people at 90°, from memory; level over the other angles is our assumption";
        return new Norm(torque, Norm.usualMass(sex), spread, AgeLoss.OF_ARM, new SpeedLaw.AnySpeed(), words);
    }
}
