package counterpull.engine.validation;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.Constants;
import counterpull.engine.body.Joint;
import counterpull.engine.body.Leg;
import counterpull.engine.body.Side;
import counterpull.engine.jointload.BrechterPowers2002;
import counterpull.engine.jointload.Kneecap;
import counterpull.engine.load.Friction;
import counterpull.engine.motion.JointRanges;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.WorkingRange;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Chain;
import counterpull.engine.planar.ChainMotion;
import counterpull.engine.planar.NewtonEuler;
import counterpull.engine.planar.PointLoads;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.Limb;
import counterpull.engine.profile.Loading;
import counterpull.engine.profile.Person;
import counterpull.engine.profile.PressLimb;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.PressTask;
import counterpull.engine.profile.Push;
import counterpull.engine.profile.Pushing;
import counterpull.engine.regression.Examples;
import counterpull.engine.strength.LimbStrength;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Kneecap stress of a press against a knee extension with a weight at the ankle: which is larger where, not how large. The
 * loads are matched by the largest knee torque, which is our assumption; the push goes through the hip. The press ends at 2°,
 * which stands for 0°.
 *
 * <p>Source: Steinkamp et al. 1993, Am J Sports Med 21:438 (20 people; 0, 30, 60, 90°; curves cross at 48°); the same order
 * of squat and extension in Powers et al. 2014, JOSPT 44:320; both looked up.
 */
class PressAgainstExtensionValidationTest {
    private static final int POSITIONS = 89;
    private static final Kneecap KNEECAP = new BrechterPowers2002();
    private static final PressLimb PRESS = press();
    private static final double WEIGHT = matchedWeight();

    private static PressLimb press() {
        WorkingRange range = new WorkingRange(Angles.radians(90), Angles.radians(2), Angles.radians(90));
        Limb limb = new Limb(Side.LEFT, Examples.leg(), 1, range, JointRanges.open(), LimbStrength.none());
        PressTask task = new PressTask(
                new Person(80, List.of(limb)),
                Examples.sled(Friction.none()),
                Examples.stance(),
                new Pushing(new Push.Through(Push.BodyPoint.HIP), Pushing.USUAL_SPREAD),
                Examples.tempo(),
                Loading.plates(60),
                POSITIONS);
        return PressProfile.of(task).limbs().get(0);
    }

    /** Knee torque of a level thigh and a hanging shank with foot and a weight (N) at the ankle, N·m. */
    private static double extension(double kneeFlexion, double weight) {
        Leg leg = Examples.leg();
        Chain chain = Chain.build()
                .segment(
                        leg.shank().length(),
                        leg.shank().mass(),
                        new Vec(leg.shank().comAlong(), 0),
                        0)
                .segment(leg.foot().length(), leg.foot().mass(), new Vec(0, 0), 0)
                .done();
        ChainMotion motion = new ChainMotion(2);
        motion.direction(0, -kneeFlexion);
        motion.direction(1, Math.PI / 2 - kneeFlexion);
        PointLoads loads = new PointLoads(2);
        loads.add(1, 0, 0, 0, -weight);
        double[] torque = new double[2];
        new NewtonEuler(chain).gravity(0, -Constants.STANDARD_GRAVITY).torques(motion, loads, torque);
        return torque[0];
    }

    private static double matchedWeight() {
        double peak = 0;
        for (int i = 0; i < POSITIONS; i++) {
            peak = Math.max(peak, PRESS.torque(Joint.KNEE, Phase.HELD, i));
        }
        return (peak - extension(0, 0)) / Examples.leg().shank().length();
    }

    /** Stress of the extension less that of the press, Pa, at a position of the press. */
    private static double difference(int position) {
        double knee = PRESS.angle(Joint.KNEE, position);
        return KNEECAP.stress(knee, extension(knee, WEIGHT)) - PRESS.kneecapStress(Phase.HELD, position);
    }

    // one position a degree, from 90° to 2°
    private static int at(int degrees) {
        return 90 - degrees;
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 30})
    void extensionAsksMoreNearStraight(int degrees) {
        assertThat(difference(at(degrees))).isPositive();
    }

    @ParameterizedTest
    @ValueSource(ints = {60, 90})
    void thePressAsksMoreWhenBent(int degrees) {
        assertThat(difference(at(degrees))).isNegative();
    }

    @Test
    void theCurvesCrossOnce() {
        int crossing = 0;
        double where = Double.NaN;
        for (int i = 1; i < POSITIONS; i++) {
            if (difference(i - 1) < 0 && difference(i) >= 0) {
                crossing++;
                where = Angles.degrees(PRESS.angle(Joint.KNEE, i));
            }
        }
        assertThat(crossing).isEqualTo(1);
        Published.of("knee flexion at which extension and press stress the kneecap alike", "°")
                .source("Steinkamp et al. 1993, Am J Sports Med 21:438; looked up")
                .value(48)
                .ours(where)
                .within(8, "one group of people, loads matched in another way; the order is what is checked");
    }
}
