package counterpull.bench.repetitions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.bench.Answer;
import counterpull.bench.Remark;
import counterpull.engine.body.Action;
import counterpull.engine.body.Sex;
import counterpull.engine.body.Side;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.Trials;
import counterpull.engine.strength.BentCurve;
import counterpull.engine.strength.IsometricTest;
import counterpull.engine.strength.IsometricTest.Meaning;
import counterpull.engine.strength.LimbStrength;
import counterpull.engine.strength.Physique;
import counterpull.engine.strength.Prior;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RepetitionBenchTest {
    private static final Physique PERSON = new Physique(Sex.FEMALE, 40, 64, 1.70);

    private static RepetitionResult set(int done, SetEnd end) {
        return answer(LimbStrength.published(PERSON), done, end, Optional.empty())
                .result()
                .orElseThrow();
    }

    private static Answer<RepetitionResult> answer(LimbStrength strength, int done, SetEnd end, Optional<Side> side) {
        PressProfile profile = PressProfile.of(Trials.task(strength));
        return new RepetitionBench(profile, ShareOfMaximum.LEG_PRESS, done, end, side).answer();
    }

    private static BentCurve bent(JointEvidence joint) {
        Prior published = Prior.of(joint.place().action(), PERSON).orElseThrow();
        return BentCurve.of(published, List.of(joint.test().orElseThrow()));
    }

    /** What the engine's curve makes of the test is what the set says. */
    @Test
    void theMeasuredJointsCurveTakesItsPosterior() {
        int measured = 0;
        for (JointEvidence joint : set(9, new SetEnd.Called(2)).joints()) {
            if (joint.test().isPresent() && joint.test().get().meaning() == Meaning.REACHED) {
                double angle = joint.place().at().angle();
                assertThat(bent(joint).held(angle))
                        .as("%s: matching moments is exact", joint.place().words())
                        .isCloseTo(
                                joint.after().value(),
                                within(1e-6 * joint.after().value()));
                assertThat(bent(joint).logSd(angle)).isCloseTo(joint.sd(), within(1e-6));
                measured++;
            }
        }
        assertThat(measured).as("both sides of the joint that limits").isGreaterThanOrEqualTo(2);
    }

    /** Below one chance in five a floor stands in for the posterior. */
    @Test
    void aBoundedJointsCurveComesNearItsPosterior() {
        int bounded = 0;
        for (JointEvidence joint : set(9, new SetEnd.Called(2)).joints()) {
            if (joint.test().isPresent() && joint.test().get().meaning() == Meaning.AT_LEAST) {
                double angle = joint.place().at().angle();
                double shift = Math.log(bent(joint).held(angle) / joint.before());
                assertThat(shift).as("a floor never lowers").isNotNegative();
                assertThat(shift).isCloseTo(joint.shift(), within(0.3 * joint.sdBefore()));
                bounded++;
            }
        }
        assertThat(bounded).isPositive();
    }

    @Test
    void moreRepetitionsMeanMoreStrength() {
        double few = limiting(set(4, new SetEnd.Called(1))).after().value();
        double many = limiting(set(12, new SetEnd.Called(1))).after().value();
        assertThat(many).isGreaterThan(few);
    }

    private static JointEvidence limiting(RepetitionResult result) {
        return result.joints().get(0);
    }

    @Test
    void bothSidesAreEquallyLikelyAndTheChancesSumToOne() {
        RepetitionResult result = set(9, new SetEnd.Called(2));
        assertThat(result.joints().stream().mapToDouble(JointEvidence::limiting).sum())
                .as("rounding of the sums")
                .isCloseTo(1, within(1e-6));
        JointEvidence one = result.joints().get(0);
        JointEvidence other = result.joints().stream()
                .filter(each -> each.place().action() == one.place().action() && each != one)
                .findFirst()
                .orElseThrow();
        assertThat(other.limiting()).isCloseTo(one.limiting(), within(1e-9));
        assertThat(other.shift()).isCloseTo(one.shift(), within(1e-9));
    }

    @Test
    void onlyTheSideThatGaveOutIsLookedAtWhereThatWasSeen() {
        RepetitionResult result = answer(
                        LimbStrength.published(PERSON), 9, new SetEnd.Called(2), Optional.of(Side.LEFT))
                .result()
                .orElseThrow();
        assertThat(result.joints())
                .allSatisfy(each -> assertThat(each.place().limb()).isEqualTo(Side.LEFT));
    }

    @Test
    void aSetThatPainEndedOnlyRaises() {
        for (JointEvidence joint : set(9, new SetEnd.Pain()).joints()) {
            assertThat(joint.shift()).as(joint.place().words()).isGreaterThan(-1e-9);
            joint.test().ifPresent(test -> assertThat(test.meaning()).isEqualTo(Meaning.AT_LEAST));
        }
    }

    /** A strong tested knee leaves the blame to what was not tested. */
    @Test
    void aTestedJointTakesLittleAndIsBlamedForWhatItDid() {
        Prior published = Prior.of(Action.KNEE_EXTENSION, PERSON).orElseThrow();
        double angle = Math.toRadians(85);
        IsometricTest strong = new IsometricTest(angle, 2 * published.held(angle), 0.05);
        LimbStrength tested =
                LimbStrength.published(PERSON).with(Action.KNEE_EXTENSION, BentCurve.of(published, List.of(strong)));
        RepetitionResult result = answer(tested, 9, new SetEnd.Called(2), Optional.empty())
                .result()
                .orElseThrow();
        double knee = result.joints().stream()
                .filter(each -> each.place().action() == Action.KNEE_EXTENSION)
                .mapToDouble(JointEvidence::limiting)
                .sum();
        double before = set(9, new SetEnd.Called(2)).joints().stream()
                .filter(each -> each.place().action() == Action.KNEE_EXTENSION)
                .mapToDouble(JointEvidence::limiting)
                .sum();
        assertThat(knee).isLessThan(before);
    }

    private static List<Remark> remarks(LimbStrength strength, int done, SetEnd end) {
        return answer(strength, done, end, Optional.empty()).remarks();
    }

    /** Past twenty repetitions the set says "at most 62 %", and an easy setup agrees with that. */
    @Test
    void anEasySetupIsNoContradictionWhereTheSetOnlySaysAtMost() {
        List<Remark> remarks = remarks(Trials.strong(2000, 1800, 1200), 20, new SetEnd.Called(6));
        assertThat(remarks).extracting(Remark::code).contains("too-many-left").doesNotContain("unlike-curve");
        assertThat(set(20, new SetEnd.Called(6)).onlyAtMost()).isTrue();
        assertThat(set(12, new SetEnd.Called(2)).onlyAtMost()).isFalse();
    }

    @Test
    void aJointWhoseStrengthNobodyKnowsMayHaveGivenOut() {
        LimbStrength withoutKnee = Trials.strong(200, 180, 120).without(Action.KNEE_EXTENSION);
        assertThat(remarks(withoutKnee, 9, new SetEnd.Called(2)))
                .filteredOn(remark -> remark.code().equals("strength-not-known"))
                .singleElement()
                .satisfies(remark -> assertThat(remark.inSi()).startsWith("knee extension left, knee extension right"));
    }

    /** The curve ends at 70° of a range that begins at 90°. */
    @Test
    void aCurveThatDoesNotReachTheHardestPlaceIsSaid() {
        LimbStrength shallow = Trials.strong(200, 180, 120).with(Action.KNEE_EXTENSION, Trials.between(180, 0, 70));
        assertThat(remarks(shallow, 9, new SetEnd.Called(2)))
                .extracting(Remark::code)
                .contains("strength-not-known");
    }

    @Test
    void whereAllIsKnownNothingIsSaidOfIt() {
        assertThat(remarks(Trials.strong(200, 180, 120), 9, new SetEnd.Called(2)))
                .extracting(Remark::code)
                .doesNotContain("strength-not-known");
        assertThat(remarks(LimbStrength.published(PERSON), 9, new SetEnd.Called(2)))
                .extracting(Remark::code)
                .doesNotContain("strength-not-known");
    }

    @Test
    void theSameSetGivesTheSameDigits() {
        RepetitionResult one = set(9, new SetEnd.Called(2));
        RepetitionResult other = set(9, new SetEnd.Called(2));
        for (int i = 0; i < one.joints().size(); i++) {
            assertThat(other.joints().get(i).shift())
                    .isEqualTo(one.joints().get(i).shift());
        }
    }
}
