package counterpull.engine.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.body.Foot;
import counterpull.engine.body.Joint;
import counterpull.engine.load.Carriage;
import counterpull.engine.load.Counterweight;
import counterpull.engine.load.Friction;
import counterpull.engine.motion.FootRow;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.Rail;
import counterpull.engine.motion.Ride;
import counterpull.engine.motion.SeatSetting;
import counterpull.engine.motion.Stance;
import counterpull.engine.motion.Stops;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Vec;
import counterpull.engine.regression.Examples;
import org.junit.jupiter.api.Test;

/** Counterweight, hip shift, plate tilt and imperial plates on a sled whose plate rides. */
class MachineTest {
    // sums of a few hundred newtons or newton metres, rounded a few times
    private static final double ROUNDING = 1e-9;

    private static PressTask counterweighted(Counterweight counter) {
        Rail rail = new Rail(Angles.radians(45), Ride.PLATE, 0, 1);
        return Trials.with(Trials.task(), new Sled(rail, new Carriage(40, counter, Friction.none(), 400), new Stops()));
    }

    @Test
    void aCounterweightComesOffTheWeightAndOntoTheInertia() {
        PressTask bare = counterweighted(Counterweight.none());
        PressTask along = counterweighted(new Counterweight(10, Counterweight.Run.ALONG_RAIL));
        PressTask hanging = counterweighted(new Counterweight(10, Counterweight.Run.HANGING));
        // 10 kg × 9.80665 × sin 45° and 10 kg × 9.80665
        assertThat(drop(bare, along, Phase.HELD, 5)).isCloseTo(69.3434864, within(1e-6));
        assertThat(drop(bare, hanging, Phase.HELD, 5)).isCloseTo(98.0665, within(ROUNDING));
        double speedingUp = PressProfile.of(bare).ground().motion().acceleration(Phase.LIFTING, 5);
        assertThat(Math.abs(speedingUp)).isGreaterThan(0.01);
        assertThat(drop(bare, hanging, Phase.LIFTING, 5)).isCloseTo(98.0665 - 10 * speedingUp, within(ROUNDING));
    }

    private static double drop(PressTask from, PressTask to, Phase phase, int i) {
        return PressProfile.of(from).force(phase, i) - PressProfile.of(to).force(phase, i);
    }

    @Test
    void theForceAtTheTurnCountsTheCounterweightsMass() {
        PressProfile bare = PressProfile.of(counterweighted(Counterweight.none()));
        PressProfile counter = PressProfile.of(counterweighted(new Counterweight(10, Counterweight.Run.HANGING)));
        double travel = bare.ground().motion().stroke().travel();
        // 10/√3 D/T² in two seconds, 100 and 110 kg
        double peak = 10 / Math.sqrt(3) * travel / 4;
        assertThat(bare.turnaround().inertialForce()).isCloseTo(100 * peak, within(ROUNDING));
        assertThat(counter.turnaround().inertialForce()).isCloseTo(110 * peak, within(ROUNDING));
    }

    @Test
    void aHipShiftIsASeatThatStandsElsewhere() {
        PressTask task = Trials.task();
        Stance old = task.stance();
        Stance shifted = new Stance(old.seat(), old.row(), 0.5, new Vec(0.03, -0.02));
        // the hip 3 cm nearer to the plate and 2 cm lower: the same triangle with that distance and height
        SeatSetting seat = new SeatSetting("moved", 1, 0.97, -0.02, old.seat().trunkDirection());
        Stance moved = new Stance(seat, old.row(), 0.5, new Vec(0, 0));
        PressProfile one = PressProfile.of(task.with(shifted));
        PressProfile other = PressProfile.of(task.with(moved));
        PressProfile unshifted = PressProfile.of(task);
        for (int i = 0; i < one.positions(); i++) {
            assertThat(one.mark(i)).isCloseTo(other.mark(i), within(ROUNDING));
            for (Joint joint : Joint.LEG) {
                assertThat(torque(one, joint, i)).isCloseTo(torque(other, joint, i), within(ROUNDING));
            }
        }
        // and it matters: 2 cm of height move 490 N × 0.02 m about the hip for both legs, half of it for one
        assertThat(Math.abs(torque(one, Joint.HIP, 0) - torque(unshifted, Joint.HIP, 0)))
                .isGreaterThan(3);
    }

    private static double torque(PressProfile profile, Joint joint, int i) {
        return profile.limbs().get(0).torque(joint, Phase.LIFTING, i);
    }

