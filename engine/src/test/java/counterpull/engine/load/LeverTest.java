package counterpull.engine.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Constants;
import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.body.Anthropometry;
import counterpull.engine.body.DempsterWinter;
import counterpull.engine.body.Joint;
import counterpull.engine.body.MeasuredLengths;
import counterpull.engine.body.Sex;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Course;
import counterpull.engine.motion.FullStop;
import counterpull.engine.motion.Hinge;
import counterpull.engine.motion.Motion;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.Tempo;
import counterpull.engine.motion.WorkingRange;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Vec;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LeverTest {
    private static final Loaded PLATES = Loaded.with(0);

    @Test
    void balancesPower() {
        RandomLimb random = new RandomLimb(21);
        RandomLever levers = new RandomLever(random);
        for (int trial = 0; trial < 60; trial++) {
            ChainPath path = levers.swinging();
            double radius = random.between(0, 0.4);
            double mass = random.between(0, 20);
            LeverBody body =
                    new LeverBody(mass, radius, random.between(-3, 3), mass * radius * radius + random.between(0, 0.5));
            List<Horn> horns = List.of(
                    new Horn("horn", random.between(0.1, 0.6), random.between(-3, 3), PLATES),
                    new Horn("counterweight", random.between(0.1, 0.6), 3, Loaded.always(random.between(0, 20))));
            Lever lever = new Lever("lever", levers.on(path), body, horns, random.between(0, 5));
            double gravity = trial % 5 == 0 ? 0 : Constants.STANDARD_GRAVITY;
            PowerBalance.check(lever, new PowerBalance.Setting(path, gravity, random.between(0, 60)));
        }
    }

    private static ChainPath kneeExtension() {
        Hinge hinge = new Hinge(Joint.KNEE, 0, Map.of(), Hinge.Lie.UPRIGHT);
        WorkingRange range = new WorkingRange(Angles.radians(90), 0, Angles.radians(90));
        Course course = Course.even(Angles.radians(90), 5, new FullStop(new Tempo.Seconds(2, 0, 2, 0)));
        Anthropometry body = new Anthropometry(new DempsterWinter(), Sex.MALE, 1.75, 80, MeasuredLengths.none());
        return hinge.path(new Motion.Moving(body.side(), 1, range, course, List.of()));
    }

    private static Lever exampleE(Contact contact) {
        Horn horn = new Horn("horn", 0.40, Angles.radians(10), PLATES);
        LeverFrame frame = new LeverFrame(new Vec(0.03, -0.02), contact);
        return new Lever("lever", frame, new LeverBody(5, 0.22, 0, 0.40), List.of(horn), 0);
    }

    // the design's worked example E: two derivations of our own, not published; half a unit of the last printed digit
    @ParameterizedTest
    @CsvSource({
        "0, HELD, 21.6224, 8.0776, 20.7679, 7.3692",
        "2, HELD, 270.4604, 105.1692, 303.2521, 106.0915",
        "4, HELD, 332.1799, 128.1408, 364.4375, 128.4293",
        "1, LIFTING, 183.6878, 70.2023, 200.4592, 70.0289",
        "3, LIFTING, 308.3130, 120.2858, 346.0397, 121.4435",
        "1, LOWERING, 183.6878, 70.2023, 200.4592, 70.0289"
    })
    void workedExampleE(int i, Phase phase, double pad, double padKnee, double cuff, double cuffKnee) {
        agrees(exampleE(RollerPad.against(0, 0.32)), phase, i, new double[] {pad, padKnee});
        agrees(exampleE(new Cuff(0, 0.32)), phase, i, new double[] {cuff, cuffKnee});
    }

    private static void agrees(Lever lever, Phase phase, int i, double[] printed) {
        PowerBalance.Setting setting = new PowerBalance.Setting(kneeExtension(), Constants.STANDARD_GRAVITY, 25);
        List<Pull> pulls = lever.on(setting.path(), setting.gravity());
        double force = pulls.get(0).size(setting.path().course().cell(phase, i), 25);
        assertThat(force).isCloseTo(printed[0], within(5.1e-5));
        assertThat(HeldTorque.of(pulls, setting, phase, i)[0]).isCloseTo(printed[1], within(5.1e-5));
    }

    @Test
    void aPadThatTheWeightLeavesHasANegativeForceWhichOnlyACuffHolds() {
        ChainPath path = kneeExtension();
        Horn counterweight = new Horn("counterweight", 0.4, Math.PI, Loaded.always(20));
        for (Contact contact : List.of(RollerPad.against(0, 0.3), new Cuff(0, 0.3))) {
            Lever lever = new Lever(
                    "lever", new LeverFrame(new Vec(0, 0), contact), LeverBody.weightless(), List.of(counterweight), 0);
            Pull pull = lever.on(path, Constants.STANDARD_GRAVITY).get(0);
            int top = path.course().cell(Phase.HELD, 4);
            // shank level, weight 0.4 m behind the knee: 20 g · 0.4/0.3 lifts the shank
            assertThat(pull.size(top, 0)).isCloseTo(-20 * 9.80665 * 0.4 / 0.3, within(1e-9));
            assertThat(pull.direction(4).y()).isCloseTo(-1, within(1e-12));
            assertThat(pull.carrier()).contains(lever.frame());
        }
        assertThat(RollerPad.against(0, 0.3).holds()).isEqualTo(Pull.Holds.ONE_WAY);
        assertThat(new Cuff(0, 0.3).holds()).isEqualTo(Pull.Holds.BOTH_WAYS);
    }

    @Test
    void aPadBehindTheLimbPushesAlongWithTheLift() {
        ChainPath path = kneeExtension();
        RollerPad behind = new RollerPad(0, 0.3, RollerPad.Pushes.WITH_THE_LIFT);
        Horn counterweight = new Horn("counterweight", 0.4, Math.PI, Loaded.always(20));
        Lever lever = new Lever(
                "lever", new LeverFrame(new Vec(0, 0), behind), LeverBody.weightless(), List.of(counterweight), 0);
        Pull pull = lever.on(path, Constants.STANDARD_GRAVITY).get(0);
        assertThat(pull.size(path.course().cell(Phase.HELD, 4), 0)).isPositive();
        assertThat(pull.direction(4).y()).isCloseTo(1, within(1e-12));
    }

    @Test
    void frictionAtThePivotRubsAlsoWhereNothingMovesYet() {
        ChainPath path = kneeExtension();
        LeverFrame frame = new LeverFrame(new Vec(0, 0), new Cuff(0, 0.25));
        Lever lever = new Lever("lever", frame, LeverBody.weightless(), List.of(), 5);
        Pull pull = lever.on(path, Constants.STANDARD_GRAVITY).get(0);
        assertThat(pull.size(path.course().cell(Phase.LIFTING, 0), 0)).isCloseTo(20, within(1e-12));
        assertThat(pull.size(path.course().cell(Phase.LOWERING, 0), 0)).isCloseTo(-20, within(1e-12));
        assertThat(pull.size(path.course().cell(Phase.HELD, 0), 0)).isZero();
    }

    @Test
    void chosenPlatesOnTwoHornsAreRefused() {
        List<Horn> two = List.of(new Horn("a", 0.3, 0, PLATES), new Horn("b", 0.3, 1, PLATES));
        LeverFrame frame = new LeverFrame(new Vec(0, 0), new Cuff(0, 0.25));
        assertThatThrownBy(() -> new Lever("lever", frame, LeverBody.weightless(), two, 0))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.fault()).isEqualTo(Fault.OUTSIDE_LIMITS));
        assertThat(new Lever("lever", frame, LeverBody.weightless(), two.subList(0, 1), 0).takesPlates())
                .isTrue();
    }

    @Test
    void anInertiaBelowThatOfAPointMassIsRefused() {
        assertThatThrownBy(() -> new LeverBody(5, 0.4, 0, 0.5)).isInstanceOfSatisfying(Refusal.class, refusal -> {
            assertThat(refusal.value()).isEqualTo(0.5);
            assertThat(refusal.limit()).isCloseTo(0.792, within(1e-12));
        });
    }
}
