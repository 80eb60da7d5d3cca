package counterpull.scenario.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.body.Action;
import counterpull.engine.body.Side;
import counterpull.engine.elastic.BenchCurve;
import counterpull.engine.load.Hang;
import counterpull.engine.motion.FullStop;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.Person;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.PressTask;
import counterpull.scenario.Files;
import counterpull.scenario.PressScenario;
import counterpull.scenario.fields.Shape;
import counterpull.scenario.format.Words;
import counterpull.scenario.units.Dimension;
import counterpull.scenario.units.Unit;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The commented examples are the documentation of the format. */
class ExampleTest {
    private final String text = Files.shipped("example.yaml") + Files.shipped("example-exercise.yaml");

    static Stream<Arguments> keys() {
        return Groups.all().flatMap(shape -> shape.keys().stream().map(key -> new Arguments(shape, key)));
    }

    record Arguments(Shape shape, String key) {}

    @ParameterizedTest
    @MethodSource("keys")
    void showsEveryKey(Arguments of) {
        assertThat(text).as(of.shape().name()).containsPattern("[\\n{ ,]" + of.key() + ":|" + of.key() + " \\(");
    }

    @Test
    void showsEveryWord() {
        Stream.of(
                        Words.SEX,
                        Words.TABLE,
                        Words.TESTER,
                        Words.ENDED,
                        Words.RIDE,
                        Words.TAPE,
                        Words.RUN,
                        Words.PLATES_GO_ON,
                        Words.LIMBS,
                        Words.BODY_POINT,
                        Words.HANG,
                        Words.PLACEMENT,
                        Words.TURN,
                        Words.STRAYING)
                .flatMap(choices -> choices.words().stream())
                .forEach(word -> assertThat(text).contains(word));
    }

    @Test
    void namesEveryUnitOfThoseThatAFileCanUse() {
        List<Dimension> unused = List.of(Dimension.AREA, Dimension.ANGULAR_SPEED);
        Stream.of(Unit.values())
                .filter(unit -> !unused.contains(unit.dimension()))
                .forEach(unit -> assertThat(text).contains(unit.symbol()));
    }

    @Test
    void everyNumberArrivesInSi() {
        PressScenario scenario = Files.example();
        assertThat(scenario.client().physique().stature()).isEqualTo(1.7526);
        assertThat(scenario.machine().rail().angle()).isEqualTo(Math.PI / 4);
        assertThat(scenario.loaded().plates().total()).isEqualTo(62.5);
        assertThat(scenario.tempo())
                .isInstanceOfSatisfying(
                        FullStop.class,
                        stop -> assertThat(stop.seconds().lowPause()).isEqualTo(1));
        // 28 kgf × 34 cm, one rounding each
        assertThat(scenario.limb(Side.LEFT)
                        .orElseThrow()
                        .strength()
                        .tests()
                        .get(1)
                        .test()
                        .torque())
                .isCloseTo(28 * 9.80665 * 0.34, within(1e-12));
        assertThat(scenario.room().plates().get(3).name()).isEqualTo("old 25s");
        assertThat(scenario.room().plates().get(0).name()).isEqualTo("20 kg");
        assertThat(scenario.room().plates().get(3).mass()).isEqualTo(11.33980925);
        assertThat(scenario.room().pieces().get(0).rubber().law()).isInstanceOf(BenchCurve.class);
        assertThat(scenario.kit().rules().hangs()).containsExactly(Hang.SINGLE, Hang.DOUBLED);
        assertThat(scenario.racking().mostImbalance()).isEqualTo(25);
        assertThat(scenario.goal().caps().kneecapStress()).isEqualTo(6e6);
    }

    @Test
    void theTargetIsOrderedByKneeAngleWhateverTheFilesOrder() {
        PressScenario scenario = Files.example();
        assertThat(scenario.goal().target().at(Math.toRadians(90))).isEqualTo(0.45);
        assertThat(scenario.goal().target().at(Math.toRadians(30))).isEqualTo(0.60);
        assertThat(scenario.goal().target().at(Math.toRadians(75))).isCloseTo(0.525, within(1e-12));
    }

    static Stream<PressScenario> everyScenario() {
        return Files.presses();
    }

    /** The demo and the example are setups that a person could really stand in. */
    @ParameterizedTest
    @MethodSource("everyScenario")
    void canBeComputed(PressScenario scenario) {
        PressTask task = scenario.task();
        PressProfile profile = PressProfile.of(task);
        for (int i = 0; i < profile.positions(); i++) {
            assertThat(profile.force(Phase.HELD, i)).isBetween(100.0, 3000.0);
        }
        double sum =
                task.person().limbs().stream().mapToDouble(limb -> limb.share()).sum();
        assertThat(sum).isEqualTo(1);
    }

    @Test
    void eachLimbHasItsOwnStrength() {
        Person person = Files.demo("crane.yaml").person();
        double angle = Math.toRadians(60);
        double left = kneeAt(person, 0, angle);
        double right = kneeAt(person, 1, angle);
        // between the published curve and the tests of 134 and 207 ft·lbf (182 and 281 N·m), nearer to the tests
        assertThat(left).isBetween(165.0, 200.0);
        assertThat(right).isBetween(250.0, 290.0);
    }

    private static double kneeAt(Person person, int limb, double angle) {
        return person.limbs()
                .get(limb)
                .strength()
                .of(Action.KNEE_EXTENSION)
                .orElseThrow()
                .held(angle);
    }
}
