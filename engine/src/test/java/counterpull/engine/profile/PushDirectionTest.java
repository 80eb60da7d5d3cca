package counterpull.engine.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;
import counterpull.engine.load.Part;
import counterpull.engine.motion.FootRow;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.Stance;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Vec;
import counterpull.engine.strength.LimbStrength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Least effort against a scan of all directions; pushes aimed through a joint. */
class PushDirectionTest {
    private static final double LOW = Angles.radians(-25);
    private static final double HIGH = Angles.radians(20);

    private static LimbStrength strength(int which) {
        return switch (which) {
            case 0 -> Trials.strong(200, 180, 120);
            // a knee that dominates pulls the push to where it is asked nothing
            case 1 -> Trials.strong(900, 20, 900);
            case 2 -> Trials.named(200, 180, 120);
            case 3 -> LimbStrength.none().with(Action.KNEE_EXTENSION, Trials.flat(180));
            case 4 -> Trials.strong(30, 400, 900).without(Action.ANKLE_PLANTARFLEXION);
            // known over a part of the range only
            case 5 ->
                Trials.named(200, 180, 120)
                        .with(Action.KNEE_EXTENSION, Trials.between(180, 40, 70))
                        .with(Action.HIP_FLEXION, Trials.flat(40));
            // of each joint one sense alone is known in a part of the range
            case 7 ->
                Trials.strong(200, 180, 120)
                        .with(Action.HIP_FLEXION, Trials.between(90, 0, 105))
                        .with(Action.KNEE_FLEXION, Trials.between(80, 0, 40))
                        .with(Action.ANKLE_PLANTARFLEXION, Trials.between(120, -40, 10));
            default -> LimbStrength.none();
        };
    }

