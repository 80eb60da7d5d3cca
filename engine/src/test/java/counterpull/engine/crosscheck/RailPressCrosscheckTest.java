package counterpull.engine.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.body.Joint;
import counterpull.engine.load.Carriage;
import counterpull.engine.motion.Bounce;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.Groundwork;
import counterpull.engine.profile.PressLimb;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.PressTask;
import counterpull.engine.profile.Sled;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Random people on random sleds, a third of them driven by a stack, by two routes: the engine, and positions by trigonometry with everything else by numerical
 * differentiation (eighth order in time with step seconds/1000; two inside each other for kinetic energy). Held rows have no
 * power; moments near a corner of the movement or a kink of a line are left out, because no stencil sees through them.
 *
 * <p>Tolerance: rounding of a position (1e-16 m) over the square of the step (1e-6 s² and less) leaves 1e-10 m/s², and two
 * stencils inside each other leave about 1e-9 of the power near straight, where the knee turns fastest: 1e-7 is above both
 * and far below a wrong term.
 */
class RailPressCrosscheckTest {
    private static final int SLEDS = 400;
    private static final double[] SHARES = {0.05, 0.31, 0.62, 0.93};
    private static final double CLOSE = 1e-7;

    private record Case(PressTask task, PlainSled plain) {
        Optional<PressProfile> at(double plate) {
            Groundwork ground = Groundwork.of(task, task.stroke(), new double[] {plate});
            try {
                return Optional.of(PressProfile.of(ground, task.loading()));
            } catch (Refusal refusal) {
                assertThat(refusal.fault()).isEqualTo(Fault.CONTACT_LOST);
                return Optional.empty();
            }
        }
    }

    private static List<Case> cases(long seed) {
        RandomSled random = new RandomSled(seed);
        List<Case> cases = new ArrayList<>();
        while (cases.size() < SLEDS) {
            PressTask drawn = random.next();
            PressTask task = cases.size() % 3 == 0 ? Stacked.on(drawn, cases.size()) : drawn;
            PlainSled plain = new PlainSled(task);
            boolean fits = task.tempo() instanceof Bounce bounce
                    ? bounce.turnLength(Phase.LIFTING) < plain.top - plain.bottom
                            && bounce.turnLength(Phase.LOWERING) < plain.top - plain.bottom
                    : plain.top > plain.bottom;
            if (fits) {
                cases.add(new Case(task, plain));
            }
        }
        return cases;
    }

    @Test
    void bottomAndTopOfTheStroke() {
        for (Case each : cases(1)) {
            assertThat(each.task.stroke().bottom()).isCloseTo(each.plain.bottom, within(1e-12));
            assertThat(each.task.stroke().top()).isCloseTo(each.plain.top, within(1e-12));
        }
    }

    @Test
    void jointsGiveThePowerThatIsStoredOrLost() {
        int checked = 0;
        int seats = 0;
        for (Case each : cases(2)) {
            for (PlainMoment moment : moments(each)) {
                Optional<PressProfile> profile = each.at(moment.plate());
                if (profile.isPresent()) {
                    assertThat(mismatch(profile.get(), moment))
                            .as("%s, %s at %s s", each.task, moment.phase, moment.time)
                            .isLessThan(CLOSE);
                    checked++;
                    seats += each.plain.plateRides ? 0 : 1;
                }
            }
        }
        assertThat(checked).as("moments that were looked at").isGreaterThan(SLEDS);
        assertThat(seats).as("moments with a riding seat").isGreaterThan(SLEDS / 4);
    }

    private static List<PlainMoment> moments(Case each) {
        List<PlainMoment> moments = new ArrayList<>();
        for (Phase phase : new Phase[] {Phase.LIFTING, Phase.LOWERING}) {
            for (double share : SHARES) {
                PlainMoment moment = new PlainMoment(each.plain, phase, share);
                if (moment.smooth()) {
                    moments.add(moment);
                }
            }
        }
        return moments;
    }

    /** Power of the joints against what is stored and lost, over the sum of the joints' powers without sign. */
    private static double mismatch(PressProfile profile, PlainMoment moment) {
        double given = 0;
        double size = 0;
        for (int leg = 0; leg < moment.sled.legs.size(); leg++) {
            for (Joint joint : Joint.LEG) {
                double power = profile.limbs().get(leg).torque(joint, moment.phase, 0)
                        * moment.jointRate(leg, joint.ordinal());
                given += power;
                size += Math.abs(power);
            }
        }
        return Math.abs(given - moment.powerStored()) / size;
    }

    @Test
    void everyTorqueByItself() {
        int checked = 0;
        for (Case each : cases(3)) {
            for (PlainMoment moment : moments(each)) {
                Optional<PressProfile> profile = each.at(moment.plate());
                profile.ifPresent(found -> compareTorques(found, moment));
                checked += profile.isPresent() ? 1 : 0;
            }
        }
        assertThat(checked).as("moments that were looked at").isGreaterThan(SLEDS);
    }

    @Test
    void everyHeldTorqueByItself() {
        for (Case each : cases(4)) {
            PlainMoment still = new PlainMoment(each.plain, Phase.HELD, 0.4);
            if (still.smooth()) {
                each.at(still.plate()).ifPresent(found -> compareTorques(found, still));
            }
        }
    }

    private static void compareTorques(PressProfile profile, PlainMoment moment) {
        double force = moment.force();
        assertThat(profile.force(moment.phase, 0)).isCloseTo(force, within(CLOSE * (1 + force)));
        for (int leg = 0; leg < moment.sled.legs.size(); leg++) {
            PressLimb limb = profile.limbs().get(leg);
            double along = moment.sled.share(leg) * force;
            double[] push = {along, along * Math.tan(limb.pushAngle(moment.phase, 0))};
            for (Joint joint : Joint.LEG) {
                double torque = moment.torque(leg, joint.ordinal(), push);
                // a moment arm is below a metre, so a torque is no larger than the force's number
                assertThat(limb.torque(joint, moment.phase, 0))
                        .as("%s of leg %s, %s", joint, leg, moment.sled.task)
                        .isCloseTo(torque, within(CLOSE * (1 + along)));
            }
        }
    }

    /** A control: a carriage a thousandth too heavy does not pass. */
    @Test
    void aThousandthOfAMassIsSeen() {
        int seen = 0;
        int looked = 0;
        for (Case each : cases(5)) {
            PlainSled heavier = new PlainSled(heavier(each.task, 1.001));
            for (PlainMoment moment : moments(new Case(each.task, heavier))) {
                Optional<PressProfile> profile = each.at(moment.plate());
                if (profile.isPresent()) {
                    looked++;
                    seen += mismatch(profile.get(), moment) > 10 * CLOSE ? 1 : 0;
                }
            }
        }
        assertThat(seen).isGreaterThan(looked * 9 / 10);
    }

    private static PressTask heavier(PressTask task, double factor) {
        Carriage old = task.sled().carriage();
        Carriage carriage = new Carriage(factor * old.mass(), old.counterweight(), old.friction(), old.mostPlates());
        return new PressTask(
                task.person(),
                new Sled(
                        task.sled().rail(),
                        carriage,
                        task.sled().stops(),
                        task.sled().stack()),
                task.stance(),
                task.pushing(),
                task.tempo(),
                task.loading(),
                task.positions());
    }
}
