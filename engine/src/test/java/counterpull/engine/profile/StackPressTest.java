package counterpull.engine.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.body.Joint;
import counterpull.engine.load.Carriage;
import counterpull.engine.load.Counterweight;
import counterpull.engine.load.Friction;
import counterpull.engine.load.Loaded;
import counterpull.engine.load.Part;
import counterpull.engine.load.StackLine;
import counterpull.engine.motion.FullStop;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.Rail;
import counterpull.engine.motion.Ride;
import counterpull.engine.motion.Stops;
import counterpull.engine.motion.Tempo;
import counterpull.engine.planar.Angles;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Seated presses on a weight stack: closed forms. */
class StackPressTest {
    private static final double G = 9.80665;
    // sums of some hundred newtons, rounded a few times
    private static final double ROUNDING = 1e-9;

    private static PressTask task(Rail rail, double carriage, StackLine line) {
        Carriage riding = new Carriage(carriage, Counterweight.none(), Friction.none(), 400);
        return Trials.with(Trials.task(), new Sled(rail, riding, new Stops(), Optional.of(line)));
    }

    private static Rail rail(double degrees, Ride ride) {
        return new Rail(Angles.radians(degrees), ride, 0, 1);
    }

    /** Level rail, nothing on it, no friction: F = m(g + ẍ/R)/R with m = 60 kg, R = 2. */
    @Test
    void aLevelPlateOnAFrictionlessStack() {
        PressProfile profile = PressProfile.of(task(rail(0, Ride.PLATE), 0, new StackLine(2, 0, Loaded.with(0), 0)));
        assertThat(profile.force(Phase.HELD, 7)).isCloseTo(294.1995, within(ROUNDING));
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < profile.positions(); i++) {
                double a = profile.ground().motion().acceleration(phase, i);
                assertThat(profile.force(phase, i)).isCloseTo(60 * (G + a / 2) / 2, within(ROUNDING));
            }
        }
        // 60/2² kg are felt: 15 (10/√3) D/T², T = 2 s
        double travel = profile.ground().motion().stroke().travel();
        assertThat(profile.turnaround().inertialForce())
                .isCloseTo(15 * 10 / Math.sqrt(3) * travel / 4, within(ROUNDING));
    }

    /** Friction of the line takes its share of weight and inertia of the stack, of either sign by phase; what moves along is felt whole. */
    @Test
    void frictionCarriageAndLineByHand() {
        StackLine line = new StackLine(2, 0.1, Loaded.with(5), 3);
        PressProfile profile = PressProfile.of(task(rail(0, Ride.PLATE), 12, line));
        for (int i = 0; i < profile.positions(); i++) {
            for (Phase phase : Phase.values()) {
                double a = profile.ground().motion().acceleration(phase, i);
                double k = 1 + 0.1 * phase.sense();
                assertThat(profile.force(phase, i)).isCloseTo(k * 65 * (G + a / 2) / 2 + 15 * a, within(ROUNDING));
            }
        }
        // at rest at the bottom: 0.1 × 65 × 9.80665 / 2
        assertThat(profile.force(Part.FRICTION, Phase.LIFTING, 0)).isCloseTo(31.8716125, within(ROUNDING));
        assertThat(profile.force(Part.FRICTION, Phase.HELD, 0)).isZero();
    }

    /** On an upright rail a 1:1 stack is the same as so many kilograms on the carriage, in every number. */
    @Test
    void oneToOneOnAnUprightRailIsAPlainCarriage() {
        Rail upright = rail(90, Ride.PLATE);
        PressProfile stack = PressProfile.of(task(upright, 25, new StackLine(1, 0, Loaded.with(0), 0)));
        Carriage riding = new Carriage(25, Counterweight.none(), Friction.none(), 400);
        PressProfile plain = PressProfile.of(Trials.with(Trials.task(), new Sled(upright, riding, new Stops())));
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < plain.positions(); i++) {
                assertThat(stack.force(phase, i)).isCloseTo(plain.force(phase, i), within(ROUNDING));
                for (Joint joint : Joint.LEG) {
                    assertThat(stack.limbs().get(0).torque(joint, phase, i))
                            .isCloseTo(plain.limbs().get(0).torque(joint, phase, i), within(ROUNDING));
                }
            }
        }
        assertThat(stack.turnaround().inertialForce())
                .isCloseTo(plain.turnaround().inertialForce(), within(ROUNDING));
        assertThat(stack.task().sled().restingForce(60))
                .isCloseTo(plain.task().sled().restingForce(60), within(ROUNDING));
    }

    /** A seat that rides away from a fixed plate lifts the stack; on a level rail the person's weight asks nothing of it. */
    @Test
    void aRidingSeatLiftsTheStackAsItMovesAway() {
        PressProfile profile = PressProfile.of(task(rail(0, Ride.SEAT), 20, new StackLine(1, 0.05, Loaded.with(0), 0)));
        assertThat(profile.plate(20)).isGreaterThan(profile.plate(0));
        assertThat(profile.force(Phase.HELD, 3)).isCloseTo(588.399, within(ROUNDING));
        assertThat(profile.force(Phase.LIFTING, 0)).isCloseTo(588.399 * 1.05, within(ROUNDING));
        assertThat(profile.force(Phase.LOWERING, 20)).isCloseTo(588.399 * 0.95, within(ROUNDING));
        // carriage 20, stack 60 and the person without the legs are felt
        double felt = 80 + profile.task().person().restOfBody();
        double travel = profile.ground().motion().stroke().travel();
        assertThat(profile.turnaround().inertialForce())
                .isCloseTo(felt * 10 / Math.sqrt(3) * travel / 4, within(ROUNDING));
    }

    /** A stack with its own weight beside plates that ride on the carriage. */
    @Test
    void platesMayRideBesideAStackThatTakesNone() {
        PressProfile profile =
                PressProfile.of(task(rail(30, Ride.PLATE), 10, new StackLine(4, 0, Loaded.always(40), 0)));
        // (10 + 60) g sin 30° + 40 g / 4
        assertThat(profile.force(Phase.HELD, 3)).isCloseTo(45 * G, within(ROUNDING));
        assertThat(profile.task().sled().restingForce(60)).isCloseTo(45 * G, within(ROUNDING));
        assertThat(profile.task().sled().feltMass(60)).isCloseTo(72.5, within(ROUNDING));
        assertThat(profile.task().sled().feltPerKilogram()).isEqualTo(1);
    }

    @Test
    void theSumOfThePartsIsTheForceAndWhyNamesTheStack() {
        PressProfile profile = PressProfile.of(task(rail(0, Ride.PLATE), 12, new StackLine(2, 0.1, Loaded.with(5), 3)));
        double sum = 0;
        for (Part part : Part.values()) {
            sum += profile.force(part, Phase.LIFTING, 4);
        }
        assertThat(sum).isCloseTo(profile.force(Phase.LIFTING, 4), within(ROUNDING));
        assertThat(profile.why().push(Phase.LIFTING, 4).summands())
                .extracting(Why.Summand::label)
                .contains("stack", "stack, chosen kilograms", "what moves with the line");
    }

    @Test
    void aStrokeTooQuickForTheStackIsRefused() {
        PressTask slow = task(rail(0, Ride.PLATE), 40, new StackLine(1, 0, Loaded.with(0), 0));
        PressTask quick = Trials.with(slow, new FullStop(new Tempo.Seconds(0.3, 0, 0.3, 0)));
        assertThatThrownBy(() -> PressProfile.of(quick)).isInstanceOfSatisfying(Refusal.class, refusal -> {
            assertThat(refusal.fault()).isEqualTo(Fault.SLACK_STACK);
            assertThat(refusal.value()).isLessThan(-G);
        });
    }
}
