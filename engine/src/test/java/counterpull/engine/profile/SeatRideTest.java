package counterpull.engine.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.body.Leg;
import counterpull.engine.load.Carriage;
import counterpull.engine.load.Counterweight;
import counterpull.engine.load.Friction;
import counterpull.engine.load.Part;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.Rail;
import counterpull.engine.motion.Ride;
import counterpull.engine.motion.Stops;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Vec;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A sled whose seat rides, the plate at the lower end: 30° steep, carriage 30 kg, plates 20 kg, person 80 kg. */
class SeatRideTest {
    // sums of a few hundred newtons, rounded a few times
    private static final double ROUNDING = 1e-9;

    private static PressTask task(Counterweight counter, Loading loading) {
        Rail rail = new Rail(Angles.radians(-30), Ride.SEAT, 0, 1);
        Sled sled = new Sled(rail, new Carriage(30, counter, new Friction(10, 0.05, 0), 400), new Stops());
        return Trials.with(Trials.task(), sled).with(loading);
    }

    private static PressTask task(Loading loading) {
        return task(Counterweight.none(), loading);
    }

    @Test
    void allOfTheWeightThatRidesPressesDownTheRailTheWholeBodyIncluded() {
        PressProfile profile = PressProfile.of(task(Loading.plates(20)));
        for (int i = 0; i < profile.positions(); i++) {
            // (30 + 20 + 80) kg × 9.80665 × sin 30°, by hand
            assertThat(profile.force(Phase.HELD, i)).isCloseTo(637.43225, within(ROUNDING));
        }
    }

    @Test
    void frictionActsAgainstTheSeatWithThePersonsWeightInIt() {
        PressProfile profile = PressProfile.of(task(Loading.plates(20)));
        // 10 N + 0.05 × 130 kg × 9.80665 × cos 30° = 65.2033 N, by hand; at rest at both ends nothing accelerates
        double friction = 65.203252;
        for (int end : new int[] {0, profile.positions() - 1}) {
            // six decimals by hand
            assertThat(profile.force(Phase.LIFTING, end)).isCloseTo(637.43225 + friction, within(6e-7));
            assertThat(profile.force(Phase.LOWERING, end)).isCloseTo(637.43225 - friction, within(6e-7));
        }
    }

    @Test
    void aLineFromTheFixedEndBeyondThePlateAddsLoadMostAtTheTop() {
        // anchor 0.5 m beyond the plate, attachment at the hip: path = plate + 0.5 m, along the rail
        var line = Trials.line(Trials.rubber("r", 0.8, 100), new Vec(0.5, 0), new Vec(0, 0));
        PressProfile bare = PressProfile.of(task(Loading.plates(20)));
        PressProfile profile = PressProfile.of(task(new Loading(20, List.of(line))));
        for (int i = 0; i < profile.positions(); i++) {
            double pull = 100 * (profile.plate(i) + 0.5 - 0.8);
            assertThat(profile.force(Phase.HELD, i) - bare.force(Phase.HELD, i)).isCloseTo(pull, within(ROUNDING));
        }
        assertThat(profile.plate(20)).isGreaterThan(profile.plate(0));
    }

    @Test
    void aLineFromUpTheRailTakesLoadOffMostAtTheBottom() {
        // anchor 2.5 m from the plate toward the seat's side: path = 2.5 m − plate, shorter as the seat rides up
        var line = Trials.line(Trials.rubber("r", 0.8, 100), new Vec(-2.5, 0), new Vec(0, 0));
        PressProfile bare = PressProfile.of(task(Loading.plates(20)));
        PressProfile profile = PressProfile.of(task(new Loading(20, List.of(line))));
        for (int i = 0; i < profile.positions(); i++) {
            double pull = 100 * (2.5 - profile.plate(i) - 0.8);
            assertThat(bare.force(Phase.HELD, i) - profile.force(Phase.HELD, i)).isCloseTo(pull, within(ROUNDING));
        }
    }

    @Test
    void everyPartOfTheBodyIsAcceleratedWithItsOwnAcceleration() {
        PressProfile profile = PressProfile.of(task(Loading.plates(20)));
        double travel = profile.plate(20) - profile.plate(0);
        for (int i = 1; i < 20; i++) {
            double time = timeOf((profile.plate(i) - profile.plate(0)) / travel);
            double step = 1e-3;
            double second =
                    (momentum(profile, time + step) - 2 * momentum(profile, time) + momentum(profile, time - step))
                            / (step * step * 4);
            double inertia = profile.force(Part.INERTIA, Phase.LIFTING, i);
            // central difference of step 2 ms: error ~ step²/12 × fourth derivative (hundreds of N/s²), so below 1e-3 N
            assertThat(inertia).isCloseTo(second, within(1e-3));
        }
    }

    // 2 s of minimum jerk
    private static double fraction(double time) {
        return time * time * time * (10 - 15 * time + 6 * time * time);
    }

    private static double timeOf(double fraction) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            low = fraction(middle) < fraction ? middle : low;
            high = fraction(middle) < fraction ? high : middle;
        }
        return (low + high) / 2;
    }

    /** Σ m × distance behind the plate of all that rides, both legs drawn afresh from their triangle, kg·m. */
    private static double momentum(PressProfile profile, double time) {
        double bottom = profile.plate(0);
        double plate = bottom + fraction(time) * (profile.plate(20) - bottom);
        Leg leg = profile.limbs().get(0).limb().leg();
        double thigh = leg.thigh().length();
        double shank = leg.shank().length();
        double along = plate - leg.foot().ankleHeight();
        double across = 0.05;
        double reach = Math.hypot(along, across);
        double atHip = Math.acos((thigh * thigh + reach * reach - shank * shank) / (2 * thigh * reach));
        double t = Math.atan2(across, along) + atHip;
        double kneeAlong = thigh * Math.cos(t);
        double kneeShare = leg.shank().comAlong() / shank;
        double sum = (30 + 20 + profile.task().person().restOfBody()) * plate;
        sum += 2 * leg.thigh().mass() * (plate - leg.thigh().comAlong() * Math.cos(t));
        sum += 2 * leg.shank().mass() * (plate - kneeAlong - kneeShare * (along - kneeAlong));
        return sum;
    }

    @Test
    void whatIsPulledUpHarderThanItWeighsLosesContact() {
        var line = Trials.line(Trials.rubber("r", 0.8, 600), new Vec(-2.5, 0), new Vec(0, 0));
        assertThatThrownBy(() -> PressProfile.of(task(new Loading(20, List.of(line)))))
                .isInstanceOfSatisfying(Refusal.class, refusal -> {
                    assertThat(refusal.fault()).isEqualTo(Fault.CONTACT_LOST);
                    assertThat(refusal.value()).isNegative();
                });
    }

    @Test
    void aCounterweightAlongTheRailPullsWithItsShareAHangingOneWithAllOfIt() {
        double bare = PressProfile.of(task(Loading.plates(20))).force(Phase.HELD, 3);
        Counterweight along = new Counterweight(12, Counterweight.Run.ALONG_RAIL);
        Counterweight hanging = new Counterweight(12, Counterweight.Run.HANGING);
        // 12 kg × 9.80665, times sin 30° on the incline
        assertThat(bare - PressProfile.of(task(along, Loading.plates(20))).force(Phase.HELD, 3))
                .isCloseTo(58.8399, within(ROUNDING));
        assertThat(bare - PressProfile.of(task(hanging, Loading.plates(20))).force(Phase.HELD, 3))
                .isCloseTo(117.6798, within(ROUNDING));
    }
}
