package counterpull.engine.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.body.Joint;
import counterpull.engine.profile.PressTask;
import counterpull.engine.strength.StrengthCurve;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What contributes to the spread of the largest effort. */
class ContributionsTest {
    /** Every usual uncertainty a fifth as large: small enough for slopes to tell everything. */
    private static Stated small() {
        Map<Input, Double> small = new EnumMap<>(Input.class);
        for (Input input : Input.values()) {
            small.put(input, input.usual() / 5);
        }
        return new Stated(small, Map.of(), Map.of());
    }

    /** ±1 standard deviation of a pure product. */
    @Test
    void aProductSplitsIntoItsFactors() {
        Stated stated = Stated.certain().with(Input.READINGS, 0.06);
        Contributions found = Contributions.of(Doubts.of(UnsureTasks.product(0.1), stated), UnsureTasks.KNEE.joints())
                .orElseThrow();
        Contribution strength = found.ranked().get(0);
        Contribution readings = found.ranked().get(1);
        assertThat(strength.name()).isEqualTo("left knee extension strength");
        assertThat(strength.effect()).isCloseTo(0.1, within(1e-9));
        assertThat(strength.spread().value()).isCloseTo(0.1, within(1e-12));
        assertThat(readings.effect()).isCloseTo(Math.log(1.06 / 0.94) / 2, within(1e-9));
        assertThat(readings.high() / found.hardest().effort()).isCloseTo(1.06, within(1e-9));
        assertThat(readings.share()).isCloseTo(0.2653, within(0.001));
        assertThat(found.ranked().subList(2, found.ranked().size()))
                .as("strength that is not asked for")
                .allMatch(one -> one.effect() == 0);
        assertThat(found.total()).isCloseTo(Math.hypot(0.1, readings.effect()), within(1e-9));
    }

    /**
     * In the linear regime the contributions add up to the variance of the draws. 10,000 draws miss the width of the middle nine tenths by
     * about 1.3 %; the largest of two limbs' efforts is no smooth function, so one limb limits here by its strength; 4 % allows for both.
     */
    @Test
    void theyAddUpToTheVarianceOfTheDraws() {
        PressTask task = UnsureTasks.certain();
        Doubts<PressTrial> doubts = Doubts.of(task, small());
        Contributions found = Contributions.of(doubts, List.of(Joint.KNEE)).orElseThrow();
        EffortBands bands = new Sampling<>(doubts, UnsureTasks.KNEE, 3, 10_000).bands();
        double width = Math.log(bands.peak().high() / bands.peak().low());
        assertThat(width / (2 * StrengthCurve.NINETY_PERCENT)).isCloseTo(found.total(), within(0.04 * found.total()));
        double sum = found.ranked().stream().mapToDouble(Contribution::share).sum();
        assertThat(sum).isCloseTo(1, within(1e-12));
    }

    @Test
    void theyAreRankedAndNamed() {
        Contributions found = Contributions.of(Doubts.of(UnsureTasks.press(), Stated.nothing()), List.of(Joint.KNEE))
                .orElseThrow();
        for (int k = 1; k < found.ranked().size(); k++) {
            assertThat(found.ranked().get(k).variance())
                    .isLessThanOrEqualTo(found.ranked().get(k - 1).variance());
        }
        assertThat(found.ranked())
                .extracting(Contribution::name)
                .contains(
                        "the rail's angle",
                        "pull of T1",
                        "natural length of T1",
                        "place of the anchor anchor",
                        "which way the push goes",
                        "thigh, hip to knee, from stature",
                        "left hip flexion strength");
        assertThat(found.immovable()).isEmpty();
    }

    @Test
    void nothingKnownContributesNothing() {
        PressTask unknown = counterpull.engine.profile.Trials.task(counterpull.engine.strength.LimbStrength.none());
        assertThat(Contributions.of(Doubts.of(unknown, Stated.nothing()), Joint.LEG))
                .isEmpty();
    }
}
