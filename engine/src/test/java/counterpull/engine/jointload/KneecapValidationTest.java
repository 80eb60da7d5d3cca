package counterpull.engine.jointload;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.validation.Published;
import org.junit.jupiter.api.Test;

class KneecapValidationTest {
    private static final Kneecap KNEECAP = new BrechterPowers2002();
    private static final String CURVES = "Brechter and Powers 2002 after van Eijden 1986; looked up, computed apart";

    /**
     * Flexion (deg), lever arm (mm), ratio, reaction per torque (1/m), area (mm²), at 100 N·m: quadriceps (N),
     * reaction (N), stress (MPa).
     */
    private static final double[][] TABLE = {
        {0, 46.000, 0.46200, 10.043, 151.8, 2173.9, 1004.3, 6.618},
        {15, 47.545, 0.60215, 12.665, 179.5, 2103.3, 1266.5, 7.057},
        {30, 44.860, 0.74299, 16.562, 242.3, 2229.2, 1656.2, 6.835},
        {45, 39.565, 0.86402, 21.838, 340.3, 2527.5, 2183.8, 6.417},
        {60, 33.280, 0.94653, 28.441, 473.5, 3004.8, 2844.1, 6.007},
        {75, 27.625, 0.98301, 35.584, 641.8, 3619.9, 3558.4, 5.545},
        {90, 24.220, 0.98130, 40.516, 845.2, 4128.8, 4051.6, 4.794},
        {100, 24.000, 0.96983, 40.409, 1000.4, 4166.7, 4040.9, 4.039},
    };

    private static Published row(String quantity, String unit, double degrees) {
        return Published.of(quantity + " at " + (int) degrees + "° of knee flexion", unit)
                .section("Kneecap joint")
                .source(CURVES);
    }

    @Test
    void theWholeTable() {
        for (double[] at : TABLE) {
            double angle = Math.toRadians(at[0]);
            String half = "half of the last printed digit";
            row("lever arm", "mm", at[0])
                    .value(at[1])
                    .ours(1e3 * KNEECAP.leverArm(angle))
                    .within(0.00051, half);
            row("reaction over quadriceps force", "", at[0])
                    .value(at[2])
                    .ours(KNEECAP.reactionRatio(angle))
                    .within(0.0000051, half);
            row("reaction per knee-extension torque", "1/m", at[0])
                    .value(at[3])
                    .ours(KNEECAP.reaction(angle, 1))
                    .within(0.00051, half);
            row("quadriceps force for 100 N·m", "N", at[0])
                    .value(at[5])
                    .ours(KNEECAP.quadricepsForce(angle, 100))
                    .within(0.051, half);
            row("reaction for 100 N·m", "N", at[0])
                    .value(at[6])
                    .ours(KNEECAP.reaction(angle, 100))
                    .within(0.051, half);
        }
    }

    @Test
    void areaAndStressWhereTheAreaIsPublished() {
        for (double[] at : TABLE) {
            if (at[0] > 60) {
                continue;
            }
            double angle = Math.toRadians(at[0]);
            row("contact area", "mm²", at[0])
                    .source("as used in running studies, for instance Willson 2014; from memory, computed apart")
                    .value(at[4])
                    .ours(1e6 * KNEECAP.contactArea(angle))
                    .within(0.051, "half of the last printed digit");
            row("mean stress for 100 N·m", "MPa", at[0])
                    .value(at[7])
                    .ours(1e-6 * KNEECAP.stress(angle, 100))
                    .within(0.00051, "half of the last printed digit");
        }
    }

    @Test
    void theMisprintedLeverArmIsNotOurs() {
        double x = 45;
        double misprinted = 8.0e-5 * x * x * x - 0.013 * x * x + 0.28 * x + 0.046;
        assertThat(misprinted)
                .as("three terms in mm, the constant in m, as widely printed")
                .isCloseTo(-6.4, within(0.05));
        assertThat(KNEECAP.leverArm(Math.toRadians(45))).as("m").isCloseTo(0.039565, within(5e-7));
        for (double degrees = 0; degrees <= 100; degrees++) {
            assertThat(KNEECAP.leverArm(Math.toRadians(degrees))).isBetween(0.0238, 0.0477);
        }
    }

