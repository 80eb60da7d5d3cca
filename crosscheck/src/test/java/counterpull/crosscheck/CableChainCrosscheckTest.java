package counterpull.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.crosscheck.Stencil;
import counterpull.engine.planar.Vec;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Chains of one to six segments on a first joint that moves and accelerates, with a load on every segment and cables to stacks
 * anywhere, in the engine and in the multibody library. The line's acceleration is summed link by link for the one, and taken
 * from the library's own velocity and acceleration of the point for the other.
 *
 * <p>Tolerance: 1e-9 of the largest torque or force, far above the rounding of some hundred operations (1e-14) and far below any
 * wrong term.
 */
class CableChainCrosscheckTest {
    private static final double CLOSE = 1e-9;
    private static final int CHAINS = 250;
    private static final double FRICTION = 0.1;
    private static final Vec STILL = new Vec(0, 0);

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6})
    void torquesAndBaseForce(int segments) {
        Random random = new Random(1600 + segments);
        for (int k = 0; k < CHAINS; k++) {
            MovingChain moving = laden(segments, random);
            assertThat(mismatch(moving, new LibraryRoute(moving).solve(StackCable::tension)))
                    .as("chain %s of %s segments", k, segments)
                    .isLessThan(CLOSE);
        }
    }

    /** Controls: what one might well get wrong in a cable is seen. */
    @Test
    void aWrongCableIsSeen() {
        Map<String, StackCable.Law> wrong = Map.of(
                "a millionth more tension", (stack, line, g) -> (1 + 1e-6) * StackCable.tension(stack, line, g),
                "no inertia of the stack", (stack, line, g) -> StackCable.tension(stack, line.withAcceleration(0), g),
                "friction the other way", (stack, line, g) -> StackCable.tension(stack, line.backwards(), g));
        wrong.forEach((name, law) -> assertSeen(name, moving -> new LibraryRoute(moving).solve(law)));
    }

    /** Controls: a first joint held still or not accelerated in one of the two is seen, the former through cables alone. */
    @Test
    void aWrongFirstJointIsSeen() {
        assertSeen(
                "first joint without speed",
                moving -> new LibraryRoute(moving, STILL, moving.baseAcceleration).solve(StackCable::tension));
        assertSeen(
                "first joint without acceleration",
                moving -> new LibraryRoute(moving, moving.baseVelocity, STILL).solve(StackCable::tension));
    }

    private static void assertSeen(String mistake, Function<MovingChain, LibraryRoute> wrong) {
        Random random = new Random(7);
        for (int k = 0; k < CHAINS; k++) {
            MovingChain moving = laden(1 + k % 6, random);
            assertThat(mismatch(moving, wrong.apply(moving)))
                    .as("%s, chain %s", mistake, k)
                    .isGreaterThan(CLOSE);
        }
    }

    /** The two ways to a line's acceleration against a third, its length itself differenced twice in time. */
    @Test
    void aLineAcceleratesAsItsLengthDoes() {
        Random random = new Random(8);
        for (int k = 0; k < CHAINS; k++) {
            MovingChain moving = laden(1 + k % 6, random);
            LibraryRoute library = new LibraryRoute(moving);
            for (StackCable cable : moving.cables) {
                double summed = moving.line(cable, 0).acceleration();
                double differenced = Stencil.second(t -> moving.line(cable, t).length(), 0, 4e-3);
                double size = 1 + Math.abs(summed);
                // rounding, 1e-16 × 3 m / (4 ms)², is some 1e-10 m/s²; the step's own error on these chains is no
                // larger
                assertThat(differenced).as("differenced, chain %s", k).isCloseTo(summed, within(1e-8 * size));
                assertThat(library.line(cable).acceleration())
                        .as("the library's, chain %s", k)
                        .isCloseTo(summed, within(1e-11 * size));
            }
        }
    }

    /**
     * Without friction, what joints, first joint and loads put in is what chain and stacks gain: so the law of the tension stands
     * on more than its own formula, R in the weight, R² in the inertia.
     */
    @Test
    void powerIsGrowthOfEnergy() {
        Random random = new Random(9);
        for (int k = 0; k < CHAINS; k++) {
            MovingChain moving = new MovingChain(1 + k % 6, random);
            moving.load(3);
            moving.tie(2, 0);
            double power = new EngineRoute(moving).power();
            double growth = Stencil.first(moving::energy, 0, 1e-3);
            // some kJ differenced over 1 ms: rounding leaves 1e-12 of it
            assertThat(growth).as("chain %s", k).isCloseTo(power, within(1e-10 * (1000 + Math.abs(power))));
        }
    }

    private static MovingChain laden(int segments, Random random) {
        MovingChain moving = new MovingChain(segments, random);
        moving.load(segments + random.nextInt(3));
        moving.tie(1 + random.nextInt(3), FRICTION);
        return moving;
    }

    private static double mismatch(MovingChain moving, LibraryRoute library) {
        EngineRoute engine = new EngineRoute(moving);
        double size = library.baseForce().norm();
        double most = engine.baseForce().minus(library.baseForce()).norm();
        for (int i = 0; i < engine.torque.length; i++) {
            size = Math.max(size, Math.abs(library.torque[i]));
            most = Math.max(most, Math.abs(engine.torque[i] - library.torque[i]));
        }
        return most / size;
    }
}
