package counterpull.scenario.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Refusal;
import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;
import counterpull.engine.load.DeadWeight;
import counterpull.engine.motion.BalancedStand;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.StandDrive;
import counterpull.engine.motion.WorkingRange;
import counterpull.engine.profile.ExerciseProfile;
import counterpull.scenario.ExerciseScenario;
import counterpull.scenario.Files;
import counterpull.scenario.problem.Code;
import counterpull.scenario.problem.Problem;
import counterpull.scenario.tree.Source;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Exercises from the file to the engine's task, and what is refused on the way. */
class ExerciseReadingTest {
    private final String text = Files.shipped("example-exercise.yaml");

    private static List<Problem> problems(String yaml) {
        return ScenarioReader.read(List.of(Source.of("exercise.yaml", yaml)))
                .problems()
                .all();
    }

    private String with(String from, String to) {
        assertThat(text).contains(from);
        int at = text.indexOf(from);
        return text.substring(0, at) + to + text.substring(at + from.length());
    }

    /** One problem with this code at this key, and a sentence that says this. */
    private static void refused(String yaml, Code code, String key, String says) {
        assertThat(problems(yaml)).singleElement().satisfies(problem -> {
            assertThat(problem.code()).isEqualTo(code);
            assertThat(problem.place().key()).hasToString(key);
            assertThat(problem.line()).contains(says);
        });
    }

    /** regression: worked example D, two derivations of our own; tolerance half a unit of the last printed digit. */
    @Test
    void aKneeExtensionGivesTheWorkedExamplesTorques() {
        String bare = Files.BARE_KNEE_EXTENSION;
        ExerciseProfile profile = ExerciseProfile.of(Files.exercise(bare).task());
        int last = profile.positions() - 1;
        assertThat(profile.limbs().get(0).torque(Joint.KNEE, Phase.HELD, 0)).isCloseTo(0.7565, within(5.1e-5));
        assertThat(profile.limbs().get(0).torque(Joint.KNEE, Phase.HELD, last / 2))
                .isCloseTo(28.4970, within(5.1e-5));
        assertThat(profile.limbs().get(0).torque(Joint.KNEE, Phase.LIFTING, last / 4))
                .isCloseTo(18.0375, within(5.1e-5));
        assertThat(profile.limbs().get(0).torque(Joint.KNEE, Phase.HELD, last)).isCloseTo(39.5443, within(5.1e-5));
    }

    @Test
    void aPersonsRangeIsTurnedSoThatTheLiftStartsAtItsBottom() {
        ExerciseScenario extension = Files.exercise();
        ExerciseScenario flexion = Files.exercise(with("lift: knee extension", "lift: knee flexion"));
        assertThat(extension.task().range().bottom()).isEqualTo(Math.toRadians(90));
        assertThat(flexion.task().range().bottom()).isCloseTo(Math.toRadians(10), within(1e-12));
        assertThat(flexion.task().range().top()).isCloseTo(Math.toRadians(90), within(1e-12));
    }

    @Test
    void anExercisesOwnRangeComesBeforeThePersons() {
        ExerciseScenario own = Files.exercise(with(
                "  # range: {bottom: 90 deg, top: 0 deg, pain free: 95 deg}",
                "  range: {bottom: 80 deg, top: 20 deg}"));
        WorkingRange range = own.task().person().limbs().get(0).range();
        assertThat(range.bottom()).isEqualTo(Math.toRadians(80));
        assertThat(range.painFree()).isEqualTo(Math.toRadians(80));
    }

    @Test
    void aRangeThatNobodyMeasuredIsAProblemOfTheLimb() {
        refused(
                with("        knee flexion: {bottom: 90 deg, top: 10 deg, pain free: 95 deg}", "       "),
                Code.RANGE_NOT_MEASURED,
                "person.limbs.left.ranges",
                "inclinometer");
    }

    @Test
    void onlyASledHasAMachineAndAKit() {
        String room = "\nmachine: {name: sled}\nkit: {}\n";
        assertThat(problems(text + room))
                .extracting(Problem::code)
                .containsExactly(Code.CONTRADICTION, Code.CONTRADICTION);
    }