    @Test
    void leverArmHasItsKnownExtremes() {
        row("greatest lever arm, which is", "mm", 12)
                .value(47.626)
                .ours(1e3 * KNEECAP.leverArm(Math.toRadians(12.13)))
                .within(0.001, "printed to a thousandth");
        row("least lever arm, which is", "mm", 96)
                .value(23.850)
                .ours(1e3 * KNEECAP.leverArm(Math.toRadians(96.21)))
                .within(0.001, "printed to a thousandth");
    }

    @Test
    void theRatioIsCutOffBeforeItsPole() {
        double x = 128.194;
        double below = 1 - 0.0162 * x + 1.55e-4 * x * x - 6.98e-7 * x * x * x;
        assertThat(below).as("the published denominator is zero here").isCloseTo(0, within(1e-5));
        for (double degrees = 100.001; degrees < 180; degrees++) {
            double angle = Math.toRadians(degrees);
            assertThat(KNEECAP.reactionRatio(angle)).isNaN();
            assertThat(KNEECAP.stress(angle, 100)).isNaN();
            assertThat(KNEECAP.reach(angle)).isEqualTo(Kneecap.Reach.ABSENT);
        }
        double greatest = 0;
        for (double degrees = 0; degrees <= 100; degrees += 0.1) {
            greatest = Math.max(greatest, KNEECAP.reactionRatio(Math.toRadians(degrees)));
        }
        row("greatest reaction over quadriceps force, which is", "", 80)
                .value(0.9859)
                .ours(greatest)
                .within(0.0001, "printed to four digits, cut off rather than rounded");
    }

    @Test
    void theAreaIsHeldWhereItsQuadraticRunsAway() {
        double at60 = KNEECAP.contactArea(Math.toRadians(60));
        for (double degrees = 60.5; degrees <= 100; degrees += 0.5) {
            double angle = Math.toRadians(degrees);
            assertThat(KNEECAP.contactArea(angle)).isCloseTo(at60, within(1e-18));
            assertThat(KNEECAP.reach(angle)).isEqualTo(Kneecap.Reach.AREA_HELD);
        }
        assertThat(1e6 * KNEECAP.contactArea(Math.toRadians(90)))
                .as("not the quadratic's 845 mm²")
                .isLessThan(474);
        assertThat(KNEECAP.reach(Math.toRadians(60)))
                .as("the end itself is published")
                .isEqualTo(Kneecap.Reach.PUBLISHED);
    }

    @Test
    void outsideItsRangeTheLoadIsAbsent() {
        assertThat(KNEECAP.leverArm(Math.toRadians(-1))).isNaN();
        assertThat(KNEECAP.contactArea(Math.toRadians(101))).isNaN();
        assertThat(KNEECAP.reach(Math.toRadians(-0.001))).isEqualTo(Kneecap.Reach.ABSENT);
        assertThat(KNEECAP.reach(Math.toRadians(100))).isEqualTo(Kneecap.Reach.AREA_HELD);
        assertThat(KNEECAP.reach(Double.NaN)).isEqualTo(Kneecap.Reach.ABSENT);
        assertThat(KNEECAP.reach(0)).isEqualTo(Kneecap.Reach.PUBLISHED);
    }

    @Test
    void aFlexionTorqueLoadsNoQuadriceps() {
        assertThat(KNEECAP.quadricepsForce(0.5, -20)).isZero();
        assertThat(KNEECAP.stress(0.5, -20)).isZero();
        assertThat(KNEECAP.stress(0.5, 20)).isPositive();
    }

    @Test
    void aWholeRangeIsThePointsOneByOne() {
        double[] flexion = {0, 0.5, 1.2, 1.7, 1.9, -0.1};
        double[] torque = {50, -10, 80, 100, 100, 10};
        double[] out = new double[flexion.length];
        KNEECAP.fillStress(flexion, torque, out);
        for (int i = 0; i < out.length; i++) {
            assertThat(out[i]).isEqualTo(Double.valueOf(KNEECAP.stress(flexion[i], torque[i])));
        }
        assertThat(out[4]).isNaN();
        assertThat(out[5]).isNaN();
    }

    @Test
    void stressIsContinuousWhereTheAreaIsHeld() {
        double before = KNEECAP.stress(Math.toRadians(60) - 1e-9, 100);
        assertThat(KNEECAP.stress(Math.toRadians(60) + 1e-9, 100)).isCloseTo(before, within(1.0));
    }
}
