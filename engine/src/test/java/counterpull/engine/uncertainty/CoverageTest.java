package counterpull.engine.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;
import counterpull.engine.profile.Limb;
import counterpull.engine.profile.Person;
import counterpull.engine.profile.PressTask;
import counterpull.engine.profile.Trials;
import counterpull.engine.strength.AngleRange;
import counterpull.engine.strength.DrawnCurve;
import counterpull.engine.strength.LimbStrength;
import counterpull.engine.strength.SpeedLaw;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * A simulated bench with a known truth: somebody measures everything about a press, missing each input by its standard uncertainty, and
 * the 90 % band of what they measured holds the true largest effort nine times in ten.
 */
class CoverageTest {
    private static final int TRIALS = 200;
    private static final int DRAWS = 300;

    /** Share of the trials in which the band holds the truth when the measurer believes in {@code factor} of the real uncertainty. */
    private static double coverage(double factor) {
        PressTask truth = Trials.with(UnsureTasks.onAStop().with(Trials.pair(UnsureTasks.strong(0.12 * factor))), 7);
        double peak = Hardest.of(PressTrial.of(truth).profile(), List.of(Joint.KNEE))
                .orElseThrow()
                .effort();
        Doubts<PressTrial> missing = Doubts.of(truth.with(Trials.pair(UnsureTasks.strong(0.12))), scaled(1));
        int held = 0;
        for (int trial = 0; trial < TRIALS; trial++) {
            double[] z = new double[missing.dimensions()];
            new Generator(77, trial).normals(z);
            PressTrial drawn = missing.drawn(z);
            PressTrial measured = drawn.with(believed(drawn.task(), factor));
            Looked knee = UnsureTasks.KNEE;
            Band band = new Sampling<>(Doubts.of(measured, scaled(factor)), knee, trial, DRAWS)
                    .bands()
                    .peak();
            held += band.low() <= peak && peak <= band.high() ? 1 : 0;
        }
        return (double) held / TRIALS;
    }

    /** What was measured, with the measurer's own belief in how sure the strength is. */
    private static PressTask believed(PressTask measured, double factor) {
        List<counterpull.engine.profile.Limb> limbs = new java.util.ArrayList<>();
        for (Limb limb : measured.person().limbs()) {
            LimbStrength strength = limb.strength();
            for (Action action : Action.LEG) {
                double torque = strength.of(action).orElseThrow().held(1);
                strength = strength.with(
                        action,
                        DrawnCurve.flat(
                                torque, new AngleRange(-Math.PI, Math.PI), 0.12 * factor, new SpeedLaw.AnySpeed()));
            }
            limbs.add(limb.with(strength));
        }
        return measured.with(new Person(measured.person().mass(), limbs));
    }

    private static Stated scaled(double factor) {
        Map<Input, Double> scaled = new EnumMap<>(Input.class);
        for (Input input : Input.values()) {
            scaled.put(input, input.usual() * factor);
        }
        return new Stated(scaled, Map.of(), Map.of());
    }

    /** 200 trials of 0.9: standard error 0.021, so 0.84 to 0.96 is three of them. The largest of two knees' efforts is biased a little upward. */
    @Test
    void theBandHoldsTheTruthNineTimesInTen() {
        assertThat(coverage(1)).isBetween(0.84, 0.96);
    }

    /** The control: one who believes in half of the uncertainty is held to it only six times in ten. */
    @Test
    void halfTheUncertaintyDoesNot() {
        assertThat(coverage(0.5)).isLessThan(0.75);
    }
}
