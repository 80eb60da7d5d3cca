package counterpull.engine.strength;

import counterpull.engine.body.Action;
import counterpull.engine.body.Sex;
import java.util.List;

/**
 * Shoulder extension and abduction by ratio to the opposite action: Ivey FM and others 1985, Arch Phys Med Rehabil 66:384–386,
 * "Isokinetic testing of shoulder strength: normal values", 31 people; abstract looked up, the author from memory.
 *
 * <p>Extension to flexion 5 : 4, adduction to abduction 2 : 1, at a slow and a fast speed. No torque held still was at hand, so ours:
 * the ratios hold for torque held still; extension is level from 0° to 90° of elevation at 5/4 of {@link KoskiMcGill1994} at 45°,
 * abduction level from 0° to 90° at 1/2 of {@link Holzbaur2007}; 0.25 is added to the spread. Another 50 people have extension
 * strongest, then adduction, flexion, abduction (Cahalan 1991, abstract looked up).
 */
record Ivey1985() implements NormSource {
    private static final double EXTENSION = 5.0 / 4;
    private static final double ABDUCTION = 1.0 / 2;
    private static final double OF_RATIO = 0.25;
    private static final double SHAPE = 0.25;

    @Override
    public List<Action> actions() {
        return List.of(Action.SHOULDER_EXTENSION, Action.SHOULDER_ABDUCTION);
    }

    @Override
    public Norm norm(Action action, Sex sex) {
        return action == Action.SHOULDER_EXTENSION ? extension(sex) : abduction(sex);
    }

    private static Norm extension(Sex sex) {
        return of(
                sex,
                EXTENSION * KoskiMcGill1994.halfway(sex),
                Norm.SPREAD_NOT_PRINTED,
                KoskiMcGill1994.SLOWING,
                "by ratio, 5/4 of the flexion of Koski and McGill 1994, as 31 people moving in Ivey 1985; level over"
                        + " the angles by our assumption");
    }

    private static Norm abduction(Sex sex) {
        return of(
                sex,
                ABDUCTION * Holzbaur2007.adduction(sex),
                Holzbaur2007.VARIATION,
                new SpeedLaw.AnySpeed(),
                "by ratio, half of the adduction of Holzbaur 2007, as 31 people moving in Ivey 1985; level over"
                        + " the angles by our assumption");
    }

    private static Norm of(Sex sex, double torque, double variation, SpeedLaw law, String words) {
        Norm.Likeness spread = new Norm.Likeness(variation, OF_RATIO, SHAPE);
        return new Norm(Polyline.level(0, 90, torque), Norm.usualMass(sex), spread, AgeLoss.OF_ARM, law, words);
    }
}
