package counterpull.engine.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.body.BodySide;
import counterpull.engine.body.Foot;
import counterpull.engine.body.Joint;
import counterpull.engine.body.Leg;
import counterpull.engine.body.Segment;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Vec;
import java.util.List;
import org.junit.jupiter.api.Test;

class BalancedStandTest {
    private static final double TRUNK = LimbTorques.body().trunk().orElseThrow().length();
    private static final BodyPoint BAR = new BodyPoint("bar", 2, new Vec(TRUNK, 0.04));
    private static final BodyPoint HUNG = new BodyPoint("bar in the hands", 2, new Vec(TRUNK, 0));

    private static BalancedStand squat(double ratio, double limit) {
        return new BalancedStand(new StandDrive.Knee(new AnkleGive(ratio, Angles.radians(limit))), 0.5);
    }

    private static LimbTorques stand(BalancedStand stand, double bottom, double top, double bar) {
        return LimbTorques.of(stand, LimbTorques.degrees(bottom, top), 11, LimbTorques.Load.of(0.5, BAR, bar));
    }

    @Test
    void theAnkleGivesUpToItsLimitWithARoundCorner() {
        ChainPath path = stand(squat(0.35, 21), 110, 10, 60).path();
        // 21° is reached at 60° of knee flexion; the corner spans 58° to 62°
        for (int i = 0; i < 11; i++) {
            double knee = 110 - 10 * i;
            double plain = Math.min(21, 0.35 * knee);
            // at the corner itself the rounded curve lies 3/16 of the half width times the ratio lower
            double lower = knee == 60 ? 0.35 * 2 * 3 / 16 : 0;
            assertThat(Angles.degrees(path.angle(Joint.ANKLE, i))).isCloseTo(plain - lower, within(1e-9));
        }
    }

    @Test
    void theCornerJoinsSmoothly() {
        AnkleGive give = new AnkleGive(0.4, Angles.radians(20));
        double corner = Angles.radians(50);
        double half = Angles.radians(2);
        Jet low = give.dorsiflexion(corner - half + 1e-9);
        assertThat(low.value()).isCloseTo(0.4 * (corner - half), within(1e-9));
        assertThat(low.first()).isCloseTo(0.4, within(1e-12));
        assertThat(low.second()).isCloseTo(0, within(1e-6));
        Jet high = give.dorsiflexion(corner + half - 1e-9);
        assertThat(high.value()).isCloseTo(Angles.radians(20), within(1e-9));
        assertThat(high.first()).isCloseTo(0, within(1e-12));
        assertThat(high.second()).isCloseTo(0, within(1e-6));
        for (double at = corner - half + 0.005; at < corner + half - 0.005; at += 0.003) {
            // five points are exact for a quartic; rounding leaves 1e-16/h²
            double h = 1e-3;
            double[] f = new double[5];
            for (int k = 0; k < 5; k++) {
                f[k] = give.dorsiflexion(at + (k - 2) * h).value();
            }
            Jet jet = give.dorsiflexion(at);
            double first = (f[0] - 8 * f[1] + 8 * f[3] - f[4]) / (12 * h);
            double second = (-f[0] + 16 * f[1] - 30 * f[2] + 16 * f[3] - f[4]) / (12 * h * h);
            assertThat(jet.first()).isCloseTo(first, within(1e-11));
            assertThat(jet.second()).isCloseTo(second, within(2e-9));
        }
    }

    @Test
    void tiesGoFromTheHipDownThoughTheChainStartsAtTheAnkle() {
        BalancedStand stand = squat(0.3, 90);
        ChainPath path = stand(stand, 90, 10, 60).path();
        assertThat(stand.joints()).containsExactly(Joint.HIP, Joint.KNEE, Joint.ANKLE);
        assertThat(path.joints()).isEqualTo(stand.joints());
        assertThat(path.index(Joint.ANKLE)).isZero();
        assertThat(path.index(Joint.HIP)).isEqualTo(2);
    }

    @Test
    void halfTheBodyOnEachOfTwoLegsIsTheWholeOnOneLegOfTwiceTheWeight() {
        BalancedStand stand = squat(0.35, 90);
        LimbTorques two = stand(stand, 100, 15, 80);
        LimbTorques front = LimbTorques.of(stand, LimbTorques.degrees(100, 15), 11, LimbTorques.Load.of(1, BAR, 80));
        for (int i = 0; i < 11; i++) {
            // one leg carries the whole trunk and bar and one leg's own weight: less than twice a half's
            assertThat(front.ground().at(Phase.HELD, i).upward())
                    .isLessThan(2 * two.ground().at(Phase.HELD, i).upward())
                    .isGreaterThan(1.7 * two.ground().at(Phase.HELD, i).upward());
            assertThat(front.ground().at(Phase.HELD, i).fraction()).isCloseTo(0.5, within(1e-12));
        }
    }

