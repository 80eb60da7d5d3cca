package counterpull.engine.planar;

import counterpull.engine.body.DempsterWinter;
import counterpull.engine.body.Segment;
import counterpull.engine.body.SegmentRow;
import counterpull.engine.body.Sex;
import counterpull.engine.planar.OneSegment.Answer;
import counterpull.engine.validation.Published;
import org.junit.jupiter.api.Test;

/** Free-body diagrams of a leg, worked in print; g = 9.8 m/s² there. */
class TextbookExamplesValidationTest {
    private static final double G = 9.8;
    private static final Vec STILL = new Vec(0, 0);
    private static final String WINTER = "Winter, Biomechanics and Motor Control of Human Movement, ";
    private static final String FROM_MEMORY = "; from memory, its arithmetic is exact";
    private static final String LAST_DIGIT = "printed to two decimals";

    /** Foot and leg of the swing leg, examples 5.2 and 5.3; each takes the answer of the one before it. */
    private static final Answer SWING_ANKLE =
            new OneSegment(1.16, 0.0105, new Vec(0.0195, -0.0985)).moving(new Vec(9.07, -6.62), 21.69, G);

    private static final Answer SWING_KNEE = new OneSegment(3.72, 0.0638, new Vec(0.142, -0.129))
            .carries(new Vec(0.142 + 0.185, -0.129 - 0.169), SWING_ANKLE)
            .moving(new Vec(-0.03, -4.21), 36.9, G);

    private static Published published(String quantity, String unit, String source) {
        return Published.of(quantity, unit).source(source);
    }

    @Test
    void standingOnOneFoot() {
        Answer ankle = new OneSegment(0.9, 0, new Vec(0.06, 0))
                .force(new Vec(0.04, 0), new Vec(0, 588))
                .moving(STILL, 0, G);
        String source = WINTER + "example 5.1; inputs looked up, answer from memory and computed by hand";
        published("ankle force, standing on one foot", "N", source)
                .value(-579.18)
                .ours(ankle.force().y())
                .within(0.0051, LAST_DIGIT);
        published("ankle moment, standing on one foot", "N·m", source)
                .value(-22.99)
                .ours(ankle.moment())
                .within(0.0051, LAST_DIGIT);
    }

    @Test
    void footInStance() {
        Vec ankle = new Vec(0.897, 0.160);
        Answer answer = new OneSegment(1.12, 0.01, new Vec(0.953, 0.084).minus(ankle))
                .force(new Vec(1.032, 0).minus(ankle), new Vec(160.25, 765.96))
                .moving(new Vec(3.25, 1.78), -45.35, G);
        String source = WINTER + "figure 5.13, frame 35; inputs looked up, answer computed by hand";
        published("ankle force x, frame 35", "N", source)
                .value(-156.61)
                .ours(answer.force().x())
                .within(0.0051, LAST_DIGIT);
        published("ankle force y, frame 35", "N", source)
                .value(-752.99)
                .ours(answer.force().y())
                .within(0.0051, LAST_DIGIT);
        published("ankle moment, frame 35", "N·m", source)
                .value(-128.50)
                .ours(answer.moment())
                .within(0.0051, LAST_DIGIT);
    }

    @Test
    void swingFoot() {
        String source = WINTER + "example 5.2" + FROM_MEMORY;
        published("ankle force x, swing", "N", source)
                .value(10.52)
                .ours(SWING_ANKLE.force().x())
                .within(0.0051, LAST_DIGIT);
        published("ankle force y, swing", "N", source)
                .value(3.69)
                .ours(SWING_ANKLE.force().y())
                .within(0.0051, LAST_DIGIT);
        published("ankle moment, swing", "N·m", source)
                .value(1.34)
                .ours(SWING_ANKLE.moment())
                .within(0.0051, LAST_DIGIT);
    }

