package counterpull.engine.strength;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.body.Action;
import counterpull.engine.body.Sex;
import counterpull.engine.validation.Published;
import org.junit.jupiter.api.Test;

/** The published prior beside what other people measured at the knee, per kg of body mass. */
class KneeStrengthValidationTest {
    private static final Physique MAN = new Physique(Sex.MALE, 21.5, 75, 1.75);
    private static final Physique WOMAN = new Physique(Sex.FEMALE, 21.5, 60, 1.65);
    private static final Physique OLDER_MAN = new Physique(Sex.MALE, 72, 80, 1.72);
    private static final Physique OLDER_WOMAN = new Physique(Sex.FEMALE, 72, 66, 1.60);

    private static double perMass(Action action, Physique person, double degrees) {
        return PublishedCurve.of(action, person).held(Math.toRadians(degrees)) / person.mass();
    }

    private static Published norm(String who, double value, double ours) {
        return Published.of(who, "N·m/kg")
                .section("Strength of the knee, other people's norms")
                .value(value)
                .ours(ours);
    }

    private static void atEightyDegrees(String who, double mean, double deviation, double ours) {
        norm(who + ", held at 80°", mean, ours)
                .source("trained adults 18 to 41, 35 men and 39 women, 2023, doi 10.1016/j.asmr.2023.100861;"
                        + " abstract looked up")
                .within(2 * deviation, "two of their standard deviations: other people, another machine");
    }

    @Test
    void trainedAdultsAtEightyDegrees() {
        atEightyDegrees("knee extension, men", 2.74, 0.58, perMass(Action.KNEE_EXTENSION, MAN, 80));
        atEightyDegrees("knee extension, women", 2.20, 0.51, perMass(Action.KNEE_EXTENSION, WOMAN, 80));
        atEightyDegrees("knee flexion, men", 1.24, 0.30, perMass(Action.KNEE_FLEXION, MAN, 80));
        atEightyDegrees("knee flexion, women", 1.04, 0.26, perMass(Action.KNEE_FLEXION, WOMAN, 80));
    }

    private static void pooled(String who, double low, double high, double ours) {
        norm(who, (low + high) / 2, ours)
                .source("Sarabon 2021, Front Physiol 12:767941, 411 studies, middle of the 95 % interval of the mean;"
                        + " abstract looked up")
                .withinRelative(
                        0.35,
                        "other people and machines; the abstract gives no angle in degrees, ours are 20°, 65°, 90°");
    }

    @Test
    void pooledAdults() {
        pooled("knee extension, men, extended", 1.34, 2.23, perMass(Action.KNEE_EXTENSION, MAN, 20));
        pooled("knee extension, men, middle", 2.92, 3.45, perMass(Action.KNEE_EXTENSION, MAN, 65));
        pooled("knee extension, men, flexed", 2.50, 3.06, perMass(Action.KNEE_EXTENSION, MAN, 90));
        pooled("knee extension, women, extended", 1.01, 1.50, perMass(Action.KNEE_EXTENSION, WOMAN, 20));
        pooled("knee extension, women, middle", 2.08, 2.74, perMass(Action.KNEE_EXTENSION, WOMAN, 65));
        pooled("knee extension, women, flexed", 2.04, 2.71, perMass(Action.KNEE_EXTENSION, WOMAN, 90));
        pooled("knee flexion, men, middle", 1.15, 1.62, perMass(Action.KNEE_FLEXION, MAN, 65));
        pooled("knee flexion, men, flexed", 0.96, 1.54, perMass(Action.KNEE_FLEXION, MAN, 90));
    }

    @Test
    void pooledOlderAdults() {
        pooled("knee extension, older men, middle", 1.74, 2.16, perMass(Action.KNEE_EXTENSION, OLDER_MAN, 65));
        pooled("knee extension, older women, middle", 1.40, 1.64, perMass(Action.KNEE_EXTENSION, OLDER_WOMAN, 65));
    }

    @Test
    void extendedIsWeakerThanFlexedAndFlexedThanMiddle() {
        for (Physique person : new Physique[] {MAN, WOMAN, OLDER_MAN, OLDER_WOMAN}) {
            double extended = perMass(Action.KNEE_EXTENSION, person, 20);
            double flexed = perMass(Action.KNEE_EXTENSION, person, 90);
            double middle = perMass(Action.KNEE_EXTENSION, person, 65);
            assertThat(extended).as("ordering of Sarabon 2021").isLessThan(flexed);
            assertThat(flexed).isLessThan(middle);
        }
    }

    @Test
    void bestAnglesLieWhereTheyAreKnownToLie() {
        for (Sex sex : Sex.values()) {
            for (AgeGroup group : AgeGroup.values()) {
                double best = Anderson2007.row(Action.KNEE_EXTENSION, sex, group)
                        .mean()
                        .held()
                        .c3();
                assertThat(Math.toDegrees(best))
                        .as("60° to 75° of knee flexion")
                        .isBetween(60.0, 75.0);
            }
        }
    }
}