    @Test
    void aBarInFrontKeepsTheTrunkMoreUprightAndAsksLessOfTheHip() {
        BalancedStand stand = squat(0.35, 90);
        BodyPoint inFront = new BodyPoint("bar in front", 2, new Vec(TRUNK, -0.1));
        LimbTorques back = stand(stand, 90, 15, 60);
        LimbTorques front =
                LimbTorques.of(stand, LimbTorques.degrees(90, 15), 11, LimbTorques.Load.of(0.5, inFront, 60));
        for (int i = 0; i < 11; i++) {
            assertThat(front.path().direction(2, i)).isGreaterThan(back.path().direction(2, i));
            assertThat(front.path().direction(2, i)).isLessThan(Math.PI / 2 + 0.5);
        }
    }

    @Test
    void inAHipHingeTheHipDrivesAndTheShankBalances() {
        BalancedStand hinge = new BalancedStand(new StandDrive.Hip(Angles.radians(5), 0.2), 0.5);
        LimbTorques limb = LimbTorques.of(hinge, LimbTorques.degrees(100, 5), 20, LimbTorques.Load.of(0.5, HUNG, 60));
        for (int i = 0; i < 20; i++) {
            double hip = Angles.degrees(limb.path().angle(Joint.HIP, i));
            assertThat(hip).isCloseTo(100 - 5.0 * i, within(1e-9));
            assertThat(Angles.degrees(limb.path().angle(Joint.KNEE, i))).isCloseTo(5 + 0.2 * hip, within(1e-9));
            assertThat(limb.ground().at(Phase.HELD, i).fraction()).isCloseTo(0.5, within(1e-12));
            assertThat(limb.at(Joint.HIP, Phase.HELD, i))
                    .as("extension holds the trunk")
                    .isPositive();
        }
        assertThat(hinge.driver()).contains(Joint.HIP);
        assertThat(limb.path().angle(Joint.ANKLE, 0)).as("hips go back").isLessThan(0.1);
    }

    private static Refusal refusal(BalancedStand stand, double bottom, double top) {
        try {
            stand(stand, bottom, top, 20);
        } catch (Refusal refusal) {
            return refusal;
        }
        throw new AssertionError("not refused");
    }

    @Test
    void whoCannotBalanceIsToldSo() {
        // a stiff ankle in a deep squat: the hips go farther back than trunk and bar can make up for
        Refusal refusal = refusal(squat(0.35, 2), 110, 10);
        assertThat(refusal.fault()).isEqualTo(Fault.OUT_OF_REACH);
        assertThat(refusal)
                .hasMessageStartingWith("cannot balance: with the knee at 110°")
                .hasMessageContaining("behind the point of balance");
        assertThat(refusal.unit()).isEqualTo("m");
        assertThat(refusal.limit()).isZero();
        assertThat(refusal.value()).isCloseTo(missing(), within(1e-12));
    }

    // shank 2° forward, thigh 110° from it, trunk 88° forward: where all mass is, and where it should be
    private static double missing() {
        BodySide body = LimbTorques.body();
        double shank = Angles.radians(88);
        double thigh = shank + Angles.radians(110);
        Segment trunk = body.trunk().orElseThrow();
        Foot foot = body.leg().foot();
        double hip = body.leg().shank().length() * Math.cos(shank)
                + body.leg().thigh().length() * Math.cos(thigh);
        double onShank = body.leg().shank().length() - body.leg().shank().comAlong();
        double onThigh = body.leg().thigh().length() - body.leg().thigh().comAlong();
        double[] mass = {body.leg().shank().mass(), body.leg().thigh().mass(), trunk.mass() / 2, 20 / 2.0, foot.mass()};
        // as far as a lean of trunk and bar together goes: 2° short of level
        double leaning =
                Math.hypot(mass[2] * trunk.comAlong() + mass[3] * TRUNK, mass[3] * 0.04) * Math.cos(Angles.radians(2));
        double moment = mass[0] * onShank * Math.cos(shank)
                + mass[1] * (body.leg().shank().length() * Math.cos(shank) + onThigh * Math.cos(thigh))
                + (mass[2] + mass[3]) * hip
                + leaning
                + mass[4] * (foot.length() / 2 - foot.ankleFromHeel());
        double all = mass[0] + mass[1] + mass[2] + mass[3] + mass[4];
        return 0.5 * foot.length() - foot.ankleFromHeel() - moment / all;
    }

