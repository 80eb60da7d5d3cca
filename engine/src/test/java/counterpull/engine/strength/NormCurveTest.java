package counterpull.engine.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Refusal;
import counterpull.engine.body.Action;
import counterpull.engine.body.Sex;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class NormCurveTest {
    private static final Physique MAN = new Physique(Sex.MALE, 24, 77, 1.78);
    private static final Physique WOMAN = new Physique(Sex.FEMALE, 24, 62, 1.66);

    private static double held(Action action, Physique person, double degrees) {
        return NormCurve.of(action, person).held(Math.toRadians(degrees));
    }

    @Test
    void noActionHasTwoSources() {
        Set<Action> seen = new HashSet<>();
        for (NormSource source : NormSource.ALL) {
            for (Action action : source.actions()) {
                assertThat(seen.add(action)).as("%s twice", action).isTrue();
                assertThat(Anderson2007.covers(action))
                        .as("%s in Anderson too", action)
                        .isFalse();
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Action.class)
    void everyActionHasAPriorThatNamesItsSource(Action action) {
        Prior prior = Prior.of(action, WOMAN).orElseThrow();
        assertThat(prior.source()).containsPattern("\\p{Lu}\\p{L}+.* \\d{4}").contains("not this person");
        assertThat(LimbStrength.published(WOMAN).of(action)).isPresent();
    }

    @Test
    void anActionOfTheLegHasNoNorm() {
        assertThatThrownBy(() -> NormCurve.of(Action.KNEE_EXTENSION, MAN))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("knee extension");
    }

    @Test
    void aWordOnWhatWasNotMeasured() {
        for (Action action : List.of(Action.SHOULDER_EXTENSION, Action.SHOULDER_ABDUCTION, Action.HIP_ADDUCTION)) {
            assertThat(NormCurve.of(action, MAN).source()).contains("by ratio");
        }
        assertThat(NormCurve.of(Action.ELBOW_EXTENSION, MAN).source()).contains("from memory");
        assertThat(NormCurve.of(Action.HIP_ABDUCTION, MAN).source()).contains("hopeful");
    }

    @Test
    void torqueGoesWithBodyMass() {
        Physique heavier = new Physique(Sex.MALE, 24, 1.2 * 77, 1.78);
        for (NormSource source : NormSource.ALL) {
            for (Action action : source.actions()) {
                double ratio = held(action, heavier, 10) / held(action, MAN, 10);
                assertThat(ratio).isCloseTo(1.2, within(1e-12));
            }
        }
    }

    @Test
    void nobodyGainsWithAgeAndTheBandWidens() {
        for (NormSource source : NormSource.ALL) {
            for (Action action : source.actions()) {
                double before = held(action, WOMAN, 10);
                for (double age = 25; age <= 110; age++) {
                    NormCurve curve = NormCurve.of(action, new Physique(Sex.FEMALE, age, 62, 1.66));
                    assertThat(curve.held(Math.toRadians(10))).isPositive().isLessThanOrEqualTo(before);
                    before = curve.held(Math.toRadians(10));
                }
                double at60 = NormCurve.of(action, new Physique(Sex.FEMALE, 60, 62, 1.66))
                        .logSd(0.2);
                double at90 = NormCurve.of(action, new Physique(Sex.FEMALE, 90, 62, 1.66))
                        .logSd(0.2);
                assertThat(at90).isGreaterThan(at60 + 0.02);
            }
        }
    }

    @Test
    void whatIsTakenFromElsewhereIsLessSure() {
        double measured = NormCurve.of(Action.SHOULDER_FLEXION, MAN).logSd(0.5);
        assertThat(NormCurve.of(Action.SHOULDER_EXTENSION, MAN).logSd(0.5)).isGreaterThan(measured + 0.05);
        assertThat(NormCurve.of(Action.HIP_ADDUCTION, MAN).logSd(0.3))
                .isGreaterThan(NormCurve.of(Action.HIP_ABDUCTION, MAN).logSd(0.3));
    }

    @Test
    void aPrintedSpreadOfAFewPeopleIsNotBelieved() {
        BendAssumptions assumed =
                NormCurve.of(Action.SHOULDER_EXTERNAL_ROTATION, WOMAN).assumptions();
        assertThat(assumed.scaleSd())
                .as("printed: 3.7 of 20.4, 18 %%")
                .isCloseTo(Math.sqrt(Math.log(1 + 0.21 * 0.21)), within(1e-12));
    }

    @Test
    void aPersonsTestBendsIt() {
        NormCurve given = NormCurve.of(Action.ELBOW_FLEXION, MAN);
        double angle = Math.toRadians(90);
        BentCurve bent = BentCurve.of(given, List.of(new IsometricTest(angle, 1.5 * given.held(angle), 0.05)));
        assertThat(bent.held(angle) / given.held(angle)).isBetween(1.4, 1.5);
        assertThat(bent.logSd(angle)).isLessThan(0.06);
        assertThat(bent.source()).startsWith("one strength test of this person").contains("Tsunoda");
        assertThat(bent.speedLaw()).isEqualTo(given.speedLaw());
    }

    @Test
    void beyondWhatWasTestedItIsNotKnown() {
        NormCurve flexors = NormCurve.of(Action.ELBOW_FLEXION, MAN);
        assertThat(flexors.known(Math.toRadians(105), 0)).isTrue();
        assertThat(flexors.known(Math.toRadians(120), 0)).isFalse();
        assertThat(NormCurve.of(Action.SHOULDER_FLEXION, MAN).known(Math.toRadians(120), 0))
                .as("overhead")
                .isFalse();
    }

    @Test
    void oneMeasuredSpeedIsAStraightLineThenLevel() {
        SpeedLaw law = new SpeedLaw.OneSpeed(2, 0.6);
        assertThat(law.factor(0, 0)).isEqualTo(1);
        assertThat(law.factor(0, 1)).isCloseTo(0.8, within(1e-15));
        assertThat(law.factor(0, 2)).isCloseTo(0.6, within(1e-15));
        assertThat(law.factor(0, 9)).isCloseTo(0.6, within(1e-15));
        assertThatThrownBy(() -> new SpeedLaw.OneSpeed(0, 0.6)).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> new SpeedLaw.OneSpeed(1, 1.1)).isInstanceOf(Refusal.class);
    }

    @Test
    void ageTakesNoMoreThanItsLimit() {
        AgeLoss loss = AgeLoss.between(25, 75, 0.5);
        assertThat(loss.share(20)).isEqualTo(1);
        assertThat(loss.share(50)).isCloseTo(0.75, within(1e-12));
        assertThat(loss.share(75)).isCloseTo(0.5, within(1e-12));
        assertThat(loss.share(110)).isEqualTo(0.4);
        assertThat(loss.logSd(65)).isZero();
        assertThat(loss.logSd(75)).isCloseTo(0.1, within(1e-12));
    }
}
