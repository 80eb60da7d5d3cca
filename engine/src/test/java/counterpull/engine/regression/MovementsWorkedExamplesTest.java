package counterpull.engine.regression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.AnkleGive;
import counterpull.engine.motion.BalancedStand;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.GroundContact;
import counterpull.engine.motion.Hinge;
import counterpull.engine.motion.LimbTorques;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.Reach;
import counterpull.engine.motion.StandDrive;
import counterpull.engine.motion.StraightPath;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Vec;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The design's worked examples D, F, G and H: two independent derivations of our own, not published values. Tolerance: half a unit of
 * the last printed digit, or 1e-6 of the value where that is more.
 */
class MovementsWorkedExamplesTest {
    private static final double TRUNK = LimbTorques.body().trunk().orElseThrow().length();
    private static final BodyPoint BAR = new BodyPoint("bar", 2, new Vec(TRUNK, 0.04));

    private static double printed(double value, double digit) {
        return Math.max(digit / 2 * 1.02, 1e-6 * Math.abs(value));
    }

    private static LimbTorques kneeExtension() {
        Hinge hinge = new Hinge(Joint.KNEE, 0, Map.of(), Hinge.Lie.UPRIGHT);
        BodyPoint cuff = new BodyPoint("cuff", 0, new Vec(0.35, 0));
        return LimbTorques.of(hinge, LimbTorques.degrees(90, 0), 5, LimbTorques.Load.of(1, cuff, 8));
    }

    @ParameterizedTest
    @CsvSource({
        "0, HELD, 0.7565",
        "1, HELD, 15.8319",
        "2, HELD, 28.4970",
        "3, HELD, 36.8237",
        "4, HELD, 39.5443",
        "1, LIFTING, 18.0375",
        "1, LOWERING, 18.0375",
        "3, LIFTING, 34.6181",
        "3, LOWERING, 34.6181"
    })
    void dKneeExtensionWithACuff(int position, Phase phase, double torque) {
        assertThat(kneeExtension().at(Joint.KNEE, phase, position)).isCloseTo(torque, within(printed(torque, 1e-4)));
    }

    @ParameterizedTest
    @CsvSource({"0, 9.1543", "1, 33.2364", "2, 28.9730"})
    void fElbowFlexion(int position, double torque) {
        Hinge hinge = new Hinge(Joint.ELBOW, -Math.PI / 2, Map.of(), Hinge.Lie.UPRIGHT);
        BodyPoint hand = new BodyPoint("hand", 0, new Vec(0.33, 0));
        LimbTorques arm = LimbTorques.of(hinge, LimbTorques.degrees(15, 125), 3, LimbTorques.Load.of(1, hand, 10));
        assertThat(arm.at(Joint.ELBOW, Phase.HELD, position)).isCloseTo(torque, within(printed(torque, 1e-4)));
    }

    private static LimbTorques squat(int positions) {
        BalancedStand stand = new BalancedStand(new StandDrive.Knee(AnkleGive.inProportion(0.35)), 0.5);
        return LimbTorques.of(stand, LimbTorques.degrees(100, 15), positions, LimbTorques.Load.of(0.5, BAR, 80));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 100,  32.3566, 137.4609, 135.5960",
        "1, 57.5, 28.8460, 122.1220,  60.7667",
        "2, 15,   18.1058,  72.6038, -21.5814"
    })
    void gSquatHeld(int position, double flexion, double lean, double hip, double knee) {
        LimbTorques leg = squat(3);
        assertThat(90 - Angles.degrees(leg.path().direction(2, position))).isCloseTo(lean, within(5.1e-5));
        assertThat(Angles.degrees(leg.path().angle(Joint.KNEE, position))).isCloseTo(flexion, within(1e-9));
        assertThat(Angles.degrees(leg.path().angle(Joint.ANKLE, position))).isCloseTo(0.35 * flexion, within(1e-9));
        // shank and trunk both lean forward; the knee's angle is what hip flexion and lean leave over
        double hipFlexion = flexion - 0.35 * flexion + lean;
        assertThat(Angles.degrees(leg.path().angle(Joint.HIP, position))).isCloseTo(hipFlexion, within(5.1e-5));
        assertThat(leg.at(Joint.HIP, Phase.HELD, position)).isCloseTo(hip, within(printed(hip, 1e-4)));
        assertThat(leg.at(Joint.KNEE, Phase.HELD, position)).isCloseTo(knee, within(printed(knee, 1e-4)));
        assertThat(leg.at(Joint.ANKLE, Phase.HELD, position)).isCloseTo(51.4149, within(5.2e-5));
        GroundContact ground = leg.ground().at(Phase.HELD, position);
        assertThat(2 * ground.upward()).isCloseTo(1569.0640, within(2e-3));
        assertThat(ground.forward()).isCloseTo(0, within(1e-9));
        assertThat(ground.fraction()).isCloseTo(0.5, within(1e-12));
    }

    /** Single derivation of the design, so this is its second. */
    @Test
    void gSquatLifting() {
        LimbTorques leg = squat(5);
        assertThat(leg.at(Joint.HIP, Phase.LIFTING, 1)).isCloseTo(140.7270, within(printed(140.7270, 1e-4)));
        assertThat(leg.at(Joint.KNEE, Phase.LIFTING, 1)).isCloseTo(101.2863, within(printed(101.2863, 1e-4)));
        assertThat(leg.at(Joint.ANKLE, Phase.LIFTING, 1)).isCloseTo(53.8025, within(printed(53.8025, 1e-4)));
        GroundContact ground = leg.ground().at(Phase.LIFTING, 1);
        assertThat(2 * ground.upward()).isCloseTo(1612.0047, within(printed(1612.0047, 1e-4)));
        assertThat(ground.fraction()).isCloseTo(0.504477, within(5.1e-7));
    }

    @ParameterizedTest
    @CsvSource({"0, 35.0536, 59.9075", "1, 24.9206, 49.7148", "2, 13.9437, 22.3841"})
    void hBenchPress(int position, double shoulder, double elbowExtension) {
        StraightPath path =
                new StraightPath(new Reach.Hand(Optional.empty()), Math.PI, new Vec(0.10, 0.30), new Vec(0.04, 0.55));
        BodyPoint wrist = new BodyPoint(
                "wrist",
                1,
                new Vec(LimbTorques.body().arm().orElseThrow().forearm().length(), 0));
        LimbTorques arm =
                LimbTorques.of(path, LimbTorques.metres(0, path.length()), 3, LimbTorques.Load.of(0.5, wrist, 60));
        assertThat(arm.at(Joint.SHOULDER, Phase.HELD, position)).isCloseTo(shoulder, within(printed(shoulder, 1e-4)));
        assertThat(-arm.at(Joint.ELBOW, Phase.HELD, position))
                .isCloseTo(elbowExtension, within(printed(elbowExtension, 1e-4)));
    }
}
