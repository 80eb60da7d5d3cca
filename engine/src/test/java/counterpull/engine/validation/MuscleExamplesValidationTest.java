package counterpull.engine.validation;

import counterpull.engine.elastic.LinearLaw;
import counterpull.engine.elastic.LossFraction;
import counterpull.engine.elastic.Rubber;
import counterpull.engine.elastic.Strand;
import counterpull.engine.planar.Vec;
import org.junit.jupiter.api.Test;

/**
 * Worked examples and exercises of a free physics book on muscles and joints, and one on a machine for the back of the thigh: trunk,
 * head, foot, arm and shank as one held segment each. g = 9.80 m/s² there.
 */
class MuscleExamplesValidationTest {
    private static final double G = 9.80;
    private static final String BOOK = "OpenStax College Physics, section 9.6, ";
    private static final String EXERCISES = "Özkaya and Nordin, Fundamentals of Biomechanics, ";
    private static final String THREE_DIGITS = "printed to three digits";

    private static Published published(String quantity, String unit, String source) {
        return Published.of(quantity, unit).source(source);
    }

    /** A trunk bent forward over the hips with a box in the hands: lever arms as printed, muscle at 29° to the level. */
    @Test
    void liftingWithTheBack() {
        String source = BOOK + "example 2; looked up";
        StillSegment trunk = new StillSegment(55.0, 0.350, 0, G).weight(0.500, 30.0 * G);
        double weight = (55.0 + 30.0) * G;
        double muscle = Math.abs(trunk.muscle(0.0800));
        double slope = Math.toRadians(29.0);
        Vec onSpine = trunk.surfaces(Vec.unit(slope).times(-muscle));
        published("force of the back's muscles", "N", source)
                .value(4.20e3)
                .ours(muscle)
                .within(5, THREE_DIGITS);
        published("force of the back's muscles over the weight held", "", source)
                .value(5.04)
                .ours(muscle / weight)
                .within(0.0051, THREE_DIGITS);
        published("force on the spine, level", "N", source)
                .value(3.67e3)
                .ours(onSpine.x())
                .within(6, "printed to three digits, from the muscle's force as printed");
        published("force on the spine, upward", "N", source)
                .value(2.87e3)
                .ours(onSpine.y())
                .within(5, THREE_DIGITS);
        published("force on the spine", "N", source)
                .value(4.66e3)
                .ours(onSpine.norm())
                .within(6, "printed to three digits, from parts as printed");
        published("direction of the force on the spine", "°", source)
                .value(38.0)
                .ours(Math.toDegrees(Math.atan2(onSpine.y(), onSpine.x())))
                .within(0.051, THREE_DIGITS);
        published("force on the spine over the weight held", "", source)
                .value(5.59)
                .ours(onSpine.norm() / weight)
                .within(0.011, "printed to three digits, from the force as printed");
    }

    @Test
    void headHeldErect() {
        String source = BOOK + "exercise on the erect head; looked up";
        StillSegment head = StillSegment.weightless().weight(0.025, 50);
        double muscle = head.muscle(0.050);
        published("force of the neck's muscles", "N", source)
                .value(25)
                .ours(muscle)
                .within(1e-9, "exact");
        published("force of the spine on the head", "N", source)
                .value(75)
                .ours(head.surfaces(new Vec(0, -muscle)).y())
                .within(1e-9, "exact");
    }

    @Test
    void standingOnTheToesOfOneFoot() {
        String source =
                BOOK + "exercise on standing on the toes, 4 and 12 cm of the 16 cm between heel tendon and ball of the"
                        + " foot from memory; answers looked up";
        StillSegment foot = StillSegment.weightless().force(0.12, new Vec(0, 75 * G));
        double tendon = Math.abs(foot.muscle(0.04));
        published("force of the heel tendon, on the toes of one foot", "N", source)
                .value(2.21e3)
                .ours(tendon)
                .within(5.1, THREE_DIGITS);
        published("force of the shank on the ankle, on the toes of one foot", "N", source)
                .value(-2.94e3)
                .ours(foot.surfaces(new Vec(0, tendon)).y())
                .within(5, THREE_DIGITS);
    }