    @Test
    void swingLeg() {
        String source = WINTER + "example 5.3" + FROM_MEMORY;
        published("knee force x, swing", "N", source)
                .value(10.41)
                .ours(SWING_KNEE.force().x())
                .within(0.0051, LAST_DIGIT);
        published("knee force y, swing", "N", source)
                .value(24.48)
                .ours(SWING_KNEE.force().y())
                .within(0.0051, LAST_DIGIT);
        published("knee moment, swing", "N·m", source)
                .value(10.97)
                .ours(SWING_KNEE.moment())
                .within(0.03, "the printed sum has six terms, each rounded to two decimals");
    }

    /** The hip's moment is not recalled, so only its force is checked, which asks for no lever arm. */
    @Test
    void swingThigh() {
        Answer hip = new OneSegment(8, 0.0817, STILL)
                .carries(new Vec(0.1, -0.3), SWING_KNEE)
                .moving(new Vec(6.58, -1.21), 8.6, G);
        String source = WINTER + "example 5.4; from memory";
        published("hip force x, swing", "N", source)
                .value(63.05)
                .ours(hip.force().x())
                .within(0.0051, LAST_DIGIT);
        published("hip force y, swing", "N", source)
                .value(93.2)
                .ours(hip.force().y())
                .within(0.051, "printed to one decimal");
    }

    /** Shank and foot held level, 80 kg, shank 0.43 m; g = 9.81 in this one. */
    @Test
    void theWeightOfShankAndFootAlone() {
        SegmentRow row = new DempsterWinter()
                .rows(Sex.MALE).stream()
                        .filter(each -> each.segment().equals("Foot leg"))
                        .findFirst()
                        .orElseThrow();
        Segment shankAndFoot = row.segment(0.43, 80);
        Answer knee = new OneSegment(shankAndFoot.mass(), shankAndFoot.inertia(), new Vec(shankAndFoot.comAlong(), 0))
                .moving(STILL, 0, 9.81);
        published(
                        "knee moment of a level shank and foot, 80 kg",
                        "N·m",
                        "Winter, Table 4.1, fractions looked up; closed form computed by hand, not published")
                .value(12.475)
                .ours(knee.moment())
                .within(0.00051, "printed to three decimals");
    }

    /**
     * Two limbs that muscles set turning, without gravity: only their inertia about the joint is printed, so it is split here into a
     * mass of 4 kg 0.2 m away and the rest.
     */
    @Test
    void musclesThatStartALimb() {
        String book = "OpenStax College Physics, chapter 10, ";
        published("knee torque of a kick, 35.2 rad/s²", "N·m", book + "example on the torque in a kick; looked up")
                .value(44.0)
                .ours(torqueToTurn(1.25, 35.2))
                .within(1e-9, "exact");
        published("muscle force of a kick, lever arm 2.20 cm", "N", book + "example on the torque in a kick; looked up")
                .value(2000)
                .ours(torqueToTurn(1.25, 35.2) / 0.0220)
                .within(1e-9, "exact");
        published(
                        "triceps force of a boxer, 120 rad/s², lever arm 3.00 cm",
                        "N",
                        book + "exercise on the boxer; looked up")
                .value(2.00e3)
                .ours(torqueToTurn(0.50, 120) / 0.0300)
                .within(1e-9, "exact");
        published(
                        "thigh muscle's force of a footballer, 30 rad/s², lever arm 1.90 cm",
                        "N",
                        book
                                + "exercise on the soccer player; inputs looked up, answer of a reader's solution, looked up")
                .value(1.18e3)
                .ours(torqueToTurn(0.750, 30.00) / 0.0190)
                .within(5, "printed to three digits");
    }

    private static double torqueToTurn(double aboutJoint, double acceleration) {
        Vec com = new Vec(0.2, 0);
        double mass = 4;
        OneSegment limb = new OneSegment(mass, aboutJoint - mass * com.dot(com), com);
        return limb.moving(com.left().times(acceleration), acceleration, 0).moment();
    }
}
