package counterpull.engine.regression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.body.Joint;
import counterpull.engine.elastic.LinearLaw;
import counterpull.engine.elastic.LossFraction;
import counterpull.engine.elastic.Rubber;
import counterpull.engine.load.Anchor;
import counterpull.engine.load.Attachment;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.Friction;
import counterpull.engine.motion.Bounce;
import counterpull.engine.motion.Flowing;
import counterpull.engine.motion.FullStop;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.Tempo;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.Loading;
import counterpull.engine.profile.PressLimb;
import counterpull.engine.profile.PressProfile;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The design's worked examples A, B, C, J and L: two independent derivations of our own, not published values. Tolerance: half
 * a unit of the last printed digit.
 */
class WorkedExamplesTest {
    private static final PressProfile BARE = PressProfile.of(Examples.rail(Examples.friction(), Loading.plates(60), 5));

    @Test
    void aBareSledHeld() {
        PressProfile profile = PressProfile.of(Examples.rail(Friction.none(), Loading.plates(60), 5));
        assertThat(profile.force(Phase.HELD, 2)).isCloseTo(693.4349, within(5e-5));
    }

    @Test
    void aPeakOfAMinimumJerkStroke() {
        Tempo tempo = new FullStop(new Tempo.Seconds(2, 0, 2, 0));
        double peak = 693.43486 + 100 * tempo.peakNearBottom(0.40);
        assertThat(peak).isCloseTo(751.1699, within(1e-4));
        assertThat(peak / 693.43486).isCloseTo(1.083259, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({
        "0, HELD,     0.605522, 139.8371, 40.1629, 693.4349, 31.9555,  84.6071, 23.3171",
        "0, LIFTING,  0.605522, 139.8371, 40.1629, 722.3036, 33.6371,  87.6550, 24.2770",
        "0, LOWERING, 0.605522, 139.8371, 40.1629, 664.5662, 30.2739,  81.5592, 22.3572",
        "2, HELD,     0.777139, 118.7357, 21.2643, 693.4349, 20.1193,  41.5239, 23.3171",
        "2, LIFTING,  0.777139, 118.7357, 21.2643, 703.7426, 20.8744,  41.8926, 23.6455",
        "2, LOWERING, 0.777139, 118.7357, 21.2643, 646.0052, 17.5112,  39.3051, 21.7258",
        "4, HELD,     0.854519,  98.3589,  1.6411, 693.4349, 11.2105, -10.5376, 23.3171"
    })
    void bRailPress(
            int position,
            Phase phase,
            double d,
            double hipFlexion,
            double dorsiflexion,
            double force,
            double hip,
            double knee,
            double ankle) {
        PressLimb limb = BARE.limbs().get(0);
        double sole = limb.limb().leg().foot().ankleHeight();
        assertThat(BARE.plate(position) - sole).isCloseTo(d, within(5e-7));
        assertThat(Angles.degrees(limb.angle(Joint.HIP, position))).isCloseTo(hipFlexion, within(5e-5));
        assertThat(Angles.degrees(limb.angle(Joint.ANKLE, position))).isCloseTo(dorsiflexion, within(5e-5));
        assertThat(BARE.force(phase, position)).isCloseTo(force, within(7e-4));
        assertThat(limb.torque(Joint.HIP, phase, position)).isCloseTo(hip, within(5.1e-5));
        assertThat(limb.torque(Joint.KNEE, phase, position)).isCloseTo(knee, within(8.8e-5));
        assertThat(limb.torque(Joint.ANKLE, phase, position)).isCloseTo(ankle, within(5.1e-5));
    }

    @Test
    void bAccelerationAndRatios() {
        assertThat(BARE.ground().motion().acceleration(Phase.LIFTING, 2)).isCloseTo(-0.185610, within(5e-7));
        assertThat(BARE.ground().motion().acceleration(Phase.LOWERING, 2)).isCloseTo(-0.185610, within(5e-7));
        PressProfile fine = PressProfile.of(Examples.rail(Examples.friction(), Loading.plates(60), 2001));
        assertThat(fine.turnaround().movingOverHeld()).isCloseTo(1.093460, within(1.1e-6));
        PressProfile smooth = PressProfile.of(Examples.rail(Friction.none(), Loading.plates(60), 2001));
        assertThat(smooth.turnaround().movingOverHeld()).isCloseTo(1.051828, within(1.1e-6));
    }

    @ParameterizedTest
    @CsvSource({"0, -4.0772, 2.4039", "2, -5.1158, 2.8408", "4, -5.5840, 3.0170"})
    void bPerDegreeOfPush(int position, double hip, double knee) {
        PressLimb limb = BARE.limbs().get(1);
        double degree = Angles.radians(1);
        assertThat(degree * limb.torquePerPushAngle(Joint.HIP, Phase.HELD, position))
                .isCloseTo(hip, within(5e-5));
        assertThat(degree * limb.torquePerPushAngle(Joint.KNEE, Phase.HELD, position))
                .isCloseTo(knee, within(5e-5));
        assertThat(degree * limb.torquePerPushAngle(Joint.ANKLE, Phase.HELD, position))
                .isCloseTo(-0.4130, within(5e-5));
    }

    @Test
    void bKneeTorqueReversesItsSenseBeforeStraight() {
        PressLimb limb = PressProfile.of(Examples.rail(Examples.friction(), Loading.plates(60), 8001))
                .limbs()
                .get(0);
        int i = 0;
        while (limb.torque(Joint.KNEE, Phase.HELD, i) > 0) {
            i++;
        }
        // the design prints 17.8°, one decimal
        assertThat(Angles.degrees(limb.angle(Joint.KNEE, i))).isCloseTo(17.8, within(0.05));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0.831611, 34.7416, 34.5409, 658.8940, 80.9603",
        "2, 0.661209, 9.1813, 9.1017, 684.3332, 41.1160",
        "4, 0.584574, 0, 0, 693.4349, -10.5376"
    })
    void cBottomRelieved(int position, double tube, double tension, double along, double force, double knee) {
        Rubber rubber = new Rubber("example C", 0.60, new LinearLaw(150 * 0.60), new LossFraction(0), 1.5, 0, 0);
        ElasticLine.Ends ends = new ElasticLine.Ends(
                new Anchor("upper", new Vec(1.60, 0.30), 0, Double.POSITIVE_INFINITY),
                new Attachment("plate", new Vec(0, 0.20), 0));
        ElasticLine line = new ElasticLine(rubber, ElasticLine.Pieces.one(), 0.10, ends);
        PressProfile profile = PressProfile.of(Examples.rail(Examples.friction(), new Loading(60, List.of(line)), 5));
        assertThat(profile.lines().get(0).rubberLength(position)).isCloseTo(tube, within(5e-7));
        assertThat(profile.lines().get(0).tension(Phase.HELD, position)).isCloseTo(tension, within(5e-5));
        assertThat(profile.lines().get(0).along(Phase.HELD, position)).isCloseTo(along, within(5e-5));
        assertThat(profile.force(Phase.HELD, position)).isCloseTo(force, within(7e-4));
        assertThat(profile.limbs().get(0).torque(Joint.KNEE, Phase.HELD, position))
                .isCloseTo(knee, within(8.2e-5));
    }

    @Test
    void jBounce() {
        Bounce bounce = new Bounce(0.40, 0.30, 0.20);
        assertThat(bounce.acceleration()).isCloseTo(3.5, within(1e-12));
        assertThat(bounce.turnLength(Phase.LOWERING)).isCloseTo(0.022857, within(5e-7));
        assertThat(bounce.turnLength(Phase.LIFTING)).isCloseTo(0.012857, within(5e-7));
    }

    @ParameterizedTest
    @CsvSource({
        "2, 2, BOTTOM, 0.6667, 5e-5",
        "3, 2, BOTTOM, 0.518519, 5e-7",
        "5, 2, BOTTOM, 0.320000, 5e-7",
        "2, 2, BOTH, 0.500000, 5e-7"
    })
    void lFlowingTurn(double down, double up, Flowing.Turn turn, double expected, double halfDigit) {
        assertThat(new Flowing(down, up, turn).turnAcceleration(0.40)).isCloseTo(expected, within(halfDigit));
    }
}
