package counterpull.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.body.Leg;
import counterpull.engine.motion.LegOnPlate;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.Limb;
import counterpull.engine.profile.PressProfile;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The drawn points are the result's own: closed from the hip along the links, they meet the plate where the heel stands. */
class PostureTest {
    // rounding of two trigonometric chains
    private static final double ROUNDING = 1e-9;

    private static List<PressProfile> profiles() {
        return List.of(Setups.plain(), Setups.both(), Setups.shallowRail(), Setups.seatRides(), Setups.tilted());
    }

    @Test
    void linksHaveTheirLengths() {
        for (PressProfile profile : profiles()) {
            for (int k = 0; k < 2; k++) {
                Leg leg = profile.limbs().get(k).limb().leg();
                Posture posture = Posture.of(profile, k, 40);
                assertThat(distance(posture.hip(), posture.knee()))
                        .isCloseTo(leg.thigh().length(), within(ROUNDING));
                assertThat(distance(posture.knee(), posture.ankle()))
                        .isCloseTo(leg.shank().length(), within(ROUNDING));
                assertThat(distance(posture.heel(), posture.toe()))
                        .isCloseTo(leg.foot().length(), within(ROUNDING));
            }
        }
    }

    @Test
    void theHeelStandsOnItsRowOfThePlate() {
        for (PressProfile profile : profiles()) {
            SledPoints points = new SledPoints(profile);
            for (int position : new int[] {0, 50, 100}) {
                Vec row = points.plateWay()
                        .times(profile.task().stance().row().heel())
                        .plus(points.plate(position));
                for (int k = 0; k < 2; k++) {
                    assertThat(distance(Posture.of(profile, k, position).heel(), row))
                            .isLessThan(ROUNDING);
                }
            }
        }
    }

    @Test
    void theAnkleIsWhereTheTriangleHasIt() {
        for (PressProfile profile : profiles()) {
            Limb limb = profile.task().person().limbs().get(0);
            LegOnPlate leg = new LegOnPlate(
                    limb.leg(), profile.task().sled().rail(), profile.task().stance());
            Posture posture = Posture.of(profile, 0, 20);
            Vec ankle = posture.ankle().minus(posture.hip());
            assertThat(ankle.x()).isCloseTo(leg.ankleAlong(profile.plate(20)), within(ROUNDING));
            assertThat(ankle.y()).isCloseTo(leg.ankleAcross(), within(ROUNDING));
        }
    }

    @Test
    void onlyOneEndOfTheSledMoves() {
        SledPoints plateRides = new SledPoints(Setups.plain());
        assertThat(plateRides.hip(0)).isEqualTo(plateRides.hip(100));
        SledPoints seatRides = new SledPoints(Setups.seatRides());
        assertThat(seatRides.plate(0)).isEqualTo(seatRides.plate(100));
        assertThat(distance(seatRides.hip(0), seatRides.hip(100))).isGreaterThan(0.1);
    }

    private static double distance(Vec one, Vec other) {
        return one.minus(other).norm();
    }
}
