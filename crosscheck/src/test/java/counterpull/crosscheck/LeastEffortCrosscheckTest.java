package counterpull.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Refusal;
import counterpull.engine.body.Joint;
import counterpull.engine.body.Sex;
import counterpull.engine.crosscheck.RandomSled;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.Capacity;
import counterpull.engine.profile.Limb;
import counterpull.engine.profile.Person;
import counterpull.engine.profile.PressLimb;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.PressTask;
import counterpull.engine.profile.Push;
import counterpull.engine.profile.Pushing;
import counterpull.engine.strength.LimbStrength;
import counterpull.engine.strength.Physique;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/**
 * The push of least effort against a general quadratic program: least Σ (p/S⁺)² + (q/S⁻)² with torque = p − q, p and q not negative,
 * the tangent of the push angle within its limits; a sense that is not known costs nothing. What is compared is the sum of squared efforts, because the angle itself may not be
 * the only one.
 */
class LeastEffortCrosscheckTest {
    private static final int SLEDS = 60;
    private static final double LIMIT = Math.toRadians(20);

    /** The solver stops at about 1e-9 of a sum near 1. */
    private static final double CLOSE = 1e-7;

    private final Random random = new Random(9);

    private PressTask task(PressTask sled) {
        List<Limb> limbs = new ArrayList<>();
        for (Limb limb : sled.person().limbs()) {
            Physique physique = new Physique(Sex.MALE, 20 + 50 * random.nextDouble(), 80, 1.75);
            LimbStrength strength = LimbStrength.published(physique);
            // now and then nothing is known of flexion: its effort is nothing
            strength = random.nextInt(3) == 0 ? strength.without(Joint.KNEE.opposite()) : strength;
            limbs.add(new Limb(limb.side(), limb.leg(), limb.share(), limb.range(), limb.ranges(), strength));
        }
        return new PressTask(
                new Person(sled.person().mass(), limbs),
                sled.sled(),
                sled.stance(),
                new Pushing(new Push.LeastEffort(-LIMIT, LIMIT), 0),
                sled.tempo(),
                sled.loading(),
                sled.positions());
    }

    private static Optional<PressProfile> computed(PressTask task) {
        try {
            return Optional.of(PressProfile.of(task));
        } catch (Refusal refusal) {
            // contact lost, or no range: not what is looked at here
            return Optional.empty();
        }
    }

    @Test
    void theQuadraticProgramFindsNothingLess() {
        RandomSled sleds = new RandomSled(31);
        int checked = 0;
        int inside = 0;
        for (int k = 0; k < SLEDS; k++) {
            Optional<PressProfile> profile = computed(task(sleds.next()));
            if (profile.isPresent()) {
                for (int limb = 0; limb < profile.get().limbs().size(); limb++) {
                    for (Phase phase : Phase.values()) {
                        inside += check(new Cell(profile.get(), limb, phase)) ? 1 : 0;
                        checked++;
                    }
                }
            }
        }
        assertThat(checked).as("cells that were looked at").isGreaterThan(60);
        assertThat(inside).as("cells whose least lies between the limits").isGreaterThan(20);
    }

    /** One limb and phase in the middle of the range. */
    private record Cell(PressProfile profile, int limb, Phase phase) {
        PressLimb limbProfile() {
            return profile.limbs().get(limb);
        }

        double torque(Joint joint, double tangent) {
            return limbProfile().torquePushing(joint, phase, 2, tangent);
        }

        /** Infinite where the sense is not known: it adds no effort. */
        double named(Joint joint) {
            return knownOr(capacity().named(limb, joint, phase, 2));
        }

        double opposite(Joint joint) {
            return knownOr(capacity().opposite(limb, joint, phase, 2));
        }

        private static double knownOr(double strength) {
            return strength > 0 ? strength : Double.POSITIVE_INFINITY;
        }

        private Capacity capacity() {
            return profile.ground().capacity();
        }

        double squares(double tangent) {
            double sum = 0;
            for (Joint joint : Joint.LEG) {
                double torque = torque(joint, tangent);
                double effort = torque >= 0 ? torque / named(joint) : torque / opposite(joint);
                sum += effort * effort;
            }
            return sum;
        }
    }

    /** Whether the least lies inside the limits. */
    private static boolean check(Cell cell) {
        double angle = cell.limbProfile().pushAngle(cell.phase, 2);
        double ours = cell.squares(Math.tan(angle));
        assertThat(ours).as("%s", cell.phase).isCloseTo(program(cell), within(CLOSE * (1 + ours)));
        return Math.abs(angle) < LIMIT - 1e-6;
    }

    private static double program(Cell cell) {
        ExpressionsBasedModel model = new ExpressionsBasedModel();
        Variable tangent = model.newVariable("tangent").lower(-Math.tan(LIMIT)).upper(Math.tan(LIMIT));
        Expression squares = model.newExpression("squares").weight(1);
        for (Joint joint : Joint.LEG) {
            joint(model, cell, joint, new Shared(tangent, squares));
        }
        Optimisation.Result result = model.minimise();
        assertThat(result.getState().isOptimal()).as("%s", result).isTrue();
        return cell.squares(result.doubleValue(model.indexOf(tangent)));
    }

    private record Shared(Variable tangent, Expression squares) {}

    private static void joint(ExpressionsBasedModel model, Cell cell, Joint joint, Shared shared) {
        double straight = cell.torque(joint, 0);
        double slope = cell.torque(joint, 1) - straight;
        // divided by a strength, so that all rows have one size
        double size = Math.min(1000, Math.min(cell.named(joint), cell.opposite(joint)));
        Variable asked = model.newVariable(joint + " asked").lower(0);
        Variable reversed = model.newVariable(joint + " reversed").lower(0);
        costs(shared.squares, asked, size / cell.named(joint));
        costs(shared.squares, reversed, size / cell.opposite(joint));
        model.newExpression(joint.name())
                .set(asked, 1)
                .set(reversed, -1)
                .set(shared.tangent, -slope / size)
                .level(straight / size);
    }

    // a sense that is not known costs nothing
    private static void costs(Expression squares, Variable torque, double effortPerUnit) {
        if (effortPerUnit > 0) {
            squares.set(torque, torque, effortPerUnit * effortPerUnit);
        }
    }
}
