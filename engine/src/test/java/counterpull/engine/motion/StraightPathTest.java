package counterpull.engine.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.body.Arm;
import counterpull.engine.body.Joint;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Vec;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class StraightPathTest {
    private static final Arm ARM = LimbTorques.body().arm().orElseThrow();
    private static final double UPPER = ARM.upperArm().length();
    private static final double FORE = ARM.forearm().length();
    private static final Reach WRIST = new Reach.Hand(Optional.empty());

    private static ChainPath path(StraightPath path, double bottom, double top) {
        return LimbTorques.of(path, LimbTorques.metres(bottom, top), 11, LimbTorques.Load.none())
                .path();
    }

    private static void onTheLine(StraightPath straight, ChainPath path, BodyPoint point, double bottom) {
        Vec along = straight.end().minus(straight.start()).times(1 / straight.length());
        for (int i = 0; i < path.positions(); i++) {
            double sense = bottom == 0 ? 1 : -1;
            Vec at = straight.start()
                    .plus(along.times(bottom + sense * path.course().at(i)));
            // rounding, at lengths below 1 m; second derivatives up to 100 per m
            assertThat(path.track(point).at(i).minus(at).norm()).isCloseTo(0, within(1e-14));
            assertThat(path.track(point).slope(i).minus(along.times(sense)).norm())
                    .isCloseTo(0, within(1e-13));
            assertThat(path.track(point).curve(i).norm()).isCloseTo(0, within(1e-11));
        }
    }

    @Test
    void aGripBeyondTheWristGoesAlongTheLineBothWays() {
        BodyPoint grip = new BodyPoint("fist", 1, new Vec(FORE + 0.07, 0.02));
        StraightPath press =
                new StraightPath(new Reach.Hand(Optional.of(grip)), Math.PI, new Vec(0.1, 0.3), new Vec(0.04, 0.57));
        onTheLine(press, path(press, 0, press.length()), grip, 0);
        onTheLine(press, path(press, press.length(), 0), grip, press.length());
    }

    @ParameterizedTest
    @EnumSource(ElbowSide.class)
    void inAFrontalPlaneTheElbowFoldsToTheStatedSideAndItsFlexionIsPositive(ElbowSide side) {
        Vec start = new Vec(0.25, 0.1);
        StraightPath press =
                new StraightPath(new Reach.HandSideways(Optional.empty(), side), Math.PI / 2, start, new Vec(0.2, 0.5));
        ChainPath path = path(press, 0, press.length());
        onTheLine(press, path, new BodyPoint("wrist", 1, new Vec(FORE, 0)), 0);
        for (int i = 0; i < path.positions(); i++) {
            Vec wrist = path.joint(2, i);
            // TOWARD_HEAD: the forearm turns counter-clockwise, so the elbow lies to the right of shoulder → wrist
            double left = wrist.cross(path.joint(1, i));
            assertThat(Math.signum(left)).isEqualTo(side == ElbowSide.TOWARD_HEAD ? -1 : 1);
            assertThat(path.angle(Joint.ELBOW, i)).isPositive();
            double reach = wrist.norm();
            double flexion = Math.PI - Math.acos((UPPER * UPPER + FORE * FORE - reach * reach) / (2 * UPPER * FORE));
            assertThat(path.angle(Joint.ELBOW, i)).isCloseTo(flexion, within(1e-12));
        }
    }

    @Test
    void theTwoSidesOfALineThroughTheShoulderMirrorEachOther() {
        Vec start = new Vec(0, 0.2);
        Vec end = new Vec(0, 0.5);
        ChainPath head = path(
                new StraightPath(
                        new Reach.HandSideways(Optional.empty(), ElbowSide.TOWARD_HEAD), Math.PI / 2, start, end),
                0,
                0.3);
        ChainPath feet = path(
                new StraightPath(
                        new Reach.HandSideways(Optional.empty(), ElbowSide.TOWARD_FEET), Math.PI / 2, start, end),
                0,
                0.3);
        for (int i = 0; i < head.positions(); i++) {
            assertThat(head.joint(1, i).x()).isCloseTo(-feet.joint(1, i).x(), within(1e-14));
            assertThat(head.angle(Joint.ELBOW, i)).isCloseTo(feet.angle(Joint.ELBOW, i), within(1e-14));
            for (Phase phase : Phase.values()) {
                assertThat(head.actionSpeed(Joint.ELBOW, phase, i))
                        .isCloseTo(feet.actionSpeed(Joint.ELBOW, phase, i), within(1e-13));
            }
        }
    }

    @Test
    void aFlatFootKeepsItsDirectionAndTheKneeFlexes() {
        Reach foot = new Reach.FlatFoot(Math.PI / 2);
        StraightPath press = new StraightPath(foot, Angles.radians(110), new Vec(0.45, 0.1), new Vec(0.8, 0.1));
        ChainPath path = path(press, 0, press.length());
        onTheLine(press, path, new BodyPoint("ankle", 2, new Vec(0, 0)), 0);
        for (int i = 0; i < path.positions(); i++) {
            assertThat(path.direction(2, i)).isEqualTo(Math.PI / 2);
            assertThat(path.slope(2, i)).isZero();
            assertThat(path.angle(Joint.KNEE, i)).isPositive();
            assertThat(path.joint(1, i).cross(path.joint(2, i)))
                    .as("knee on the counter-clockwise side of hip → ankle")
                    .isNegative();
            assertThat(path.angle(Joint.ANKLE, i)).isCloseTo(-path.direction(1, i), within(1e-12));
        }
        assertThat(press.joints()).containsExactly(Joint.HIP, Joint.KNEE, Joint.ANKLE);
        assertThat(press.driver()).isEmpty();
    }

    /** The rail press on a level rail with a bare plate is the same triangle. */
    @Test
    void aFlatFootIsTheLegOfARailPress() {
        var leg = LimbTorques.body().leg();
        Stance stance = new Stance(
                new SeatSetting("s", 0, 0.9, 0, Angles.radians(110)), new FootRow("r", 0.02), 0.5, new Vec(0, 0));
        LegOnPlate onPlate = new LegOnPlate(leg, new Rail(0, Ride.PLATE, 0, 1), stance);
        StraightPath press = new StraightPath(
                new Reach.FlatFoot(Math.PI / 2),
                Angles.radians(110),
                new Vec(0.5, onPlate.ankleAcross()),
                new Vec(0.8, onPlate.ankleAcross()));
        ChainPath path = path(press, 0, 0.3);
        for (int i = 0; i < path.positions(); i++) {
            double plate = 0.5 + path.course().at(i) + leg.foot().ankleHeight();
            assertThat(path.angle(Joint.KNEE, i)).isCloseTo(onPlate.kneeAt(plate), within(1e-12));
        }
    }

    private static Refusal refusal(StraightPath path, double bottom, double top) {
        try {
            path(path, bottom, top);
        } catch (Refusal refusal) {
            return refusal;
        }
        throw new AssertionError("not refused: " + path);
    }

    @Test
    void pastStraightNamesTheDistanceAndTheLimbsLength() {
        Refusal refusal = refusal(new StraightPath(WRIST, Math.PI, new Vec(0.1, 0.3), new Vec(0.1, 0.7)), 0, 0.4);
        assertThat(refusal.fault()).isEqualTo(Fault.PAST_STRAIGHT);
        assertThat(refusal.quantity()).isEqualTo("distance from shoulder to grip at the top");
        assertThat(refusal.value()).isCloseTo(Math.hypot(0.1, 0.7), within(1e-12));
        assertThat(refusal.limit()).isCloseTo(UPPER + FORE, within(1e-12));
        assertThat(refusal.unit()).isEqualTo("m");
    }

    private static double reachAt(double degrees) {
        return Math.sqrt(UPPER * UPPER + FORE * FORE + 2 * UPPER * FORE * Math.cos(Angles.radians(degrees)));
    }

    @Test
    void aRangeEndsTwoDegreesBeforeStraight() {
        StraightPath tooFar = new StraightPath(WRIST, Math.PI, new Vec(0, 0.3), new Vec(0, reachAt(1.9)));
        Refusal refusal = refusal(tooFar, 0, tooFar.length());
        assertThat(refusal.fault()).isEqualTo(Fault.PAST_STRAIGHT);
        assertThat(refusal.quantity()).isEqualTo("elbow flexion at the top");
        assertThat(Angles.degrees(refusal.value())).isCloseTo(1.9, within(1e-6));
        assertThat(Angles.degrees(refusal.limit())).isCloseTo(2, within(1e-12));
        StraightPath just = new StraightPath(WRIST, Math.PI, new Vec(0, 0.3), new Vec(0, reachAt(2)));
        assertThat(Angles.degrees(path(just, 0, just.length()).angle(Joint.ELBOW, 10)))
                .isCloseTo(2, within(1e-6));
    }

    @Test
    void aPathThatComesTooNearOnItsWayIsRefused() {
        Refusal refusal = refusal(new StraightPath(WRIST, Math.PI, new Vec(-0.3, 0.01), new Vec(0.3, 0.01)), 0, 0.6);
        assertThat(refusal.fault()).isEqualTo(Fault.OUT_OF_REACH);
        assertThat(refusal.quantity()).isEqualTo("distance from shoulder to grip on the way");
        assertThat(refusal.value()).isCloseTo(0.01, within(1e-12));
        assertThat(refusal.limit()).isCloseTo(reachAt(171), within(1e-12));
    }

    @Test
    void aRangeOffTheLineIsRefused() {
        StraightPath press = new StraightPath(WRIST, Math.PI, new Vec(0.1, 0.3), new Vec(0.1, 0.5));
        Refusal refusal = refusal(press, 0, 0.25);
        assertThat(refusal.fault()).isEqualTo(Fault.OUTSIDE_LIMITS);
        assertThat(refusal.value()).isEqualTo(0.25);
        assertThat(refusal.limit()).isCloseTo(0.2, within(1e-8));
        assertThat(refusal(press, -0.1, 0.2).value()).isEqualTo(-0.1);
    }

    @Test
    void badInputIsRefused() {
        Vec here = new Vec(0.1, 0.3);
        assertThatThrownBy(() -> new StraightPath(WRIST, Math.PI, here, here))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.fault()).isEqualTo(Fault.COINCIDENT_POINTS));
        assertThatThrownBy(() -> new StraightPath(WRIST, Double.NaN, here, new Vec(0, 0)))
                .isInstanceOf(Refusal.class);
        BodyPoint onUpperArm = new BodyPoint("grip", 0, new Vec(0.3, 0));
        assertThatThrownBy(() -> new Reach.Hand(Optional.of(onUpperArm))).isInstanceOf(Refusal.class);
        BodyPoint behind = new BodyPoint("grip", 1, new Vec(-0.1, 0));
        assertThatThrownBy(() -> new Reach.HandSideways(Optional.of(behind), ElbowSide.TOWARD_HEAD))
                .isInstanceOf(Refusal.class);
    }

    /** Directions never jump by a whole turn between neighbours, wherever the arm points. */
    @Test
    void directionsRunOn() {
        StraightPath row = new StraightPath(WRIST, 0.2, new Vec(-0.4, 0.25), new Vec(-0.4, -0.25));
        ChainPath path = path(row, 0, 0.5);
        for (int i = 1; i < path.positions(); i++) {
            for (int k = 0; k < 2; k++) {
                assertThat(path.direction(k, i) - path.direction(k, i - 1)).isBetween(-1.0, 1.0);
            }
        }
    }
}
