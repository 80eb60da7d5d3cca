package counterpull.engine.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Refusal;
import counterpull.engine.body.Action;
import counterpull.engine.body.Sex;
import org.junit.jupiter.api.Test;

class PublishedCurveTest {
    private static PublishedCurve aged(double years) {
        return PublishedCurve.of(Action.KNEE_EXTENSION, new Physique(Sex.FEMALE, years, 60, 1.65));
    }

    private static double row(AgeGroup group, double angle) {
        return Anderson2007.row(Action.KNEE_EXTENSION, Sex.FEMALE, group).held(angle, 60 * 9.80665 * 1.65);
    }

    @Test
    void atAGroupsOwnAgeItIsThatGroup() {
        for (double angle = 0; angle < 1.9; angle += 0.1) {
            assertThat(aged(21.5).held(angle)).isEqualTo(row(AgeGroup.YOUNG, angle));
            assertThat(aged(18).held(angle)).isEqualTo(row(AgeGroup.YOUNG, angle));
            assertThat(aged(60).held(angle)).isCloseTo(row(AgeGroup.MIDDLE, angle), within(1e-12 * 200));
            assertThat(aged(72).held(angle)).isCloseTo(row(AgeGroup.SENIOR, angle), within(1e-12 * 200));
            assertThat(aged(95).held(angle)).isEqualTo(row(AgeGroup.SENIOR, angle));
        }
    }

    @Test
    void halfwayBetweenGroupsItIsTheMeanTorque() {
        double angle = 1.1;
        double mean = (row(AgeGroup.YOUNG, angle) + row(AgeGroup.MIDDLE, angle)) / 2;
        assertThat(aged(40.75).held(angle)).isCloseTo(mean, within(1e-10));
        Anderson2007 young = Anderson2007.row(Action.KNEE_EXTENSION, Sex.FEMALE, AgeGroup.YOUNG);
        Anderson2007 middle = Anderson2007.row(Action.KNEE_EXTENSION, Sex.FEMALE, AgeGroup.MIDDLE);
        double moving = (row(AgeGroup.YOUNG, angle) * young.shorteningFactor(2)
                        + row(AgeGroup.MIDDLE, angle) * middle.shorteningFactor(2))
                / 2;
        assertThat(aged(40.75).atSpeed(angle, 2))
                .as("torque at speed is interpolated too")
                .isCloseTo(moving, within(1e-10));
    }

    @Test
    void theBandIsWiderWhereNobodyWasMeasured() {
        // Same row spreads on both sides would hide nothing: the floor of 0.21 holds for all three groups of this
        // action.
        assertThat(aged(40.75).logSd(1)).isGreaterThan(aged(21.5).logSd(1) + 0.01);
        assertThat(aged(66).logSd(1)).isGreaterThan(aged(60).logSd(1) + 0.01).isGreaterThan(aged(72).logSd(1) + 0.01);
        assertThat(aged(85).logSd(1)).isGreaterThan(aged(72).logSd(1) + 0.01);
    }

    @Test
    void aFewPeopleWhoAgreeAreNotASmallSpread() {
        Physique person = new Physique(Sex.FEMALE, 72, 60, 1.60);
        assertThat(Anderson2007.row(Action.HIP_EXTENSION, Sex.FEMALE, AgeGroup.SENIOR)
                        .spread())
                .as("printed: 0.003 of 0.138")
                .isLessThan(0.03);
        assertThat(PublishedCurve.of(Action.HIP_EXTENSION, person).logSd(1)).isGreaterThan(0.2);
    }