    @Test
    void anglesOutsideTheDriversRangeAndBadInputAreRefused() {
        Refusal refusal = refusal(squat(0.35, 90), 175, 10);
        assertThat(refusal.fault()).isEqualTo(Fault.OUTSIDE_LIMITS);
        assertThat(refusal.quantity()).isEqualTo("knee flexion at the bottom");
        assertThatThrownBy(() -> new BalancedStand(new StandDrive.Hip(0, 0), 0.95))
                .isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> new AnkleGive(1.2, 1)).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> new AnkleGive(0.3, 0)).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> new StandDrive.Hip(-0.1, 0)).isInstanceOf(Refusal.class);
        BodyPoint beyond = new BodyPoint("bar", 3, new Vec(0, 0));
        assertThatThrownBy(() -> LimbTorques.of(
                        squat(0.3, 90), LimbTorques.degrees(90, 10), 3, LimbTorques.Load.of(0.5, beyond, 10)))
                .isInstanceOf(Refusal.class);
    }

    @Test
    void aFootThatWouldTipOrLeaveTheGroundIsRefused() {
        Foot foot = LimbTorques.body().leg().foot();
        GroundContact good = GroundContact.under(foot, 9.80665, new Vec(10, 700), 40);
        assertThat(good.standing("at the top")).isSameAs(good);
        // 700 N and 300 N·m put the pressure far beyond the toes
        assertThatThrownBy(() ->
                        GroundContact.under(foot, 9.80665, new Vec(0, 700), 300).standing("at the top"))
                .isInstanceOfSatisfying(Refusal.class, refusal -> {
                    assertThat(refusal.fault()).isEqualTo(Fault.CONTACT_LOST);
                    assertThat(refusal.value()).isGreaterThan(1);
                    assertThat(refusal.limit()).isEqualTo(1);
                });
        assertThatThrownBy(() -> GroundContact.under(foot, 9.80665, new Vec(0, 700), -100)
                        .standing("at the top"))
                .hasMessageContaining("heel");
        assertThatThrownBy(() ->
                        GroundContact.under(foot, 9.80665, new Vec(0, -20), 0).standing("at the top"))
                .hasMessageContaining("leave the ground");
    }

    @Test
    void anyForceOnTheBodyGoesIntoTheGround() {
        LimbTorques limb = stand(squat(0.35, 90), 90, 10, 0);
        Foot foot = LimbTorques.body().leg().foot();
        Ground bare = Ground.of(limb.path(), foot, 9.80665, (loads, motion, phase, i) -> {});
        Ground pulled = Ground.of(
                limb.path(),
                foot,
                9.80665,
                (loads, motion, phase, i) -> loads.add(2, motion.armX(2, TRUNK, 0), motion.armY(2, TRUNK, 0), 30, -50));
        for (Phase phase : List.of(Phase.HELD, Phase.LIFTING)) {
            GroundContact before = bare.at(phase, 5);
            GroundContact after = pulled.at(phase, 5);
            assertThat(after.upward() - before.upward()).isCloseTo(50, within(1e-9));
            assertThat(after.forward() - before.forward()).isCloseTo(-30, within(1e-9));
            // moments about the point of the ground below the ankle: a pull forward at a height brings the pressure
            // forward
            Vec shoulder = limb.path().joint(3, 5);
            double added = 50 * shoulder.x() + 30 * (shoulder.y() + foot.ankleHeight());
            assertThat(place(foot, after) * after.upward() - place(foot, before) * before.upward())
                    .isCloseTo(added, within(1e-9));
        }
    }

    private static double place(Foot foot, GroundContact contact) {
        return contact.fraction() * foot.length() - foot.ankleFromHeel();
    }

    /** Shank and thigh whose centres of mass lie off the line between their joints are the same seen from either end. */
    @Test
    void aSegmentIsTheSameBodySeenFromItsFarEnd() {
        BodySide usual = LimbTorques.body();
        Segment shank = bent(usual.leg().shank(), 0.02);
        Segment thigh = bent(usual.leg().thigh(), -0.03);
        BodySide body = new BodySide(new Leg(thigh, shank, usual.leg().foot()), usual.arm(), usual.trunk());
        WorkingRange range = LimbTorques.degrees(90, 20);
        Course course = Course.even(range.bottom() - range.top(), 3, new FullStop(new Tempo.Seconds(2, 0, 2, 0)));
        ChainPath path = squat(0.3, 90).path(new Motion.Moving(body, 0.5, range, course, List.of()));
        // hanging from the hip, at the same posture: same directions, turned round
        Vec hip = path.joint(2, 1);
        Vec knee = path.joint(1, 1);
        assertThat(com(path, 1)).isEqualTo(rounded(hip.plus(place(thigh, path.direction(1, 1) + Math.PI))));
        assertThat(com(path, 0)).isEqualTo(rounded(knee.plus(place(shank, path.direction(0, 1) + Math.PI))));
        assertThat(path.chain().inertia(0)).isEqualTo(shank.inertia());
    }

    private static Segment bent(Segment part, double across) {
        return new Segment(part.length(), part.mass(), part.comAlong(), across, part.inertia());
    }

    private static Vec place(Segment part, double direction) {
        Vec along = Vec.unit(direction);
        return along.times(part.comAlong()).plus(along.left().times(part.comAcross()));
    }

    private static Vec com(ChainPath path, int segment) {
        Vec at = new Vec(path.chain().comAlong(segment), path.chain().comAcross(segment));
        return rounded(path.track(new BodyPoint("com", segment, at)).at(1));
    }

    private static Vec rounded(Vec at) {
        return new Vec(Math.round(at.x() * 1e12) / 1e12, Math.round(at.y() * 1e12) / 1e12);
    }
}