    @Test
    void aTiltedPlateTurnsTheFootAndMovesTheAnkle() {
        double tilt = Angles.radians(10);
        Rail rail = new Rail(Angles.radians(45), Ride.PLATE, tilt, 1);
        PressTask square = Trials.task();
        PressTask task = Trials.with(square, new Sled(rail, square.sled().carriage(), new Stops()));
        PressProfile profile = PressProfile.of(task);
        Foot foot = Examples.leg().foot();
        double heel = task.stance().row().heel();
        for (int i = 0; i < profile.positions(); i++) {
            PressLimb limb = profile.limbs().get(0);
            // the ankle from the segments' directions
            double t = limb.path().thigh(i);
            double s = limb.path().shank(i);
            double x = Examples.leg().thigh().length() * Math.cos(t)
                    + Examples.leg().shank().length() * Math.cos(s);
            double y = Examples.leg().thigh().length() * Math.sin(t)
                    + Examples.leg().shank().length() * Math.sin(s);
            // the sole point below it: ankle height farther along the plate's normal, which is turned by the tilt
            double soleX = x + foot.ankleHeight() * Math.cos(tilt);
            double soleY = y + foot.ankleHeight() * Math.sin(tilt);
            // that lies on the plate through (plate, 0), so far along it as heel row and ankle say
            double fromPlateX = soleX - profile.plate(i);
            assertThat(fromPlateX * Math.cos(tilt) + soleY * Math.sin(tilt)).isCloseTo(0, within(ROUNDING));
            assertThat(-fromPlateX * Math.sin(tilt) + soleY * Math.cos(tilt))
                    .isCloseTo(heel + foot.ankleFromHeel(), within(ROUNDING));
            // dorsiflexion = foot − shank − 90°
            assertThat(limb.angle(Joint.ANKLE, i)).isCloseTo(tilt - s, within(ROUNDING));
        }
    }

    @Test
    void aPairOf45PoundPlatesWeighs90PoundsOnTheRail() {
        // 45 lb = 20.41165665 kg exactly (international pound, 1959: 0.45359237 kg)
        double pair = 2 * 20.41165665;
        PressProfile profile =
                PressProfile.of(counterweighted(Counterweight.none()).with(Loading.plates(pair)));
        PressProfile empty =
                PressProfile.of(counterweighted(Counterweight.none()).with(Loading.plates(0)));
        // 90 lbf = 90 × 4.4482216152605 N (0.45359237 × 9.80665 N), times sin 45°
        assertThat(profile.force(Phase.HELD, 0) - empty.force(Phase.HELD, 0))
                .isCloseTo(400.339945373445 * Math.sqrt(0.5), within(1e-8));
    }

    @Test
    void anUnlimitedHornIsAccepted() {
        Carriage carriage = new Carriage(40, Counterweight.none(), Friction.none(), Double.POSITIVE_INFINITY);
        assertThat(carriage.mostPlates()).isInfinite();
        assertThatThrownBy(() -> new Carriage(40, Counterweight.none(), Friction.none(), Double.NaN))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.fault()).isEqualTo(Fault.NOT_FINITE));
    }

    @Test
    void anUnreachableFootRowIsRefusedWithTheReachThatIsLeft() {
        PressTask task = Trials.task();
        Stance far = new Stance(task.stance().seat(), new FootRow("far", 0.9), 0.5, new Vec(0, 0));
        assertThatThrownBy(() -> PressProfile.of(task.with(far))).isInstanceOfSatisfying(Refusal.class, refusal -> {
            assertThat(refusal.fault()).isEqualTo(Fault.OUT_OF_REACH);
            // the row of the ankle, and hip to ankle with the knee at 90°
            double ankle = 0.9 + Examples.leg().foot().ankleFromHeel();
            assertThat(refusal.value()).isCloseTo(ankle, within(ROUNDING));
            assertThat(refusal.limit())
                    .isCloseTo(
                            Math.hypot(
                                    Examples.leg().thigh().length(),
                                    Examples.leg().shank().length()),
                            within(ROUNDING));
        });
    }

    @Test
    void aMovingRangeThatEndsAtStraightIsRefused() {
        Limb old = Trials.task().person().limbs().get(0);
        for (double top : new double[] {0, 1.9}) {
            Limb limb = new Limb(old.side(), old.leg(), 1, Trials.range(90, top), old.ranges(), old.strength());
            PressTask task = Trials.with(Trials.task(), new Person(80, java.util.List.of(limb)));
            assertThatThrownBy(() -> PressProfile.of(task))
                    .isInstanceOfSatisfying(
                            Refusal.class,
                            refusal -> assertThat(refusal.fault()).isEqualTo(Fault.PAST_STRAIGHT));
        }
        Limb limb = new Limb(old.side(), old.leg(), 1, Trials.range(90, 2), old.ranges(), old.strength());
        PressTask task = Trials.with(Trials.task(), new Person(80, java.util.List.of(limb)));
        assertThat(PressProfile.of(task).positions()).isEqualTo(21);
    }
}