    /** Delta method on T = C1 cos(C2 (q − C3)) with the printed deviations of C2 and C3, as if independent. */
    @Test
    void theSpreadOfShapeIsOfThePublishedSize() {
        Anderson2007 row = Anderson2007.row(Action.KNEE_EXTENSION, Sex.MALE, AgeGroup.YOUNG);
        PublishedCurve curve = PublishedCurve.of(Action.KNEE_EXTENSION, new Physique(Sex.MALE, 21.5, 75, 1.75));
        double scale = curve.assumptions().scaleSd();
        for (double degrees : new double[] {5, 15, 30, 100}) {
            double off = Math.toRadians(degrees) - row.mean().held().c3();
            double slope = Math.tan(row.mean().held().c2() * off);
            double published = Math.hypot(
                    row.mean().held().c2() * slope * row.deviation().held().c3(),
                    off * slope * row.deviation().held().c2());
            double logSd = curve.logSd(Math.toRadians(degrees));
            double ours = Math.sqrt(logSd * logSd - scale * scale);
            assertThat(ours / published)
                    .as("within a factor of 1.6 at %s°: one rule for all rows", degrees)
                    .isBetween(0.62, 1.6);
        }
    }

    /** The 95th percentile of the standard normal distribution is 1.64485 (handbook tables; from memory). */
    @Test
    void theBandLeavesFivePercentOnEachSide() {
        PublishedCurve curve = aged(30);
        double above = Math.log(curve.upper90(1.2) / curve.held(1.2)) / curve.logSd(1.2);
        double below = Math.log(curve.held(1.2) / curve.lower90(1.2)) / curve.logSd(1.2);
        assertThat(above).isCloseTo(1.64485, within(5e-6));
        assertThat(below).isCloseTo(1.64485, within(5e-6));
    }

    @Test
    void aPressBeyondTheTestedAnglesIsNotKnown() {
        PublishedCurve hip = PublishedCurve.of(Action.HIP_EXTENSION, new Physique(Sex.MALE, 30, 80, 1.75));
        assertThat(hip.known(Math.toRadians(139.8371), 0))
                .as("bottom of a leg press")
                .isFalse();
        assertThat(hip.known(Math.toRadians(98.3589), 0)).as("its top").isTrue();
        assertThat(hip.known(Math.toRadians(110), 0))
                .as("the end given in degrees is inside")
                .isTrue();
    }

    @Test
    void strengthScalesWithBodyWeightTimesStature() {
        PublishedCurve one = PublishedCurve.of(Action.KNEE_FLEXION, new Physique(Sex.MALE, 33, 70, 1.7));
        PublishedCurve two = PublishedCurve.of(Action.KNEE_FLEXION, new Physique(Sex.MALE, 33, 84, 1.7));
        assertThat(two.held(0.7)).isCloseTo(1.2 * one.held(0.7), within(1e-10));
        assertThat(two.peak()).isCloseTo(1.2 * one.peak(), within(1e-10));
    }

    @Test
    void badInputIsNamed() {
        assertThatThrownBy(() -> new Physique(Sex.MALE, 30, 0, 1.75)).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> new Physique(Sex.MALE, 30, 80, -1)).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> new Physique(Sex.MALE, Double.NaN, 80, 1.7)).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> new Physique(Sex.MALE, 111, 80, 1.7)).isInstanceOf(Refusal.class);
    }

    @Test
    void aLimbHoldsACurveForEachActionOrNone() {
        LimbStrength limb = LimbStrength.published(new Physique(Sex.MALE, 30, 80, 1.75));
        assertThat(limb.of(Action.ANKLE_DORSIFLEXION)).isPresent();
        LimbStrength changed = limb.without(Action.ANKLE_DORSIFLEXION).with(Action.KNEE_EXTENSION, aged(30));
        assertThat(changed.of(Action.ANKLE_DORSIFLEXION)).isEmpty();
        assertThat(changed.of(Action.KNEE_EXTENSION))
                .get()
                .isNotEqualTo(limb.of(Action.KNEE_EXTENSION).get());
        assertThat(limb.of(Action.ANKLE_DORSIFLEXION))
                .as("the first limb is as it was")
                .isPresent();
        assertThat(LimbStrength.none().of(Action.HIP_FLEXION)).isEmpty();
    }
}
