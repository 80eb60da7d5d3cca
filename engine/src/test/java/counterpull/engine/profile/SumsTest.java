package counterpull.engine.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.body.Joint;
import counterpull.engine.load.Part;
import counterpull.engine.motion.Phase;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Parts add up to forces and summands to torques, for random people, machines, lines and pushes. */
class SumsTest {
    private static final int TRIALS = 40;
    // ten summands of up to some thousand N, or some hundred N·m
    private static final double ROUNDING = 1e-9;

    @Test
    void theTrialsCoverBothRidesAndOneAndTwoLimbs() {
        Random random = new Random(1);
        int seats = 0;
        int single = 0;
        for (int t = 0; t < TRIALS; t++) {
            PressTask task = Trials.random(random);
            seats += task.sled().rail().ride() == counterpull.engine.motion.Ride.SEAT ? 1 : 0;
            single += task.person().limbs().size() == 1 ? 1 : 0;
        }
        assertThat(seats).isBetween(5, TRIALS - 5);
        assertThat(single).isBetween(5, TRIALS - 5);
    }

    @Test
    void theForcesPartsAndSummandsAddUpToIt() {
        Random random = new Random(1);
        for (int t = 0; t < TRIALS; t++) {
            PressProfile profile = PressProfile.of(Trials.random(random));
            for (Phase phase : Phase.values()) {
                for (int i = 0; i < profile.positions(); i++) {
                    double parts = 0;
                    for (Part part : Part.values()) {
                        parts += profile.force(part, phase, i);
                    }
                    assertThat(parts).isCloseTo(profile.force(phase, i), within(ROUNDING));
                    assertAddsUp(profile.why().push(phase, i), profile.force(phase, i));
                    double limbs = 0;
                    for (PressLimb limb : profile.limbs()) {
                        limbs += limb.force(phase, i);
                    }
                    assertThat(limbs).isCloseTo(profile.force(phase, i), within(ROUNDING));
                }
            }
        }
    }

    @Test
    void theSummandsOfEveryTorqueAddUpToIt() {
        Random random = new Random(1);
        for (int t = 0; t < TRIALS; t++) {
            PressProfile profile = PressProfile.of(Trials.random(random));
            for (int k = 0; k < profile.limbs().size(); k++) {
                for (Joint joint : Joint.LEG) {
                    for (Phase phase : Phase.values()) {
                        for (int i = 0; i < profile.positions(); i++) {
                            double torque = profile.limbs().get(k).torque(joint, phase, i);
                            assertAddsUp(profile.why().torque(new Why.Place(k, joint, phase, i)), torque);
                        }
                    }
                }
            }
        }
    }

    private static void assertAddsUp(Why why, double value) {
        double sum = 0;
        for (Why.Summand summand : why.summands()) {
            assertThat(summand.amount() * summand.perUnit()).isEqualTo(summand.value());
            sum += summand.value();
        }
        assertThat(why.value()).isEqualTo(value);
        assertThat(sum).isCloseTo(value, within(ROUNDING));
    }

    @Test
    void heldCarriesNoFrictionAndNoInertiaAndTheMovingPhasesOppositeFriction() {
        Random random = new Random(1);
        for (int t = 0; t < TRIALS; t++) {
            PressProfile profile = PressProfile.of(Trials.random(random));
            for (int i = 0; i < profile.positions(); i++) {
                assertThat(profile.force(Part.FRICTION, Phase.HELD, i)).isZero();
                assertThat(profile.force(Part.INERTIA, Phase.HELD, i)).isZero();
                assertThat(profile.force(Part.FRICTION, Phase.LIFTING, i)).isPositive();
                assertThat(profile.force(Part.FRICTION, Phase.LOWERING, i))
                        .isEqualTo(-profile.force(Part.FRICTION, Phase.LIFTING, i));
            }
        }
    }

    @Test
    void theDerivativeByThePushAngleIsThatOfTheTorque() {
        Random random = new Random(1);
        for (int t = 0; t < TRIALS; t++) {
            PressProfile profile = PressProfile.of(Trials.random(random));
            Trials.everywhere(profile, (limb, joint, phase, i) -> {
                double angle = limb.pushAngle(phase, i);
                double step = 1e-5;
                double up = limb.torquePushing(joint, phase, i, Math.tan(angle + step));
                double down = limb.torquePushing(joint, phase, i, Math.tan(angle - step));
                double slope = limb.torquePerPushAngle(joint, phase, i);
                // central difference of tan: relative error ~ step², and rounding of 1e3 N·m / 1e-5
                assertThat((up - down) / (2 * step)).isCloseTo(slope, within(1e-6 + 1e-8 * Math.abs(slope)));
            });
        }
    }

    @Test
    void theMomentArmTimesTheWholeForceIsTheContactsTorque() {
        Random random = new Random(1);
        for (int t = 0; t < TRIALS; t++) {
            PressProfile profile = PressProfile.of(Trials.random(random));
            for (int k = 0; k < profile.limbs().size(); k++) {
                PressLimb limb = profile.limbs().get(k);
                for (Joint joint : Joint.LEG) {
                    double contact = 0;
                    for (Why.Summand s : profile.why()
                            .torque(new Why.Place(k, joint, Phase.LIFTING, 3))
                            .summands()) {
                        boolean own = s.part() == Part.LIMB_WEIGHT || s.part() == Part.LIMB_INERTIA;
                        contact += own ? 0 : s.value();
                    }
                    double whole = limb.force(Phase.LIFTING, 3) / Math.cos(limb.pushAngle(Phase.LIFTING, 3));
                    assertThat(whole * limb.momentArm(joint, Phase.LIFTING, 3))
                            .isCloseTo(Math.abs(contact), within(ROUNDING));
                }
            }
        }
    }

    @Test
    void aProfileOnLaidGroundIsTheProfileOfTheTask() {
        Random random = new Random(2);
        for (int t = 0; t < TRIALS; t++) {
            PressTask task = Trials.random(random);
            PressProfile direct = PressProfile.of(task);
            PressProfile laid = PressProfile.of(Groundwork.of(task.with(Loading.plates(0))), task.loading());
            assertThat(laid.task()).isEqualTo(direct.task());
            Trials.everywhere(direct, (limb, joint, phase, i) -> {
                int k = direct.limbs().indexOf(limb);
                assertThat(laid.limbs().get(k).torque(joint, phase, i)).isEqualTo(limb.torque(joint, phase, i));
            });
        }
    }
}
