package counterpull.engine.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Constants;
import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Phase;
import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class CamStackTest {
    private static final double G = Constants.STANDARD_GRAVITY;

    @Test
    void balancesPower() {
        RandomLimb random = new RandomLimb(31);
        RandomLever levers = new RandomLever(random);
        int compared = 0;
        for (int trial = 0; trial < 60; trial++) {
            ChainPath path = levers.swinging();
            LeverFrame frame = levers.on(path);
            CamRadius cam = trial % 4 == 0 ? CamRadius.round(0.12) : around(frame.over(path), random);
            StackLine line =
                    new StackLine(1 + random.below(3), random.between(0, 0.2), Loaded.with(5), random.between(0, 2));
            CamStack stack = new CamStack("cam", frame, cam, line, random.between(0, 0.5));
            try {
                PowerBalance.check(
                        stack, new PowerBalance.Setting(path, G, random.between(0, 60)), knots(frame.over(path), cam));
                compared++;
            } catch (Refusal refusal) {
                assertThat(refusal.fault())
                        .as("a random limb may outrun its stack")
                        .isEqualTo(Fault.SLACK_STACK);
            }
        }
        assertThat(compared).isGreaterThan(50);
    }

    /** Readings from a little before to a little after the lever's angles; a third of the cams help. */
    private static CamRadius around(LeverPath lever, RandomLimb random) {
        double least = Double.MAX_VALUE;
        double most = -Double.MAX_VALUE;
        for (int i = 0; i < lever.limb().positions(); i++) {
            least = Math.min(least, lever.angle(i));
            most = Math.max(most, lever.angle(i));
        }
        List<CamRadius.Reading> readings = new ArrayList<>();
        double sign = random.below(3) == 0 ? -1 : 1;
        double turn = Math.abs(least) < 3 ? 2 * Math.PI * Math.signum(-least) : 0;
        for (int k = 0; k <= 4; k++) {
            double angle = least - 0.01 + (most - least + 0.02) * k / 4;
            double counted = Math.abs(angle + turn) < 2 * Math.PI && Math.abs(most + turn) < 6 ? angle + turn : angle;
            readings.add(new CamRadius.Reading(counted, sign * random.between(0.06, 0.2)));
        }
        return new CamRadius(readings);
    }

    /** Where the radius passes a reading its third derivative jumps, which the stencil of the contract does not forgive. */
    private static List<Integer> knots(LeverPath lever, CamRadius cam) {
        List<Integer> knots = new ArrayList<>();
        for (CamRadius.Reading reading : cam.readings()) {
            for (int i = 1; i < lever.limb().positions(); i++) {
                if (passes(lever.angle(i - 1), reading.angle(), lever.angle(i))) {
                    knots.add(i);
                }
            }
        }
        return knots;
    }

    private static boolean passes(double before, double at, double after) {
        return Math.sin((before - at) / 2) * Math.sin((after - at) / 2) <= 0;
    }

    @Test
    void aRoundCamOnTheJointsOwnAxleIsStackWeightTimesItsRadius() {
        ChainPath path = new RandomLimb(3).next();
        LeverFrame frame = new LeverFrame(new Vec(0, 0), new Cuff(0, 0.3));
        CamStack stack = new CamStack("cam", frame, CamRadius.round(0.12), new StackLine(2, 0.1, Loaded.with(0), 0), 0);
        Pull pull = stack.on(path, 0).get(0);
        // 40 kg over 2:1 on 0.12 m, at 0.3 m; the stack hangs upright although the plane lies level
        double held = 40 * G / 2 * 0.12 / 0.3;
        assertThat(pull.size(path.course().cell(Phase.HELD, 200), 40)).isCloseTo(held, within(1e-10));
        assertThat(pull.size(path.course().cell(Phase.LIFTING, 0), 40)).isCloseTo(1.1 * held, within(1e-10));
        assertThat(pull.size(path.course().cell(Phase.LOWERING, 0), 40)).isCloseTo(0.9 * held, within(1e-10));
        double a = path.course().acceleration(Phase.LIFTING, 80) * 0.12;
        double moving = 1.1 * 40 * (G + a / 2) / 2 * 0.12 / 0.3;
        assertThat(pull.size(path.course().cell(Phase.LIFTING, 80), 40)).isCloseTo(moving, within(1e-10));
    }

    @Test
    void aStackThatSinksWhileTheLimbLiftsHelps() {
        ChainPath path = new RandomLimb(3).next();
        LeverFrame frame = new LeverFrame(new Vec(0, 0), new RollerPad(0, 0.3, RollerPad.Pushes.WITH_THE_LIFT));
        CamStack stack =
                new CamStack("assist", frame, CamRadius.round(-0.12), new StackLine(1, 0.1, Loaded.always(40), 0), 0);
        Pull pull = stack.on(path, G).get(0);
        double held = 40 * G * 0.12 / 0.3;
        assertThat(pull.size(path.course().cell(Phase.HELD, 0), 0)).isCloseTo(held, within(1e-10));
        assertThat(pull.size(path.course().cell(Phase.LIFTING, 0), 0))
                .as("it gives less than its weight while it sinks")
                .isCloseTo(0.9 * held, within(1e-10));
        Vec moves = path.track(pull.at()).slope(0);
        assertThat(pull.direction(0).dot(moves)).as("along with the lift").isPositive();
    }

    @Test
    void theRadiusPassesThroughItsReadingsAndNeverBeyondThem() {
        CamRadius cam = new CamRadius(List.of(
                new CamRadius.Reading(0.5, 0.14), new CamRadius.Reading(-0.5, 0.10), new CamRadius.Reading(1.5, 0.08)));
        CamCurve curve = new CamCurve(cam);
        assertThat(curve.radius(0.5)).isCloseTo(0.14, within(1e-15));
        assertThat(curve.radius(0.5 - 2 * Math.PI))
                .as("a whole turn away is the same direction")
                .isCloseTo(0.14, within(1e-15));
        for (double angle = -0.5; angle <= 1.5; angle += 0.01) {
            assertThat(curve.radius(angle)).isBetween(0.08, 0.14);
        }
        double h = 1e-4;
        // central differences: h² times a third derivative of about 0.2
        assertThat((curve.drawn(0.2 + h) - curve.drawn(0.2 - h)) / (2 * h)).isCloseTo(curve.radius(0.2), within(1e-8));
        assertThat((curve.radius(0.2 + h) - curve.radius(0.2 - h)) / (2 * h)).isCloseTo(curve.slope(0.2), within(1e-8));
        assertThat(curve.slope(0.5 - 1e-9)).isCloseTo(curve.slope(0.5 + 1e-9), within(1e-8));
        assertThatThrownBy(() -> curve.radius(1.6)).isInstanceOfSatisfying(Refusal.class, refusal -> {
            assertThat(refusal.fault()).isEqualTo(Fault.OUTSIDE_LIMITS);
            assertThat(refusal.value()).isCloseTo(1.6, within(1e-12));
            assertThat(refusal.limit()).isEqualTo(1.5);
            assertThat(refusal.unit()).isEqualTo("rad");
        });
        assertThatThrownBy(() -> curve.radius(-0.6))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.limit()).isEqualTo(-0.5));
    }

    @Test
    void noReadingsOrTwoAtOneAngleAreRefused() {
        assertThatThrownBy(() -> new CamRadius(List.of())).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> new CamRadius(List.of(new CamRadius.Reading(1, 0.1), new CamRadius.Reading(1, 0.2))))
                .isInstanceOf(Refusal.class);
    }
}
