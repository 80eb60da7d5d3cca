package counterpull.engine.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Constants;
import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.body.Joint;
import counterpull.engine.load.MeasuredProfile.Reading;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Phase;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class MeasuredProfileTest {
    private static final double G = Constants.STANDARD_GRAVITY;
    private static final BodyPoint HAND = new BodyPoint("hand", 0, new Vec(0.33, 0));
    // forces of a hundred newtons, rounded a few times
    private static final double ROUNDING = 1e-9;

    @Test
    void balancesPower() {
        RandomLimb random = new RandomLimb(31);
        for (int trial = 0; trial < 60; trial++) {
            ChainPath path = random.next();
            Joint driver = path.joints().get(0);
            boolean byTravel = trial % 3 == 2;
            double from = byTravel ? 0.4 : Math.min(path.angle(driver, 0), path.angle(driver, path.positions() - 1));
            List<Reading> readings = readings(random, from, path.course().travel());
            MeasuredProfile.Acts acts = trial % 3 == 0
                    ? new MeasuredProfile.Torque(driver)
                    : new MeasuredProfile.Force(
                            random.point(path),
                            byTravel ? new MeasuredProfile.Travel(0.4) : new MeasuredProfile.Angle(driver));
            PowerBalance.check(
                    new MeasuredProfile("machine", acts, readings), new PowerBalance.Setting(path, G, 0), kinks(path));
        }
    }

    private static List<Reading> readings(RandomLimb random, double from, double travel) {
        List<Reading> readings = new ArrayList<>();
        for (int k = 0; k < 6; k++) {
            double down = random.between(50, 150);
            readings.add(new Reading(from + travel * k / 5, down + random.between(0, 40), down));
        }
        return readings;
    }

    /** Where a reading lies the curve has a bend; near a bend the stencil sees no further. */
    private static List<Integer> kinks(ChainPath path) {
        List<Integer> kinks = new ArrayList<>();
        for (int k = 0; k <= 5; k++) {
            kinks.add((path.positions() - 1) * k / 5);
        }
        return kinks;
    }

    private static MeasuredProfile machine(Reading... readings) {
        return new MeasuredProfile(
                "machine", new MeasuredProfile.Force(HAND, new MeasuredProfile.Angle(Joint.ELBOW)), List.of(readings));
    }

    private static Reading at(double degrees, double up, double down) {
        return new Reading(Angles.radians(degrees), up, down);
    }

    @Test
    void saysWhatWasRead() {
        ChainPath path = HeldLimb.elbow(30, 110, 3);
        MeasuredProfile machine = machine(at(20, 90, 80), at(30, 100, 84), at(70, 140, 120), at(110, 120, 100));
        Pull pull = machine.on(path, G).get(0);
        assertThat(pull.size(path.course().cell(Phase.LIFTING, 1), 0)).isCloseTo(140, within(ROUNDING));
        assertThat(pull.size(path.course().cell(Phase.LOWERING, 1), 0)).isCloseTo(120, within(ROUNDING));
        assertThat(pull.size(path.course().cell(Phase.HELD, 1), 0)).isCloseTo(130, within(ROUNDING));
        assertThat(pull.size(path.course().cell(Phase.LIFTING, 0), 0)).isCloseTo(100, within(ROUNDING));
        assertThat(pull.size(path.course().cell(Phase.LOWERING, 2), 0)).isCloseTo(100, within(ROUNDING));
        // against the hand's way: 70° from hanging, it moves toward 70° above forward
        assertThat(pull.direction(1).x()).isCloseTo(-Math.cos(Angles.radians(70)), within(ROUNDING));
        assertThat(pull.direction(1).y()).isCloseTo(-Math.sin(Angles.radians(70)), within(ROUNDING));
        assertThat(machine.notKnown()).contains("inertia of machine is not known");
    }

    /**
     * A sled of 100 kg at 45° with μ 0.05, closed form with g = 9.81 m/s²: 728.36 N up, 658.99 N down; its weight along the rail is 693.672 N
     * and its friction 34.684 N. A hundredth: the pair is rounded to two decimals.
     */
    @Test
    void aMeasuredPairGivesWeightAndFriction() {
        ChainPath path = HeldLimb.elbow(30, 110, 3);
        Pull pull = machine(at(30, 728.36, 658.99), at(110, 728.36, 658.99))
                .on(path, G)
                .get(0);
        int lifting = path.course().cell(Phase.LIFTING, 1);
        assertThat(pull.size(path.course().cell(Phase.HELD, 1), 0)).isCloseTo(693.672, within(0.01));
        assertThat(pull.shares().get(1).part()).isEqualTo(Part.FRICTION);
        assertThat(pull.shares().get(1).perUnit()[lifting]).isCloseTo(34.684, within(0.01));
    }

    /** A constant force at 0.33 m is a constant torque of the elbow beyond the limb's own; so is the same torque measured. */
    @Test
    void aForceAtADistanceIsATorque() {
        ChainPath path = HeldLimb.elbow(30, 110, 5);
        MeasuredProfile none = machine(at(30, 0, 0), at(110, 0, 0));
        MeasuredProfile force = machine(at(30, 100, 100), at(110, 100, 100));
        MeasuredProfile torque = new MeasuredProfile(
                "machine", new MeasuredProfile.Torque(Joint.ELBOW), List.of(at(30, 33, 33), at(110, 33, 33)));
        Pull couple = torque.on(path, G).get(0);
        assertThat(couple.isCouple()).isTrue();
        for (int i = 0; i < 5; i++) {
            double more =
                    HeldLimb.torque(path, force, Phase.LIFTING, i) - HeldLimb.torque(path, none, Phase.LIFTING, i);
            assertThat(more).isCloseTo(33, within(ROUNDING));
            // clockwise on a forearm that flexes counter-clockwise
            assertThat(couple.size(path.course().cell(Phase.LIFTING, i), 0)).isCloseTo(-33, within(ROUNDING));
        }
    }

    /** Between readings that rise, or fall, nothing overshoots and friction never turns negative. */
    @Test
    void betweenReadingsNothingOvershoots() {
        ChainPath path = HeldLimb.elbow(20, 110, 181);
        MeasuredProfile machine =
                machine(at(20, 60, 60), at(50, 62, 60), at(60, 160, 100), at(100, 161, 161), at(110, 90, 20));
        Pull pull = machine.on(path, G).get(0);
        for (int i = 0; i < path.positions(); i++) {
            double held = pull.size(path.course().cell(Phase.HELD, i), 0);
            assertThat(held).isBetween(55.0 - ROUNDING, 161 + ROUNDING);
            assertThat(pull.size(path.course().cell(Phase.LIFTING, i), 0)).isGreaterThanOrEqualTo(held - ROUNDING);
        }
    }

    @Test
    void isNeverExtended() {
        ChainPath path = HeldLimb.elbow(30, 110, 9);
        MeasuredProfile machine = machine(at(40, 100, 80), at(110, 100, 80));
        assertThatThrownBy(() -> machine.on(path, G)).isInstanceOfSatisfying(Refusal.class, refusal -> {
            assertThat(refusal.fault()).isEqualTo(Fault.OUTSIDE_LIMITS);
            assertThat(refusal.quantity()).isEqualTo("position on machine");
            assertThat(refusal.value()).isCloseTo(Angles.radians(30), within(ROUNDING));
            assertThat(refusal.limit()).isCloseTo(Angles.radians(40), within(ROUNDING));
        });
    }

    @Test
    void badReadingsAreRefused() {
        assertThatThrownBy(() -> at(20, 70, 80))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("not below the one down");
        assertThatThrownBy(() -> machine(at(20, 70, 60)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("readings of machine");
        assertThatThrownBy(() -> machine(at(20, 70, 60), at(20, 70, 60)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("position of reading 2");
    }
}
