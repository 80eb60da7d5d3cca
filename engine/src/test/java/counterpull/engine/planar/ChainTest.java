package counterpull.engine.planar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a chain refuses, and what its pass must do whatever the chain. */
class ChainTest {
    private static final double G = 9.81;

    @ParameterizedTest
    @CsvSource({
        "0, 1, 0, 0, MUST_BE_POSITIVE",
        "-0.4, 1, 0, 0, MUST_BE_POSITIVE",
        "0.4, 0, 0, 0, MUST_BE_POSITIVE",
        "0.4, 1, NaN, 0, NOT_FINITE",
        "0.4, NaN, 0, 0, NOT_FINITE",
        "0.4, 1, 0, -1e-6, OUTSIDE_LIMITS"
    })
    void refusesASegmentThatCannotBe(double length, double mass, double com, double inertia, Fault fault) {
        assertThatThrownBy(() -> Chain.build().segment(length, mass, new Vec(com, 0), inertia))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.fault()).isEqualTo(fault));
    }

    @Test
    void refusesNoneAndTooMany() {
        assertThatThrownBy(() -> Chain.build().done()).isInstanceOf(Refusal.class);
        Chain.Builder long16 = Chain.build();
        for (int i = 0; i < 16; i++) {
            long16.segment(0.1, 1, new Vec(0, 0), 0);
        }
        assertThat(long16.done().size()).isEqualTo(16);
        assertThatThrownBy(() -> long16.segment(0.1, 1, new Vec(0, 0), 0)).isInstanceOf(Refusal.class);
    }

    /** Falling freely with its base, a chain that does not turn needs nothing at any joint. */
    @Test
    void aFallingChainNeedsNoTorque() {
        Random random = new Random(3);
        Chain chain = chain(random);
        ChainMotion motion = pointed(random);
        motion.base(0, -G);
        double[] torque = new double[3];
        NewtonEuler pass = new NewtonEuler(chain).gravity(0, -G);
        pass.torques(motion, new PointLoads(3), torque);
        // weight × length is some 100 N·m: 1e-12 is rounding
        assertThat(torque).containsExactly(new double[3], within(1e-12));
        assertThat(pass.baseForceX()).isCloseTo(0, within(1e-12));
        assertThat(pass.baseForceY()).isCloseTo(0, within(1e-12));
    }

    /** Torques are linear in every load: two loads together ask what they ask one by one. */
    @Test
    void loadsAddUp() {
        Random random = new Random(4);
        NewtonEuler pass = new NewtonEuler(chain(random));
        ChainMotion motion = pointed(random);
        double[] first = torques(pass, motion, new double[] {0.1, 0.2, 300, -50});
        double[] second = torques(pass, motion, new double[] {-0.2, 0.05, -80, 120});
        PointLoads both = new PointLoads(3);
        both.add(2, 0.1, 0.2, 300, -50);
        both.add(2, -0.2, 0.05, -80, 120);
        double[] together = new double[3];
        pass.torques(motion, both, together);
        for (int i = 0; i < 3; i++) {
            assertThat(together[i]).isCloseTo(first[i] + second[i], within(1e-12 * 300));
        }
        both.clear();
        pass.torques(motion, both, together);
        assertThat(together).containsExactly(new double[3], within(1e-15));
    }

    private static double[] torques(NewtonEuler pass, ChainMotion motion, double[] load) {
        PointLoads loads = new PointLoads(3);
        loads.add(2, load[0], load[1], load[2], load[3]);
        double[] torque = new double[3];
        pass.torques(motion, loads, torque);
        return torque;
    }

    private static Chain chain(Random random) {
        Chain.Builder builder = Chain.build();
        for (int i = 0; i < 3; i++) {
            builder.segment(0.2 + random.nextDouble(), 1 + 9 * random.nextDouble(), new Vec(0.2, 0.03), 0.1);
        }
        return builder.done();
    }

    private static ChainMotion pointed(Random random) {
        ChainMotion motion = new ChainMotion(3);
        for (int i = 0; i < 3; i++) {
            motion.direction(i, 6 * random.nextDouble());
        }
        return motion;
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "180, 180", "-180, 180", "181, -179", "-181, 179", "540, 180", "359, -1", "-720, 0"})
    void anglesWrapAboveMinusHalfATurn(double degrees, double wrapped) {
        assertThat(Angles.degrees(Angles.wrap(Angles.radians(degrees)))).isCloseTo(wrapped, within(1e-12));
    }
}
