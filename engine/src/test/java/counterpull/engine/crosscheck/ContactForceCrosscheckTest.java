package counterpull.engine.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.body.Foot;
import counterpull.engine.body.Joint;
import counterpull.engine.load.Friction;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.Stance;
import counterpull.engine.planar.Angles;
import counterpull.engine.profile.Loading;
import counterpull.engine.profile.PressLimb;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.PressTask;
import counterpull.engine.profile.Push;
import counterpull.engine.profile.Pushing;
import counterpull.engine.regression.Examples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What the force of foot on plate does and does not determine, by virtual work with the limb's own weight taken out: two loads
 * differ by a pure contact force.
 */
class ContactForceCrosscheckTest {
    private static final int POSITIONS = 9;
    private static final double STEP = 1e-4;

    private static PressProfile pushing(double plates, Push push) {
        PressTask task = Examples.rail(Friction.none(), Loading.plates(plates), POSITIONS);
        return PressProfile.of(new PressTask(
                task.person(),
                task.sled(),
                task.stance(),
                new Pushing(push, Pushing.USUAL_SPREAD),
                task.tempo(),
                task.loading(),
                POSITIONS));
    }

    /** F dx = Σ τ dφ, whatever the direction of push. */
    @ParameterizedTest
    @ValueSource(doubles = {-25, -10, 0, 10, 25})
    void theJointsWorkIsThePlates(double degrees) {
        Push push = new Push.Angled(Math.toRadians(degrees));
        PressProfile heavy = pushing(100, push);
        PressProfile light = pushing(60, push);
        PlainSled plain = new PlainSled(heavy.task());
        for (int i = 0; i < POSITIONS; i++) {
            double force = heavy.force(Phase.HELD, i) - light.force(Phase.HELD, i);
            double work = 0;
            for (int k = 0; k < 2; k++) {
                work += workPerMetre(plain, heavy, light, k, i);
            }
            // steps of 0.1 mm stay far from straight; rounding of the angles leaves 1e-12 per metre
            assertThat(work).isCloseTo(force, within(1e-9 * force));
        }
    }

    private static double workPerMetre(PlainSled plain, PressProfile heavy, PressProfile light, int limb, int i) {
        double work = 0;
        for (Joint joint : Joint.LEG) {
            double torque = heavy.limbs().get(limb).torque(joint, Phase.HELD, i)
                    - light.limbs().get(limb).torque(joint, Phase.HELD, i);
            work -= torque
                    * Stencil.first(p -> plain.angles(plain.legs.get(limb), p)[joint.ordinal()], heavy.plate(i), STEP);
        }
        return work;
    }

    /** The rails carry what is square to them: the sled does not notice the direction, hip and knee do. */
    @Test
    void theSledDoesNotTellWhichWayAPersonPushes() {
        PressProfile straight = pushing(60, new Push.Angled(0));
        PressProfile turned = pushing(60, new Push.Angled(Math.toRadians(15)));
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < POSITIONS; i++) {
                assertThat(turned.force(phase, i)).isEqualTo(straight.force(phase, i));
                assertThat(turned.limbs().get(0).torque(Joint.HIP, phase, i))
                        .isLessThan(straight.limbs().get(0).torque(Joint.HIP, phase, i) - 30);
                assertThat(turned.limbs().get(0).torque(Joint.KNEE, phase, i))
                        .isGreaterThan(straight.limbs().get(0).torque(Joint.KNEE, phase, i) + 20);
            }
        }
    }

    /** A line of force moved sideways by e turns every joint by F·e more: closed form. */
    @Test
    void movingThePressurePointAddsForceTimesItsWay() {
        PressProfile middle = pushing(60, new Push.Angled(0));
        Stance stance = middle.task().stance();
        PressProfile toes =
                PressProfile.of(middle.task().with(new Stance(stance.seat(), stance.row(), 0.7, stance.hipShift())));
        Foot foot = middle.limbs().get(0).limb().leg().foot();
        for (int i = 0; i < POSITIONS; i++) {
            double turning = 0.2 * foot.length() * middle.limbs().get(0).force(Phase.HELD, i);
            for (Joint joint : Joint.LEG) {
                double more = toes.limbs().get(0).torque(joint, Phase.HELD, i)
                        - middle.limbs().get(0).torque(joint, Phase.HELD, i);
                // the plate pushes the foot back down the rail, clockwise about all joints once moved to the toes
                assertThat(more).isCloseTo(-joint.senseOfAction() * turning, within(1e-9));
            }
        }
    }

    /** A force whose line goes through the hip does not turn it, whatever the load. */
    @Test
    void throughTheHipTheLoadAsksNothingOfTheHip() {
        PressProfile heavy = pushing(100, new Push.Through(Push.BodyPoint.HIP));
        PressProfile light = pushing(60, new Push.Through(Push.BodyPoint.HIP));
        for (int i = 0; i < POSITIONS; i++) {
            PressLimb limb = heavy.limbs().get(0);
            double hip =
                    limb.torque(Joint.HIP, Phase.HELD, i) - light.limbs().get(0).torque(Joint.HIP, Phase.HELD, i);
            assertThat(hip)
                    .as("hip at %s°", Angles.degrees(limb.angle(Joint.KNEE, i)))
                    .isCloseTo(0, within(1e-9));
        }
    }
}