    private static double objective(PressLimb limb, Phase phase, int i, double tangent) {
        double sum = 0;
        for (Joint joint : Joint.LEG) {
            double effort = limb.effortPushing(joint, phase, i, tangent);
            sum += effort >= 0 ? effort * effort : 0;
        }
        return sum;
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7})
    void noDirectionOfAFineScanTakesLess(int which) {
        Pushing pushing = new Pushing(new Push.LeastEffort(LOW, HIGH), Pushing.USUAL_SPREAD);
        PressProfile profile = PressProfile.of(Trials.with(Trials.task(strength(which)), pushing));
        PressLimb limb = profile.limbs().get(0);
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < profile.positions(); i++) {
                double angle = limb.pushAngle(phase, i);
                // angle → tangent → angle loses a few units of the last place
                assertThat(angle).isBetween(LOW - 1e-15, HIGH + 1e-15);
                double chosen = objective(limb, phase, i, Math.tan(angle));
                for (int k = 0; k <= 2000; k++) {
                    double tangent = Math.tan(LOW) + (Math.tan(HIGH) - Math.tan(LOW)) * k / 2000;
                    // rounding of torques of some hundred N·m over strengths squared
                    assertThat(chosen).isLessThanOrEqualTo(objective(limb, phase, i, tangent) + 1e-12);
                }
            }
        }
    }

    @Test
    void aJointThatIsNotKnownHasNoSay() {
        Pushing pushing = new Pushing(new Push.LeastEffort(LOW, HIGH), Pushing.USUAL_SPREAD);
        PressProfile some = PressProfile.of(Trials.with(Trials.task(strength(5)), pushing));
        LimbStrength without = strength(5).without(Action.KNEE_EXTENSION);
        PressProfile none = PressProfile.of(Trials.with(Trials.task(without), pushing));
        // 90° is outside the knee's curve, 50° inside
        assertThat(some.limbs().get(0).pushAngle(Phase.HELD, 0))
                .isEqualTo(none.limbs().get(0).pushAngle(Phase.HELD, 0));
        assertThat(some.limbs().get(0).pushAngle(Phase.HELD, 10))
                .isNotEqualTo(none.limbs().get(0).pushAngle(Phase.HELD, 10));
    }

    @Test
    void whereAWholeIntervalTakesTheLeastTheStraightestIsTaken() {
        // only the knee's extension is known, so every direction that asks for flexion takes no effort
        Pushing pushing = new Pushing(new Push.LeastEffort(LOW, HIGH), Pushing.USUAL_SPREAD);
        PressProfile profile = PressProfile.of(Trials.with(Trials.task(strength(3)), pushing));
        PressLimb limb = profile.limbs().get(0);
        // at the top straight already asks for flexion
        assertThat(limb.pushAngle(Phase.HELD, 20)).isZero();
        // at 50° the knee's torque is 41.5239 N·m at α = 0 and grows by 2.8408 per degree: 0 near −14°, not at −25°
        double expected = Math.atan(-41.5239 / (2.8408 * 180 / Math.PI));
        // printed to half a unit of the fourth decimal: 5e-5 / 2.8408 of a degree and its share
        assertThat(limb.pushAngle(Phase.HELD, 10)).isCloseTo(expected, within(1e-5));
    }

    @Test
    void nothingKnownPushesStraight() {
        Pushing pushing = new Pushing(new Push.LeastEffort(LOW, HIGH), Pushing.USUAL_SPREAD);
        PressProfile profile = PressProfile.of(Trials.with(Trials.task(LimbStrength.none()), pushing));
        assertThat(profile.limbs().get(0).pushAngle(Phase.LIFTING, 7)).isZero();
    }

    @Test
    void aLimitThatLeavesNoStraightPushIsKept() {
        Pushing pushing = new Pushing(new Push.LeastEffort(Angles.radians(5), HIGH), Pushing.USUAL_SPREAD);
        PressProfile profile = PressProfile.of(Trials.with(Trials.task(LimbStrength.none()), pushing));
        // angle → tangent → angle loses a few units of the last place
        assertThat(profile.limbs().get(0).pushAngle(Phase.LIFTING, 7)).isCloseTo(Angles.radians(5), within(1e-15));
    }

    @Test
    void aPushThroughAJointAsksNothingOfItButTheLimbsOwn() {
        for (Push.BodyPoint point : Push.BodyPoint.values()) {
            Joint joint = point == Push.BodyPoint.HIP ? Joint.HIP : Joint.KNEE;
            Push push = new Push.Through(point);
            PressTask task = Trials.with(Trials.with(Trials.task(), new Pushing(push, 0)), kneeRange());
            PressProfile profile = PressProfile.of(task);
            for (Phase phase : Phase.values()) {
                for (int i = 0; i < profile.positions(); i++) {
                    double own = 0;
                    for (Why.Summand summand : profile.why()
                            .torque(new Why.Place(0, joint, phase, i))
                            .summands()) {
                        boolean limb = summand.part() == Part.LIMB_WEIGHT || summand.part() == Part.LIMB_INERTIA;
                        own += limb ? summand.value() : 0;
                    }
                    // rounding of 350 N × 0.9 m
                    assertThat(profile.limbs().get(0).torque(joint, phase, i)).isCloseTo(own, within(1e-11));
                }
            }
        }
    }

    // through the knee the push stands far off the rail when the leg is bent: 40° to 10° stays within 60°
    private static Person kneeRange() {
        Limb old = Trials.pair(Trials.strong(200, 180, 120)).limbs().get(0);
        Limb limb = new Limb(old.side(), old.leg(), 1, Trials.range(40, 10), old.ranges(), old.strength());
        return new Person(80, java.util.List.of(limb));
    }

    @Test
    void anAimTooFarOffTheRailIsRefusedBeforeAnyLoad() {
        PressTask task = Trials.with(Trials.task(), new Pushing(new Push.Through(Push.BodyPoint.HIP), 0));
        Stance high = new Stance(task.stance().seat(), new FootRow("far", 0.55), 0.9, new Vec(0, 0));
        PressTask far = Trials.with(task.with(high), oneLimb(75, 60));
        assertThatThrownBy(() -> Groundwork.of(far)).isInstanceOfSatisfying(Refusal.class, refusal -> {
            assertThat(refusal.fault()).isEqualTo(Fault.OUTSIDE_LIMITS);
            assertThat(refusal.limit()).isEqualTo(Angles.radians(60));
        });
    }

    private static Person oneLimb(double bottom, double top) {
        Limb old = Trials.pair(LimbStrength.none()).limbs().get(0);
        Limb limb = new Limb(old.side(), old.leg(), 1, Trials.range(bottom, top), old.ranges(), old.strength());
        return new Person(80, java.util.List.of(limb));
    }
}
