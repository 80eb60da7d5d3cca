package counterpull.scenario.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.ExerciseLimb;
import counterpull.engine.profile.ExerciseProfile;
import counterpull.scenario.Files;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * regression: the design's worked examples E to H from their files to the numbers; two derivations of our own, not published values.
 * Tolerance: half a unit of the last printed digit, or relative 1e-6 where that is more.
 */
class WorkedExercisesTest {
    private static final double PRINTED = 5.1e-5;
    private static final double LARGE = 1.5e-4;

    private static ExerciseLimb first(String yaml) {
        return ExerciseProfile.of(Files.exercise(yaml).task()).limbs().get(0);
    }

    /** At the bottom, half way and at the top. */
    private static double[] three(ExerciseLimb limb, Joint joint, Phase phase) {
        return new double[] {limb.torque(joint, phase, 0), limb.torque(joint, phase, 50), limb.torque(joint, phase, 100)
        };
    }

    private static String knee(String resists) {
        String text = Files.BARE_KNEE_EXTENSION;
        int from = text.indexOf("resists:");
        return text.substring(0, from) + "resists:\n" + resists.indent(2) + text.substring(text.indexOf("tempo:"));
    }

    private static final String LEVER = """
            - lever:
                name: lever
                pivot: {forward: 3 cm, up: -2 cm}
                %s
                itself: {mass: 5 kg, radius: 22 cm, inertia: 0.40 kg·m2}
                horns: [{name: horn, radius: 40 cm, offset: 10 deg, mass: 25 kg}]
            """;

    @Test
    void eKneeExtensionOnALever() {
        ExerciseLimb pad = first(knee(LEVER.formatted("pad: {on: shank, on lever: 32 cm}")));
        assertThat(three(pad, Joint.KNEE, Phase.HELD))
                .containsExactly(new double[] {8.0776, 105.1692, 128.1408}, within(LARGE));
        ExerciseLimb cuff = first(knee(LEVER.formatted("cuff: {on: shank, along: 32 cm}")));
        assertThat(three(cuff, Joint.KNEE, Phase.HELD))
                .containsExactly(new double[] {7.3692, 106.0915, 128.4293}, within(LARGE));
    }

    @Test
    void fElbowFlexionOnACable() {
        String elbow = knee("""
                - cable:
                    name: cable
                    at: {on: forearm, along: 33 cm}
                    pulley: {forward: 80 cm, up: -100 cm}
                    ratio: 1
                    friction: 5 %
                    mass: 20 kg
                """)
                .replace("lift: knee extension", "lift: elbow flexion")
                .replace("thigh direction: 0 deg", "upper arm direction: -90 deg")
                .replace("{bottom: 90 deg, top: 0 deg}", "{bottom: 15 deg, top: 125 deg}");
        ExerciseLimb limb = first(elbow);
        assertThat(three(limb, Joint.ELBOW, Phase.HELD))
                .containsExactly(new double[] {-32.9130, 45.3665, 65.9999}, within(PRINTED));
        assertThat(three(limb, Joint.ELBOW, Phase.LIFTING))
                .containsExactly(new double[] {-31.2284, 52.0640, 69.1767}, within(PRINTED));
        assertThat(three(limb, Joint.ELBOW, Phase.LOWERING))
                .containsExactly(new double[] {-34.5975, 47.3747, 62.8231}, within(PRINTED));
    }

    @Test
    void gSquat() {
        ExerciseLimb limb = first(Files.kind("squat.yaml"));
        assertThat(three(limb, Joint.HIP, Phase.HELD))
                .containsExactly(new double[] {137.4609, 122.1220, 72.6038}, within(LARGE));
        assertThat(three(limb, Joint.KNEE, Phase.HELD))
                .containsExactly(new double[] {135.5960, 60.7667, -21.5814}, within(LARGE));
        assertThat(three(limb, Joint.ANKLE, Phase.HELD))
                .containsExactly(new double[] {51.4149, 51.4149, 51.4149}, within(PRINTED));
    }

    @Test
    void hBenchPress() {
        ExerciseLimb limb = first(Files.kind("bench-press.yaml"));
        assertThat(three(limb, Joint.SHOULDER, Phase.HELD))
                .containsExactly(new double[] {35.0536, 24.9206, 13.9437}, within(PRINTED));
        assertThat(three(limb, Joint.ELBOW, Phase.HELD))
                .containsExactly(new double[] {-59.9075, -49.7148, -22.3841}, within(6e-5));
    }

    static Stream<String> everyKind() {
        return Stream.concat(Stream.of(Files.shipped("example-exercise.yaml")), Files.kinds());
    }

    /** Whatever the example and the tests' files describe is an exercise that somebody could do. */
    @ParameterizedTest
    @MethodSource("everyKind")
    void everyExerciseCanBeComputed(String yaml) {
        ExerciseProfile profile = ExerciseProfile.of(Files.exercise(yaml).task());
        for (ExerciseLimb limb : profile.limbs()) {
            for (Joint joint : profile.task().exercise().motion().joints()) {
                assertThat(limb.torque(joint, Phase.HELD, 30)).isBetween(-500.0, 500.0);
            }
        }
    }
}
