package counterpull.engine.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;
import counterpull.engine.body.Joint;
import counterpull.engine.body.Leg;
import counterpull.engine.body.Side;
import counterpull.engine.load.Part;
import counterpull.engine.motion.JointRanges;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.Stops;
import counterpull.engine.planar.Angles;
import counterpull.engine.regression.Examples;
import counterpull.engine.strength.LimbStrength;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Two limbs that differ, one limb alone, ties, and joint ranges. */
class LimbsTest {
    // sums of some hundred newtons, or angles near one radian, rounded a few times
    private static final double ROUNDING = 1e-9;
    private static final List<Joint> ALL = Joint.LEG;

    private static Limb limb(Side side, Leg leg, double share, double bottom, double top, LimbStrength strength) {
        return new Limb(side, leg, share, Trials.range(bottom, top), JointRanges.open(), strength);
    }

    private static PressTask task(Limb... limbs) {
        return Trials.with(Trials.task(), new Person(80, List.of(limbs)));
    }

    private static LimbStrength strong() {
        return Trials.strong(200, 180, 120);
    }

    @Test
    void theSharedStrokeLeavesNoLimbsOwnRange() {
        // the longer leg must bend more for the same plate, so it ends the stroke at the bottom; the shorter at the top
        Limb left = limb(Side.LEFT, Trials.leg(1.70), 0.5, 90, 10, strong());
        Limb right = limb(Side.RIGHT, Trials.leg(1.80), 0.5, 90, 10, strong());
        PressProfile profile = PressProfile.of(task(left, right));
        int top = profile.positions() - 1;
        PressLimb shorter = profile.limbs().get(0);
        PressLimb longer = profile.limbs().get(1);
        assertThat(longer.angle(Joint.KNEE, 0)).isCloseTo(Angles.radians(90), within(ROUNDING));
        assertThat(shorter.angle(Joint.KNEE, 0)).isLessThan(Angles.radians(90));
        assertThat(shorter.angle(Joint.KNEE, top)).isCloseTo(Angles.radians(10), within(ROUNDING));
        assertThat(longer.angle(Joint.KNEE, top)).isGreaterThan(Angles.radians(10));
        assertThat(profile.ground().motion().stroke().reference()).isEqualTo(1);
        // equal steps of the driving limb's knee
        double step = (longer.angle(Joint.KNEE, top) - longer.angle(Joint.KNEE, 0)) / top;
        assertThat(profile.driving(7) - profile.driving(6)).isCloseTo(step, within(ROUNDING));
    }

    @Test
    void eachLimbTakesItsShareOfTheLoadAndAllOfItsOwnWeight() {
        PressProfile equal = PressProfile.of(task(
                limb(Side.LEFT, Examples.leg(), 0.5, 90, 10, strong()),
                limb(Side.RIGHT, Examples.leg(), 0.5, 90, 10, strong())));
        PressProfile uneven = PressProfile.of(task(
                limb(Side.LEFT, Examples.leg(), 0.3, 90, 10, strong()),
                limb(Side.RIGHT, Examples.leg(), 0.7, 90, 10, strong())));
        PressProfile alone = PressProfile.of(task(limb(Side.RIGHT, Examples.leg(), 1, 90, 10, strong())));
        for (Joint joint : ALL) {
            double own = equal.why().torque(new Why.Place(0, joint, Phase.LIFTING, 6)).summands().stream()
                    .filter(s -> s.part() == Part.LIMB_WEIGHT || s.part() == Part.LIMB_INERTIA)
                    .mapToDouble(Why.Summand::value)
                    .sum();
            double half = equal.limbs().get(0).torque(joint, Phase.LIFTING, 6) - own;
            assertThat(uneven.limbs().get(0).torque(joint, Phase.LIFTING, 6) - own)
                    .isCloseTo(0.6 * half, within(ROUNDING));
            assertThat(uneven.limbs().get(1).torque(joint, Phase.LIFTING, 6) - own)
                    .isCloseTo(1.4 * half, within(ROUNDING));
            assertThat(alone.limbs().get(0).torque(joint, Phase.LIFTING, 6) - own)
                    .isCloseTo(2 * half, within(ROUNDING));
        }
        assertThat(alone.limbs()).hasSize(1);
        assertThat(alone.limbs().get(0).force(Phase.HELD, 0)).isCloseTo(alone.force(Phase.HELD, 0), within(ROUNDING));
    }

    @Test
    void theWorseLimbCounts() {
        PressProfile profile = PressProfile.of(task(
                limb(Side.LEFT, Examples.leg(), 0.5, 90, 10, strong()),
                limb(Side.RIGHT, Examples.leg(), 0.5, 90, 10, Trials.strong(200, 90, 120))));
        Limiting knee = profile.limiting(List.of(Joint.KNEE), Phase.HELD, 0).orElseThrow();
        assertThat(knee.side()).isEqualTo(Side.RIGHT);
        // worked example B: 84.6071 N·m, half a unit of its last place
        assertThat(knee.effort()).isCloseTo(84.6071 / 90, within(5.1e-5 / 90));
        assertThat(profile.effort(Joint.KNEE, Phase.HELD, 0)).isEqualTo(knee.effort());
    }

