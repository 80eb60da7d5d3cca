package counterpull.engine.strength;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.body.Action;
import counterpull.engine.body.Sex;
import counterpull.engine.validation.Published;
import org.junit.jupiter.api.Test;

/** The priors of hip abduction and adduction beside what was published. */
class HipSidewaysStrengthValidationTest {
    private static final String SECTION = "Strength of the hip, sideways";
    private static final String SUGIMOTO = "Sugimoto 2014, Clin J Sport Med 24:422; abstract looked up";
    private static final String JAENADA =
            "Jaenada-Carrilero 2024, doi 10.1186/s13102-024-00838-0, women who play football; abstract looked up";
    private static final String JOHNSON =
            "Johnson 2004, Arch Phys Med Rehabil 85:593; abstract looked up, ages 25 and 73 from memory";
    private static final Physique MAN = new Physique(Sex.MALE, 22, 77, 1.78);
    private static final Physique WOMAN = new Physique(Sex.FEMALE, 22, 62, 1.66);
    private static final Physique OLD_WOMAN = new Physique(Sex.FEMALE, 73, 62, 1.60);

    private static double perMass(Action action, Physique person, double speed) {
        return Prior.of(action, person).orElseThrow().atSpeed(0.2, Math.toRadians(speed)) / person.mass();
    }

    private static Published row(String quantity, String unit, String source, double value, double ours) {
        return Published.of(quantity, unit)
                .section(SECTION)
                .source(source)
                .value(value)
                .ours(ours);
    }

    @Test
    void movingAsPublished() {
        String reason = "half of the last printed digit";
        row("hip abduction, men, 60°/s", "N·m/kg", SUGIMOTO, 1.29, perMass(Action.HIP_ABDUCTION, MAN, 60))
                .within(0.005, reason);
        row("hip abduction, women, 60°/s", "N·m/kg", SUGIMOTO, 1.13, perMass(Action.HIP_ABDUCTION, WOMAN, 60))
                .within(0.005, reason);
        double still = perMass(Action.HIP_ABDUCTION, MAN, 0) / perMass(Action.HIP_ABDUCTION, MAN, 60);
        row(
                        "log of torque held still over torque at 60°/s",
                        "",
                        "Stotz 2022, doi 10.1186/s13102-022-00401-9; abstract looked up",
                        0.258,
                        Math.log(still))
                .within(1e-9, "taken as it is");
    }

    @Test
    void besideWomenWhoPlayFootball() {
        double abduction = perMass(Action.HIP_ABDUCTION, WOMAN, 0);
        double adduction = perMass(Action.HIP_ADDUCTION, WOMAN, 0);
        assertThat(abduction).as("they train for it").isLessThan(2.07);
        assertThat(adduction).isLessThan(2.40);
        String reason = "two of their standard deviations; they train for it, ours must be the weaker";
        row("hip abduction, women, held", "N·m/kg", JAENADA, 2.07, abduction).within(2 * 0.50, reason);
        row("hip adduction, women, held", "N·m/kg", JAENADA, 2.40, adduction).within(2 * 0.67, reason);
        row("hip adduction over abduction", "", JAENADA, 1.16, adduction / abduction)
                .within(0.005, "2.40 over 2.07, half of the last digit");
    }

    @Test
    void olderWomen() {
        age("abduction", Action.HIP_ABDUCTION, 34);
        age("adduction", Action.HIP_ADDUCTION, 24);
    }

    private static void age(String name, Action action, double percent) {
        double lost = 1 - perMass(action, OLD_WOMAN, 0) / perMass(action, WOMAN, 0);
        row("hip " + name + ", older women below young", "%", JOHNSON, percent, 100 * lost)
                .within(0.5, "half of the last printed digit");
    }
}
