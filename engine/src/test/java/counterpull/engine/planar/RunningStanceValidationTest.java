package counterpull.engine.planar;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.planar.OneSegment.Answer;
import counterpull.engine.validation.Published;
import counterpull.engine.validation.ReferenceFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A simulated running stance whose true moments are known: three samples of it, whole legs with real accelerations. Foot
 * first, then shank, then thigh; g = 9.81 m/s².
 */
class RunningStanceValidationTest {
    private static final ReferenceFile FILE = ReferenceFile.read("vandenbogert-dekoning1996.tsv");
    private static final String TRUTH =
            "van den Bogert & de Koning 1996, simulated running stance, true value; looked up";
    private static final String PRINTED =
            "van den Bogert & de Koning 1996, recomputed from the printed inputs, apart from" + " this code";
    private static final double G = 9.81;
    private static final double[] MASS = {6.85, 2.86, 1.00};
    private static final double[] INERTIA = {0.145361267, 0.042996389, 0.0200};
    private static final double[] COM = {0.4323725, 0.4334975, 0.0};
    private static final String[] JOINT = {"hip", "knee", "ankle"};
    private static final String[] SEGMENT = {"thigh", "shank", "foot"};
    private static final String[] END = {"hip", "knee", "ankle", "toe"};

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2})
    void momentsAndForcesOfTheLeg(int row) {
        Answer[] leg = leg(row, 1);
        for (int i = 0; i < JOINT.length; i++) {
            check(row, JOINT[i], leg[i]);
        }
    }

    /** Without its accelerations the hip would be wrong by 40 N·m: the check sees inertia, not weight alone. */
    @Test
    void inertiaMattersMostAtTheHip() {
        Answer[] held = leg(2, 0);
        double[] stated = {1.86, 106.72, -144.98};
        for (int i = 0; i < JOINT.length; i++) {
            Published.of(JOINT[i] + " moment without accelerations, sample 4000", "N·m")
                    .source(PRINTED)
                    .value(stated[i])
                    .ours(held[i].moment())
                    .within(0.0051, "printed to two decimals");
        }
        assertThat(held[0].moment() - FILE.number(2, "hip M true")).isGreaterThan(39);
    }

    /** What hip, knee and ankle give, with the accelerations times a factor. */
    private static Answer[] leg(int row, double factor) {
        Answer[] answers = new Answer[JOINT.length];
        for (int i = JOINT.length - 1; i >= 0; i--) {
            Vec proximal = point(row, END[i]);
            Vec bone = point(row, END[i + 1]).minus(proximal);
            OneSegment segment = new OneSegment(MASS[i], INERTIA[i], bone.times(COM[i]));
            if (i == JOINT.length - 1) {
                Vec ground = new Vec(FILE.number(row, "Fx"), FILE.number(row, "Fy"));
                segment.force(new Vec(FILE.number(row, "COPx"), 0).minus(proximal), ground);
            } else {
                segment.carries(bone, answers[i + 1]);
            }
            Vec acceleration = new Vec(FILE.number(row, SEGMENT[i] + " ax"), FILE.number(row, SEGMENT[i] + " ay"));
            double alpha = FILE.number(row, SEGMENT[i] + " alpha");
            answers[i] = segment.moving(acceleration.times(factor), factor * alpha, G);
        }
        return answers;
    }

    private static Vec point(int row, String end) {
        return new Vec(FILE.number(row, end + " x"), FILE.number(row, end + " y"));
    }

    private static void check(int row, String joint, Answer answer) {
        String at = ", sample " + FILE.text(row, "sample");
        double force = answer.force().norm();
        Published.of(joint + " moment" + at, "N·m")
                .source(TRUTH)
                .value(FILE.number(row, joint + " M true"))
                .ours(answer.moment())
                .within(0.05, "inputs printed to few digits, accelerations by central differences");
        Published.of(joint + " force" + at, "N")
                .source(TRUTH)
                .value(FILE.number(row, joint + " F true"))
                .ours(force)
                .within(0.2, "inputs printed to few digits, accelerations by central differences");
        Published.of(joint + " moment" + at, "N·m")
                .source(PRINTED)
                .value(FILE.number(row, joint + " M again"))
                .ours(answer.moment())
                .within(0.00051, "printed to three decimals");
        Published.of(joint + " force" + at, "N")
                .source(PRINTED)
                .value(FILE.number(row, joint + " F again"))
                .ours(force)
                .within(0.0051, "printed to two decimals");
    }
}