    @Test
    void tiesGoToTheProximalJointAndThenToTheLeft() {
        PressTask equal = Trials.task();
        PressProfile probe = PressProfile.of(equal);
        double hip = probe.limbs().get(0).torque(Joint.HIP, Phase.HELD, 0);
        double knee = probe.limbs().get(0).torque(Joint.KNEE, Phase.HELD, 0);
        // a knee stronger by less than the tie of 1e-9 of effort, then weaker by more
        PressProfile tie = PressProfile.of(Trials.task(Trials.strong(hip * 2, knee * 2 * (1 - 1e-10), 9999)));
        Limiting found = tie.limiting(ALL, Phase.HELD, 0).orElseThrow();
        assertThat(found.joint()).isEqualTo(Joint.HIP);
        assertThat(found.side()).isEqualTo(Side.LEFT);
        PressProfile apart = PressProfile.of(Trials.task(Trials.strong(hip * 2, knee * 2 * (1 - 1e-8), 9999)));
        assertThat(apart.limiting(ALL, Phase.HELD, 0).orElseThrow().joint()).isEqualTo(Joint.KNEE);
    }

    @Test
    void anUnknownLimbLeavesTheOtherOnesEffort() {
        PressProfile profile = PressProfile.of(task(
                limb(Side.LEFT, Examples.leg(), 0.5, 90, 10, LimbStrength.none()),
                limb(Side.RIGHT, Examples.leg(), 0.5, 90, 10, strong())));
        assertThat(profile.effort(Joint.KNEE, Phase.HELD, 0))
                .isEqualTo(profile.limbs().get(1).effort(Joint.KNEE, Phase.HELD, 0));
        assertThat(profile.limiting(ALL, Phase.HELD, 0).orElseThrow().side()).isEqualTo(Side.RIGHT);
    }

    @Test
    void limbsOutOfOrderTwiceOrWithoutTheWholeLoadAreRefused() {
        Limb left = limb(Side.LEFT, Examples.leg(), 0.5, 90, 10, strong());
        Limb right = limb(Side.RIGHT, Examples.leg(), 0.5, 90, 10, strong());
        assertThatThrownBy(() -> new Person(80, List.of(right, left))).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> new Person(80, List.of(left, left))).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> new Person(80, List.of(left))).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> new Person(80, List.of())).isInstanceOf(Refusal.class);
        // both legs weigh 2 × 16.1 % of 80 kg
        assertThatThrownBy(() -> new Person(25, List.of(left, right)))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.fault()).isEqualTo(Fault.MUST_BE_POSITIVE));
    }

    private static PressTask limited(Joint joint, double low, double high, double bottom) {
        JointRanges ranges =
                JointRanges.open().with(joint, new Require.Limits(Angles.radians(low), Angles.radians(high)));
        Limb limb = new Limb(Side.LEFT, Examples.leg(), 1, Trials.range(bottom, 10), ranges, LimbStrength.none());
        return Trials.with(Trials.task(), new Person(80, List.of(limb)));
    }

    @Test
    void aJointPastItsOwnRangeAtAnEndIsRefused() {
        // worked example B: hip 139.8371° at the bottom, ankle 1.6411° at the top
        assertThat(PressProfile.of(limited(Joint.HIP, 0, 139.8372, 90)).positions())
                .isEqualTo(21);
        assertRefused(limited(Joint.HIP, 0, 139.8370, 90), "hip angle at the bottom (left)", 139.8371);
        assertThat(PressProfile.of(limited(Joint.ANKLE, 1.6410, 60, 90)).positions())
                .isEqualTo(21);
        assertRefused(limited(Joint.ANKLE, 1.6412, 60, 90), "ankle angle at the top (left)", 1.6411);
    }

    private static void assertRefused(PressTask task, String what, double degrees) {
        assertThatThrownBy(() -> PressProfile.of(task)).isInstanceOfSatisfying(Refusal.class, refusal -> {
            assertThat(refusal.fault()).isEqualTo(Fault.PAST_JOINT_RANGE);
            assertThat(refusal.quantity()).isEqualTo(what);
            // printed to four decimals of a degree
            assertThat(Angles.degrees(refusal.value())).isCloseTo(degrees, within(5.1e-5));
        });
    }

    @Test
    void aJointPastItsOwnRangeBetweenTheEndsIsRefusedEvenIfNoPositionIsThere() {
        // from 160° the thigh passes square to the rail: dorsiflexion rises, then falls
        PressTask open = Trials.with(limited(Joint.KNEE, -10, 170, 160), 4001);
        PressProfile fine = PressProfile.of(open);
        PressLimb limb = fine.limbs().get(0);
        double most = 0;
        for (int i = 0; i < fine.positions(); i++) {
            most = Math.max(most, limb.angle(Joint.ANKLE, i));
        }
        double ends = Math.max(limb.angle(Joint.ANKLE, 0), limb.angle(Joint.ANKLE, fine.positions() - 1));
        // the trial must have its largest angle well inside, or it shows nothing
        assertThat(most).isGreaterThan(ends + Angles.radians(0.5));
        double limit = Angles.degrees(most) - 0.01;
        PressTask coarse = Trials.with(limited(Joint.ANKLE, -10, limit, 160), 3);
        double found = most;
        assertThatThrownBy(() -> PressProfile.of(coarse)).isInstanceOfSatisfying(Refusal.class, refusal -> {
            assertThat(refusal.fault()).isEqualTo(Fault.PAST_JOINT_RANGE);
            assertThat(refusal.quantity()).startsWith("ankle angle with the knee bent to");
            // 4001 positions miss the turn by at most half a step of 0.04°, quadratic near it
            assertThat(refusal.value()).isCloseTo(found, within(1e-6));
        });
        assertThat(PressProfile.of(Trials.with(limited(Joint.ANKLE, -10, limit + 0.02, 160), 3))
                        .positions())
                .isEqualTo(3);
    }

    @Test
    void aRangeThatAStopLeavesNothingOfIsRefused() {
        PressTask task = Trials.with(Trials.task(), new Stops(0.95));
        assertThatThrownBy(() -> PressProfile.of(task))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.fault()).isEqualTo(Fault.EMPTY_RANGE));
    }
}
