package counterpull.engine.jointload;

import counterpull.engine.validation.Published;
import org.junit.jupiter.api.Test;

/** Other people's measurements beside the kneecap model: information, with tolerances as wide as people differ. */
class KneecapComparisonTest {
    private static final Kneecap KNEECAP = new BrechterPowers2002();

    private static Published other(String quantity, String unit) {
        return Published.of(quantity, unit).section("Kneecap joint, other people's measurements");
    }

    private static void leverArm(String who, double degrees, double published, double fraction) {
        other("lever arm at " + (int) degrees + "°, " + who, "mm")
                .source("dynamic magnetic resonance, 30 women and 10 men, PMC4662057; looked up")
                .value(published)
                .ours(1e3 * KNEECAP.leverArm(Math.toRadians(degrees)))
                .withinRelative(fraction, "living knees under load against a model from specimens");
    }

    @Test
    void leverArmOfLivingKnees() {
        leverArm("women", 10, 45.5, 0.06);
        leverArm("men", 10, 47.1, 0.06);
        leverArm("women", 50, 32.9, 0.20);
        leverArm("men", 50, 31.5, 0.20);
    }

    private static void area(String who, double degrees, double published) {
        other("contact area at " + (int) degrees + "°, unloaded, " + who, "mm²")
                .source("Besier 2005, J Orthop Res 23:345, 8 men and 8 women, upright imaging; looked up")
                .value(published)
                .ours(1e6 * KNEECAP.contactArea(Math.toRadians(degrees)))
                .withinRelative(0.45, "other people; loading alone changes it by 24 %, a repeated image by 9 %");
    }

    @Test
    void contactAreaOfOtherPeople() {
        area("men", 0, 210);
        area("men", 30, 414);
        area("men", 60, 520);
        area("women", 0, 210);
        area("women", 30, 269);
        area("women", 60, 396);
    }

    /** A kneecap as a smooth pulley: one tension on both sides, 130° between the pulls, so the line turns by 50°. */
    @Test
    void kneecapAsAPulley() {
        double turn = Math.toRadians(50);
        other("reaction over tendon tension, line turned by 50°", "")
                .source("OpenStax College Physics, section 9.6, kneecap: 1250 N on both sides, 1056.5 N; looked up")
                .value(1056.5 / 1250)
                .ours(KNEECAP.reactionRatio(turn))
                .withinRelative(
                        0.10, "a pulley has no lever of its own, and the line need not turn as much as the knee bends");
    }

    /** 80 kg, shank and foot 0.061 of it at 0.606 × 0.43 m, boot at the ankle: our guess of a subject. */
    @Test
    void straighteningAKneeUnderABoot() {
        double weight = 80 * 9.80665;
        double level = 9 * 9.80665 * 0.43 + 0.061 * weight * 0.606 * 0.43;
        double angle = Math.toRadians(36);
        other("reaction over body weight, 9 kg boot, at 36°", "")
                .source("Reilly and Martens 1972, Acta Orthop Scand 43:126; translated abstract looked up")
                .value(1.4)
                .ours(KNEECAP.reaction(angle, level * Math.cos(angle)) / weight)
                .withinRelative(
                        0.40,
                        "plausibility only: their people's mass, leg and lever arm are unknown, ours are a guess");
    }
}
