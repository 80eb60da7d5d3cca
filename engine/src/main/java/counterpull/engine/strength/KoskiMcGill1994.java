package counterpull.engine.strength;

import counterpull.engine.body.Action;
import counterpull.engine.body.Sex;
import java.util.List;

/**
 * Shoulder flexion held still: Koski JA, McGill SM 1994, Clin Biomech 9:99–104, "Dynamic shoulder flexion strength"; abstract looked
 * up (the second author too; the first, volume and pages from memory).
 *
 * <p>26 young men seated upright: 89.9 N·m with the arm along the trunk, 68.6 N·m at 45°; 46.9 N·m at 45° while flexing at 50°/s; 25
 * young women half of it on average. No deviation is in the abstract.
 *
 * <p>Ours: the third point, at 90°, follows from another sample, where the arm's own weight took 22 to 25 % of the strength of men
 * (Lannersten 1993, abstract looked up): 12.05 N·m, of a man of 78 kg and 1.79 m by Winter's table, over 0.235. The same of women, 34
 * %, is 27 N·m where half of the men's is 26. The slowing is that of 45°, at every angle.
 */
record KoskiMcGill1994() implements NormSource {
    private static final double[] DEGREES = {0, 45, 90};
    private static final double ALONG_TRUNK = 89.9;
    private static final double HALFWAY = 68.6;
    private static final double LEVEL = 51.3;
    private static final double MOVING = 46.9;
    private static final double OF_WOMEN = 0.5;

    static final SpeedLaw SLOWING = new SpeedLaw.OneSpeed(Math.toRadians(50), MOVING / HALFWAY);

    /** Torque of a sex at 45°, N·m. */
    static double halfway(Sex sex) {
        return ofSex(sex) * HALFWAY;
    }

    private static double ofSex(Sex sex) {
        return sex == Sex.MALE ? 1 : OF_WOMEN;
    }

    @Override
    public List<Action> actions() {
        return List.of(Action.SHOULDER_FLEXION);
    }

    @Override
    public Norm norm(Action action, Sex sex) {
        Polyline torque = Polyline.degrees(DEGREES, ALONG_TRUNK, HALFWAY, LEVEL).times(ofSex(sex));
        Norm.Likeness spread = new Norm.Likeness(Norm.SPREAD_NOT_PRINTED, 0, 0.12);
        String words = "Koski and McGill 1994, 26 young men and 25 young women, seated; at 90° from Lannersten 1993";
        return new Norm(torque, Norm.usualMass(sex), spread, AgeLoss.OF_ARM, SLOWING, words);
    }
}
