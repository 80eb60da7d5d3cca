package counterpull.letgo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** What every machine keeps to, at seeded random places of seeded random sleds, levers, carriages and a bead. */
class LoneMachineContractTest {
    private static final int MACHINES = 300;
    private static final double STEP = 1e-5;

    @Test
    void forcesAreTheSlopesOfEnergies() {
        RandomMachines machines = new RandomMachines(11);
        for (int k = 0; k < MACHINES; k++) {
            LoneMachine machine = k % 10 == 0 ? new Bead(2, machines.between(0.2, 2)) : machines.machine();
            double x = machines.release(machine).place();
            // five-point differences: error near h⁴, and rounding of energies near 1e-13 · 1000 J / h
            assertThat(machine.weight(x))
                    .as("weight at " + x)
                    .isCloseTo(-slope(machine::weightEnergy, x), within(1e-5));
            assertThat(machine.storing(x))
                    .as("rubber at " + x)
                    .isCloseTo(-slope(machine::rubberEnergy, x), within(1e-2));
            assertThat(machine.inertiaSlope(x)).isCloseTo(slope(machine::inertia, x), within(1e-5));
            assertThat(machine.rubbedInertiaSlope(x)).isCloseTo(slope(machine::rubbedInertia, x), within(1e-5));
        }
    }

    @Test
    void rubberNeverGivesMoreThanItTakes() {
        RandomMachines machines = new RandomMachines(12);
        for (int k = 0; k < MACHINES; k++) {
            LoneMachine machine = machines.machine();
            double x = machines.release(machine).place();
            double storing = machine.storing(x);
            double rounding = 1e-12 * Math.abs(storing);
            assertThat(machine.rubber(x, Sense.UP)).isLessThanOrEqualTo(storing + rounding);
            assertThat(machine.rubber(x, Sense.DOWN)).isGreaterThanOrEqualTo(storing - rounding);
            assertThat(machine.friction(x)).isNotNegative();
            assertThat(machine.holding(x)).isGreaterThanOrEqualTo(machine.friction(x));
            assertThat(machine.inertia(x)).isPositive();
            assertThat(Math.abs(machine.rubbedInertia(x))).isLessThan(machine.inertia(x));
        }
    }

    private static double slope(java.util.function.DoubleUnaryOperator of, double x) {
        double near = of.applyAsDouble(x + STEP) - of.applyAsDouble(x - STEP);
        double far = of.applyAsDouble(x + 2 * STEP) - of.applyAsDouble(x - 2 * STEP);
        return (8 * near - far) / (12 * STEP);
    }
}
