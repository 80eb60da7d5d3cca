package counterpull.bench.person;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.bench.Budget;
import counterpull.engine.body.Action;
import counterpull.engine.strength.Tester;
import counterpull.engine.validation.Published;
import org.junit.jupiter.api.Test;

class PersonValidationTest {
    private static final String ERRORS = "Strength and range tests, what a change must pass";

    private static Published row(String quantity, String unit) {
        return Published.of(quantity, unit).section(ERRORS);
    }

    @Test
    void limitsOfAgreementAndDetectableChangeAreOneFactor() {
        row("standard error from limits of 33.6 %, knee extension by hand", "%")
                .source("Chamorro 2017, Open Med 12:359; the standard error computed from its limits")
                .value(12.1)
                .ours(Detectable.standardError(33.6))
                .within(0.05, "to a tenth of a percent");
        row("detectable change, knee extension by a frame, from its limits −19.8 to 24.8 %", "%")
                .source("Ann Rehabil Med 44(6) 2020, weak inpatients, one tester; looked up")
                .value(24.1)
                .ours(Detectable.change(Detectable.standardError((24.8 + 19.8) / 2)))
                .within(2, "their limits are about a mean difference, of so few people");
        row("detectable change, hip abduction by a belt, from its standard error 4.7 N·m", "N·m")
                .source("Leijendekkers 2017, PLoS One 12:e0179887; looked up")
                .value(12.9)
                .ours(Detectable.change(4.7))
                .within(0.2, "printed to a tenth; the standard error too, which is ±0.14");
        row("detectable change, shoulder rotation by hand, from its standard error 4.8 %", "%")
                .source("2016, Phys Ther Sport 21:75; looked up")
                .value(13.3)
                .ours(Detectable.change(4.8))
                .within(0.15, "both printed to a tenth");
        row("detectable change, shoulder rotation by hand, from its standard error 8.6 %", "%")
                .source("2016, Phys Ther Sport 21:75; looked up")
                .value(23.7)
                .ours(Detectable.change(8.6))
                .within(0.15, "both printed to a tenth");
        row("detectable change, shoulder rotation fixed, from its standard error 11.0 %", "%")
                .source("2016, Phys Ther Sport 21:75; looked up")
                .value(30.0)
                .ours(Detectable.change(11.0))
                .within(0.5, "printed 30.0 to 11.0, which is 2.73 and not 2.77");
    }

    /** Mehta 2017 prints 6.3° and 2.72° for standard errors of 2.72° and 1.18°: that is 1.645 √2 times them, nine times in ten and not 95 in 100. */
    @Test
    void aPrintedDetectableChangeMayBeOfNinetyPercent() {
        assertThat(1.6449 * Math.sqrt(2) * 2.72).isCloseTo(6.3, within(0.05));
        assertThat(1.6449 * Math.sqrt(2) * 1.18).isCloseTo(2.72, within(0.05));
        assertThat(Detectable.change(2.72)).as("ours is of 95 %").isGreaterThan(7.5);
    }

    @Test
    void seedsBetweenDaysFollowFromWhatWasPrinted() {
        row("hand-held, knee extension, limits of agreement", "%")
                .source("Chamorro 2017, Open Med 12:359, 17 studies; looked up")
                .value(33.6)
                .ours(100 * Detectable.change(BetweenDays.sd(Tester.HAND_HELD, Action.KNEE_EXTENSION)))
                .within(0.14, "seeded to a tenth of a percent");
        row("belts and plate, ankle plantarflexion, men, detectable change", "kgf")
                .source("2022, J Phys Ther Sci 34:463, 85.6 kgf; looked up")
                .value(12.1)
                .ours(85.6 * Detectable.change(BetweenDays.sd(Tester.BELT_FIXED, Action.ANKLE_PLANTARFLEXION)))
                .within(1.5, "one seed for men (5.1 %) and women (5.7 %)");
        row("belts and plate, ankle plantarflexion, women, detectable change", "kgf")
                .source("2022, J Phys Ther Sci 34:463, 62.2 and 64.7 kgf; looked up")
                .value(10.1)
                .ours(63.45 * Detectable.change(BetweenDays.sd(Tester.BELT_FIXED, Action.ANKLE_PLANTARFLEXION)))
                .within(0.6, "one seed for both sexes");
        assertThat(BetweenDays.sd(Tester.BELT_FIXED, Action.KNEE_EXTENSION))
                .as("between days, older people, 7.1 to 9.3 % (2014, doi 10.1007/s11556-013-0131-y; looked up)")
                .isBetween(0.071, 0.093);
        assertThat(BetweenDays.sd(Tester.HAND_HELD, Action.SHOULDER_EXTERNAL_ROTATION))
                .as("4.8 to 8.6 % (2016, Phys Ther Sport 21:75; looked up)")
                .isBetween(0.048, 0.086);
    }

    /** Three relative uncertainties of 0.25, 0.57 and 0.82 % from 10, 5 and 15 readings. */
    @Test
    void effectiveDegreesOfFreedomAreTheGuidesExample() {
        Budget budget = Budget.none().with(0.25, 9).with(0.57, 4).with(0.82, 14);
        row("combined standard uncertainty of three", "%")
                .source("JCGM 100:2008, G.4.1; from memory, the arithmetic exact")
                .value(1.03)
                .ours(budget.standardError())
                .within(0.005, "printed to two decimals");
        row("effective degrees of freedom of three", "")
                .source("JCGM 100:2008, G.4.1; from memory, the arithmetic exact")
                .value(19.0)
                .ours(budget.degreesOfFreedom())
                .within(0.05, "printed to a tenth");
    }

    @Test
    void theTechnicalErrorIsThatOfPairs() {
        assertThat(LengthBench.technicalError(new double[] {42.0, 43.0}, new double[] {42.4, 42.8}))
                .as("√((0.16 + 0.04)/4), by hand")
                .isCloseTo(Math.sqrt(0.05), within(1e-12));
    }

    /** 80 kg, shank and foot as one level piece: 12.475 N·m at g = 9.81. Ours lets the foot stand up from the shank's end. */
    @Test
    void theLegsWeightIsNearTheOnePiece() {
        double ours = new LimbWeight.FromTable(Attitude.level())
                .torque(
                        Action.KNEE_EXTENSION,
                        new counterpull.engine.body.Anthropometry(
                                new counterpull.engine.body.DempsterWinter(),
                                counterpull.engine.body.Sex.MALE,
                                1.75,
                                80,
                                counterpull.engine.body.MeasuredLengths.none()
                                        .with(counterpull.engine.body.BodyLength.SHANK, 0.43)),
                        Pad.at(0.3));
        row("knee torque of the level shank and foot, 80 kg", "N·m")
                .source("Winter, table 4.1, foot and leg as one piece, 0.606 of 0.43 m at 9.81 m/s²; computed")
                .value(12.475)
                .ours(ours)
                .withinRelative(
                        0.06, "his piece puts the foot nearer to the knee than a foot square to the shank lies");
    }
}