    @Test
    void aBounceIsTimedByTravelAndNotByAJoint() {
        String stops = text.substring(text.indexOf("\ntempo:"), text.indexOf("\n", text.indexOf("\n  full stop:") + 1));
        String bounce = "\ntempo:\n  bounce: {lowering speed: 0.5 m/s, lifting speed: 0.5 m/s, turn time: 0.4 s}";
        refused(text.replace(stops, bounce), Code.CONTRADICTION, "tempo", "drives this exercise");
    }

    @Test
    void onlyASledHasAForceAlongItsRail() {
        refused(
                with("  ceiling: 85 %", "  ceiling: 85 %\n  least force: 10 N"),
                Code.CONTRADICTION,
                "target.least force",
                "rail press");
        refused(
                with("  kneecap stress: 6 MPa", "  kneecap stress: 6 MPa\n  uneven sides: 5 kg"),
                Code.CONTRADICTION,
                "limits.uneven sides",
                "rail press");
    }

    @Test
    void aPartThatDoesNotMoveBearsNothing() {
        refused(
                with("on: shank", "on: thigh"),
                Code.UNKNOWN_NAME,
                "resists[1].dead weight.at.on",
                "the thigh does not move in this exercise. What moves: shank, foot");
    }

    @Test
    void thePartsEndIsAsFarAsItIsLong() {
        ExerciseScenario whole = Files.exercise(with("along: 35 cm", "along: whole"));
        assertThat(whole).isEqualTo(Files.exercise(with("along: 35 cm", "along: 43 cm")));
    }

    @Test
    void anUnevenPairOfLimbsHasNoCommonEnd() {
        String both = with("along: 35 cm", "along: whole")
                .replace("limbs: left ", "limbs: both ")
                .replace(
                        "\nexercise:",
                        "\n    right:\n      ranges: {knee flexion: {bottom: 90 deg, top: 10 deg}}\n\nexercise:");
        refused(both, Code.CONTRADICTION, "resists[1].dead weight.at.along", "left and right shank differ");
        assertThat(problems(both.replace("along: whole", "along: 35 cm"))).isEmpty();
    }

    @Test
    void directionAndHeldAnglesBelongToTheJointThatTurns() {
        refused(
                with("thigh direction: 0 deg ", "thigh direction: 0 deg\n  shank direction: 0 deg "),
                Code.CONTRADICTION,
                "exercise.shank direction",
                "only the thigh direction counts");
        refused(
                with("    ankle dorsiflexion: 0 deg\n", "    elbow flexion: 0 deg\n"),
                Code.CONTRADICTION,
                "exercise.held.elbow flexion",
                "not beyond the knee");
        refused(
                with("thigh direction: 0 deg ", "# "),
                Code.MISSING_KEY,
                "exercise.thigh direction",
                "missing in hinge");
    }

    @Test
    void aRangeAgainstTheLiftIsTurnedRound() {
        refused(
                with(
                        "  # range: {bottom: 90 deg, top: 0 deg, pain free: 95 deg}",
                        "  range: {bottom: 20 deg, top: 80 deg}"),
                Code.OUT_OF_ORDER,
                "exercise.range.top",
                "this lift lowers the angle");
    }

    @Test
    void onlyOneWeightIsChosen() {
        String second = "\n  - dead weight: {name: second cuff, at: {on: foot, along: 5 cm}, chosen: 1 kg}\n\ntempo:";
        refused(
                with("\n\ntempo:", second),
                Code.CONTRADICTION,
                "resists[11]",
                "another thing that resists has a chosen weight");
    }

    @Test
    void aWeightIsAlwaysThereOrChosen() {
        refused(
                with("      mass: 0.5 kg\n      chosen: 4 kg\n", ""),
                Code.MISSING_KEY,
                "resists[1].dead weight.mass or chosen",
                "Give mass, chosen or both");
        assertThat(Files.exercise(with("      chosen: 4 kg\n", "")).task().plates())
                .isZero();
        assertThat(Files.exercise().task().plates()).isEqualTo(4);
    }

    @Test
    void anUnknownKindIsOneProblem() {
        refused(with("kind: hinge", "kind: hing"), Code.NOT_A_CHOICE, "exercise.kind", "Did you mean \"hinge\"?");
    }