    /** The body as one segment on the toes; its weight, which the figure alone shows, is that of the printed work of 118 J. */
    @Test
    void pushUp() {
        String source = BOOK + "exercise on the push-up, mass of 50 kg from the printed work; looked up";
        double hand = new StillSegment(50, 0.90, 0, G).torque() / 1.50 / 2;
        published("force of the floor on each hand, push-up", "N", source)
                .value(147)
                .ours(hand)
                .within(0.5, "printed to whole newtons");
        double triceps = Math.abs(
                StillSegment.weightless().force(0.200, new Vec(0, hand)).muscle(0.0175));
        published("force of each triceps, push-up", "N", source)
                .value(1.68e3)
                .ours(triceps)
                .within(5, THREE_DIGITS);
        published("force of each triceps over her weight, push-up", "", source)
                .value(3.4)
                .ours(triceps / (50 * G))
                .within(0.051, "printed to one decimal");
    }

    /** In place of the book of example 1 a rubber rope of 600 N/m, pulled straight up with the forearm at 25°. */
    @Test
    void rubberRopeInTheHand() {
        String source =
                BOOK + "exercise on the elastic rope; inputs looked up, answers of a reader's solution, looked up";
        Rubber rope = new Rubber("rope", 0.5, LinearLaw.ofStiffness(600, 0.5), LossFraction.NONE, 0.7, 0, 0);
        Strand strand = rope.single();
        double stretched = 0.0653;
        published("pull of the rope at the printed stretch", "N", source)
                .value(39.2)
                .ours(strand.force(0.5 + stretched))
                .within(0.05, THREE_DIGITS);
        StillSegment forearm = new StillSegment(2.50, 0.160, 25, G).weight(0.380, strand.force(0.5 + stretched));
        published("biceps force against the rope", "N", source)
                .value(426)
                .ours(forearm.muscle(0.0400))
                .within(1, "printed to whole newtons, from parts as printed");
    }

    /** The father's example without its lever arm of the muscle, which only the figure has: what the knee must give. */
    @Test
    void childOnTheFoot() {
        String source = BOOK + "exercise on a child lifted by the shank; inputs looked up, torque computed by hand";
        StillSegment shank = new StillSegment(4, 0.20, 0, G).weight(0.38, 10 * G);
        published("knee torque with a child on the foot", "N·m", source)
                .value(45.08)
                .ours(shank.torque())
                .within(1e-9, "exact");
    }

    /** A pad that pushes square to the shank, 40 cm from the knee, with the shank 30° below the level. */
    @Test
    void padOnTheShank() {
        Vec square = Vec.unit(Math.toRadians(-30)).left().times(200);
        StillSegment shank = new StillSegment(60, 0.20, -30, 1).force(0.40, square);
        published(
                        "net moment of pad and shank about the knee",
                        "N·m",
                        EXERCISES + "problem 3.2, counter-clockwise; looked up")
                .value(69.6)
                .ours(-shank.torque())
                .within(0.051, "printed to one decimal");
    }

    /** A shank of 50 N and a boot of 100 N, held level and at 30, 60 and 90° below. */
    @Test
    void bootHeldAtFourAngles() {
        double[] moments = {60.0, 51.96, 30.0, 0.0};
        for (int i = 0; i < moments.length; i++) {
            StillSegment shank = new StillSegment(50, 0.20, -30 * i, 1).weight(0.50, 100);
            String source = EXERCISES
                    + "chapter 3, flexion and extension with a boot; inputs looked up, answer computed by hand";
            published("knee torque with a boot, shank " + 30 * i + "° below the level", "N·m", source)
                    .value(moments[i])
                    .ours(shank.torque())
                    .within(0.0051, "given to two decimals");
        }
    }
}
