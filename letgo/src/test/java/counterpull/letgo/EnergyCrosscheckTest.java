package counterpull.letgo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.elastic.Strand;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.LineSeries;
import counterpull.engine.load.SledFrame;
import counterpull.engine.profile.PressTask;
import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Energy of seeded random falls: the account closes, and a fall in one way arrives with the speed that energies alone tell. */
class EnergyCrosscheckTest {
    private static final int MACHINES = 1500;

    /**
     * What is promised is 1e-3. Steps are held to 1e-11, but a step that crosses a kink (rubber that tightens, a reading of a cam) is off by more than its own estimate.
     */
    private static final double HELD_TO = 1e-8;

    @Test
    void everyAccountCloses() {
        RandomMachines machines = new RandomMachines(31);
        Map<Ending, Integer> endings = new EnumMap<>(Ending.class);
        for (int k = 0; k < MACHINES; k++) {
            LoneMachine machine = machines.machine();
            Release release = machines.release(machine);
            Outcome outcome = LetGo.of(machine, release);
            endings.merge(outcome.ending(), 1, Integer::sum);
            EnergyAccount energy = outcome.energy();
            assertThat(energy.error()).as("machine %s, %s", k, outcome).isLessThan(HELD_TO);
            assertThat(energy.friction()).isGreaterThan(-1e-9);
            assertThat(energy.hysteresis()).isGreaterThan(-1e-9);
        }
        assertThat(endings)
                .as("the draw has every kind of end")
                .containsKeys(Ending.ON_THE_STOP, Ending.NOTHING_CATCHES_IT, Ending.AT_THE_TOP, Ending.AT_REST);
    }

    /** The same speed without any integration: what the weights and the rubber gave, less friction over the way. */
    @Test
    void aFallInOneWayArrivesWithTheSpeedOfItsEnergies() {
        RandomMachines machines = new RandomMachines(32);
        int seen = 0;
        for (int k = 0; k < MACHINES; k++) {
            PressTask task = machines.task();
            FreeSled sled = FreeSled.of(task);
            Release release = machines.release(sled);
            Outcome outcome = LetGo.of(sled, release);
            if (outcome.way().turns() == 0 && outcome.end().time() > 0) {
                double kinetic = sled.inertia(0) * release.speed() * release.speed() / 2
                        + given(sled, task, release.place(), outcome.end().place());
                // energies of up to a few thousand joules
                assertThat(outcome.end().kinetic()).as("machine %s", k).isCloseTo(kinetic, within(1e-6));
                seen++;
            }
        }
        assertThat(seen).isGreaterThan(MACHINES / 2);
    }

    private static double given(FreeSled sled, PressTask task, double from, double to) {
        double sum = sled.weight(0) * (to - from) - sled.friction(0) * Math.abs(to - from);
        for (ElasticLine line : task.loading().lines()) {
            sum += line.strands() * given(line, task, sled.plateAt(from), sled.plateAt(to));
        }
        return sum;
    }

    /** From the lengths at both ends and, where the line goes past its shortest path, in between. */
    private static double given(ElasticLine line, PressTask task, double from, double to) {
        double shortest = shortest(line, task);
        boolean between = (from - shortest) * (to - shortest) < 0;
        return between
                ? oneWay(line, task, from, shortest) + oneWay(line, task, shortest, to)
                : oneWay(line, task, from, to);
    }

    private static double oneWay(ElasticLine line, PressTask task, double from, double to) {
        Strand strand = line.strand();
        double before = length(line, task, from);
        double after = length(line, task, to);
        return after < before
                ? strand.energyReturned(before) - strand.energyReturned(after)
                : strand.energy(before) - strand.energy(after);
    }

    private static double length(ElasticLine line, PressTask task, double plate) {
        SledFrame frame = new SledFrame(task.sled().rail(), task.stance().seat());
        return LineSeries.of(line, new double[] {plate}, frame).rubberLength(0);
    }

    /** Where anchor and attachment are abreast: the way from one to the other along the rail changes by as much as the plate does. */
    private static double shortest(ElasticLine line, PressTask task) {
        SledFrame frame = new SledFrame(task.sled().rail(), task.stance().seat());
        double at0 = frame.toAnchor(line.ends(), 0).x();
        double at1 = frame.toAnchor(line.ends(), 1).x();
        return at0 / (at0 - at1);
    }

    /** The control: a hundredth too much energy in the weights, or a loss that is left out, opens the account. */
    @Test
    void aWrongEnergyIsFound() {
        RandomMachines machines = new RandomMachines(33);
        int moved = 0;
        for (int k = 0; k < 50; k++) {
            LoneMachine machine = machines.machine();
            Outcome right = LetGo.of(machine, machines.release(machine));
            LoneMachine wrong = new Wrapped(machine) {
                @Override
                public double weightEnergy(double x) {
                    return 1.01 * super.weightEnergy(x);
                }
            };
            EnergyAccount energy = right.energy();
            if (Math.abs(energy.weight()) > 0.2 * energy.exchanged() && energy.exchanged() > 0) {
                assertThat(LetGo.of(wrong, right.release()).energy().closes())
                        .as("machine %s", k)
                        .isFalse();
                moved++;
            }
        }
        assertThat(moved).isGreaterThan(10);
    }
}