    @Test
    void aFlatCurveHasItsTwoEnds() {
        refused(
                with("flat: 60 N·m, from: 0 deg, to: 40 deg", "flat: 60 N·m, from: 40 deg, to: 0 deg"),
                Code.OUT_OF_ORDER,
                "person.limbs.left.curves[1].to",
                "must be above");
        refused(
                with(
                        "flat: 60 N·m, from: 0 deg, to: 40 deg",
                        "from: 0 deg, points: [{angle: 0 deg, torque: 60 N·m}, {angle: 40 deg, torque: 60 N·m}]"),
                Code.CONTRADICTION,
                "person.limbs.left.curves[1].from",
                "flat curve");
    }

    @Test
    void aMeasuredTrunkIsBothSides() {
        String squat = Files.kind("squat.yaml").replace("  segment table:", "  trunk: 50 cm\n  segment table:");
        ExerciseScenario scenario = Files.exercise(squat);
        DeadWeight bar = (DeadWeight) scenario.task().exercise().resists().get(0);
        assertThat(bar.at().at().x()).isEqualTo(0.5);
        assertThat(scenario.task().person().limbs())
                .allSatisfy(limb ->
                        assertThat(limb.body().trunk().orElseThrow().length()).isEqualTo(0.5));
    }

    @Test
    void aTableWithoutTheTrunkHasNoEndOfIt() {
        refused(
                Files.kind("squat.yaml").replace("dempster-winter", "de-leva-1996"),
                Code.OUTSIDE_PUBLISHED_RANGE,
                "resists[1].dead weight.at.along",
                "Name another segment table");
    }

    @Test
    void anAnkleGivesNoMoreThanThePersonsOwnLimit() {
        String squat = Files.kind("squat.yaml");
        String stiffer = squat.replaceFirst("dorsiflexion: \\{to: 36 deg", "dorsiflexion: {to: 20 deg");
        assertThat(ankle(squat)).isCloseTo(Math.toRadians(36), within(1e-12));
        assertThat(ankle(stiffer)).isCloseTo(Math.toRadians(20), within(1e-12));
        assertThat(ankle(squat.replace("balance: 50 %", "balance: 50 %\n  ankle gives: 30 deg")))
                .isCloseTo(Math.toRadians(30), within(1e-12));
        assertThat(ankle(squat.replaceAll("joint limits: \\{dorsiflexion: \\{to: 36 deg}}, ", "")))
                .isInfinite();
    }

    private static double ankle(String squat) {
        BalancedStand stand =
                (BalancedStand) Files.exercise(squat).task().exercise().motion();
        return ((StandDrive.Knee) stand.drive()).ankle().limit();
    }

    @Test
    void aFlatCurveSaysThatItIsAssumed() {
        String source = Files.exercise()
                .task()
                .person()
                .limbs()
                .get(0)
                .strength()
                .of(Action.HIP_ABDUCTION)
                .orElseThrow()
                .source();
        assertThat(source).contains("assumption");
    }

    @Test
    void keysOfAnotherWayAreRefused() {
        refused(
                Files.kind("squat.yaml").replace("balance: 50 %", "balance: 50 %\n  knee per hip: 0.1"),
                Code.CONTRADICTION,
                "exercise.knee per hip",
                "where the knee drives");
        refused(
                Files.kind("bench-press.yaml").replace("leads: hand", "leads: hand\n  foot direction: 90 deg"),
                Code.CONTRADICTION,
                "exercise.foot direction",
                "leads with the hand");
        refused(
                Files.kind("pulldown-by-readings.yaml")
                        .replace("travel: 5 cm", "angle: 5 deg")
                        .replace("travel: 30 cm", "angle: 30 deg")
                        .replace("travel: 50 cm", "angle: 50 deg")
                        .replaceFirst("force by travel", "force by angle")
                        .replace("      bottom at: 6 cm\n", ""),
                Code.CONTRADICTION,
                "resists[1].measured profile.force by angle",
                "travel drives this exercise");
    }

    @Test
    void aPathThatNoArmReachesIsRefusedWhereItIsComputed() {
        ExerciseScenario far = Files.exercise(Files.kind("bench-press.yaml").replace("up: 55 cm", "up: 75 cm"));
        assertThatThrownBy(() -> ExerciseProfile.of(far.task())).isInstanceOf(Refusal.class);
    }
}
