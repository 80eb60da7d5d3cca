package counterpull.engine.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Constants;
import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Phase;
import counterpull.engine.planar.Vec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CableTest {
    private static final BodyPoint HAND = new BodyPoint("hand", 0, new Vec(0.33, 0));
    // tensions of a few hundred newtons, rounded a few times
    private static final double ROUNDING = 1e-9;

    @Test
    void balancesPower() {
        RandomLimb random = new RandomLimb(11);
        for (int trial = 0; trial < 60; trial++) {
            ChainPath path = random.next();
            // farther away than a limb is long
            Vec pulley = Vec.unit(random.between(-3, 3)).times(random.between(1.5, 3));
            StackLine line = new StackLine(
                    random.between(1, 4),
                    random.between(0, 0.3),
                    Loaded.with(random.between(0, 20)),
                    random.between(0, 2));
            double gravity = trial % 3 == 0 ? 0 : Constants.STANDARD_GRAVITY;
            PowerBalance.check(
                    new Cable("cable", random.point(path), pulley, line),
                    new PowerBalance.Setting(path, gravity, random.between(0, 60)));
        }
    }

    /** Worked example F, two independent derivations; half a unit of the last printed digit. */
    @ParameterizedTest
    @CsvSource({
        "HELD,     -32.9130, 45.3665, 65.9999",
        "LIFTING,  -31.2284, 52.0640, 69.1767",
        "LOWERING, -34.5975, 47.3747, 62.8231"
    })
    void elbowFlexionAgainstALowCable(Phase phase, double low, double middle, double high) {
        ChainPath path = HeldLimb.elbow(15, 125, 3);
        Cable cable = new Cable("cable", HAND, new Vec(0.8, -1.0), new StackLine(1, 0.05, Loaded.always(20), 0));
        assertThat(HeldLimb.torque(path, cable, phase, 0)).isCloseTo(low, within(5e-5));
        assertThat(HeldLimb.torque(path, cable, phase, 1)).isCloseTo(middle, within(5.3e-5));
        assertThat(HeldLimb.torque(path, cable, phase, 2)).isCloseTo(high, within(7e-5));
    }

    @Test
    void frictionFollowsTheCablesOwnMotion() {
        // from hanging straight down to 50° forward of it, the hand comes nearer to a pulley in front: the stack sinks
        // while lifting
        ChainPath path = HeldLimb.elbow(5, 50, 3);
        Cable in = new Cable("cable", HAND, new Vec(2, 1), new StackLine(1, 0.1, Loaded.always(10), 0));
        Cable out = new Cable("cable", HAND, new Vec(-2, -1), new StackLine(1, 0.1, Loaded.always(10), 0));
        // both ends are at rest: 10 kg × g × (1 ± 0.1)
        assertThat(tension(in, path, Phase.LIFTING, 0)).isCloseTo(98.0665 * 0.9, within(ROUNDING));
        assertThat(tension(in, path, Phase.LOWERING, 2)).isCloseTo(98.0665 * 1.1, within(ROUNDING));
        assertThat(tension(out, path, Phase.LIFTING, 0)).isCloseTo(98.0665 * 1.1, within(ROUNDING));
        assertThat(tension(out, path, Phase.LOWERING, 0)).isCloseTo(98.0665 * 0.9, within(ROUNDING));
        assertThat(tension(out, path, Phase.HELD, 1)).isCloseTo(98.0665, within(ROUNDING));
    }

    private static double tension(Cable cable, ChainPath path, Phase phase, int i) {
        return cable.on(path, 0).get(0).size(path.course().cell(phase, i), 0);
    }

    /** 2:1 halves the force and quarters the felt inertia. */
    @Test
    void twoToOneHalvesForceAndQuartersInertia() {
        ChainPath path = HeldLimb.elbow(15, 125, 9);
        Vec pulley = new Vec(0.8, -1.0);
        Pull one = new Cable("cable", HAND, pulley, new StackLine(1, 0, Loaded.always(20), 0))
                .on(path, 0)
                .get(0);
        Pull two = new Cable("cable", HAND, pulley, new StackLine(2, 0, Loaded.always(20), 0))
                .on(path, 0)
                .get(0);
        for (int cell = 0; cell < path.course().cells(); cell++) {
            assertThat(of(Part.GRAVITY, two, cell)).isCloseTo(of(Part.GRAVITY, one, cell) / 2, within(ROUNDING));
            assertThat(of(Part.INERTIA, two, cell)).isCloseTo(of(Part.INERTIA, one, cell) / 4, within(ROUNDING));
        }
        assertThat(of(Part.INERTIA, one, path.course().cell(Phase.LIFTING, 2))).isNotZero();
    }

    private static double of(Part part, Pull pull, int cell) {
        double sum = 0;
        for (Share share : pull.shares()) {
            sum += share.part() == part ? share.perUnit()[cell] : 0;
        }
        return sum;
    }

    @Test
    void aStackThatCannotFollowIsRefused() {
        // fifty times as much line as the stack rises would need nothing; one fiftieth lifts the stack fifty times as
        // fast
        ChainPath path = HeldLimb.elbow(15, 125, 21);
        Cable cable = new Cable("cable", HAND, new Vec(0.8, -1.0), new StackLine(0.02, 0, Loaded.always(20), 0));
        assertThatThrownBy(() -> cable.on(path, Constants.STANDARD_GRAVITY))
                .isInstanceOfSatisfying(Refusal.class, refusal -> {
                    assertThat(refusal.fault()).isEqualTo(Fault.SLACK_STACK);
                    assertThat(refusal.value()).isLessThan(-9.80665);
                    assertThat(refusal.limit()).isEqualTo(-9.80665);
                });
    }

    @Test
    void aPulleyAtTheHandIsRefused() {
        ChainPath path = HeldLimb.elbow(15, 125, 3);
        Vec hand = path.track(HAND).at(1);
        Cable cable = new Cable("cable", HAND, hand, new StackLine(1, 0, Loaded.always(20), 0));
        assertThatThrownBy(() -> cable.on(path, 0))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.fault()).isEqualTo(Fault.COINCIDENT_POINTS));
    }
}
