package counterpull.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.ExerciseProfile;
import counterpull.engine.profile.LimbProfile;
import counterpull.report.Exercises;
import counterpull.scenario.units.Units;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class ExercisePageTest {
    private static final String CUFF = Exercises.text("knee-extension-cuff");

    private static String page(String yaml) {
        return ExercisePage.html(Exercises.findings(yaml, Units.METRIC));
    }

    private static String answer(String page) {
        return page.substring(page.indexOf("<div class=\"answer\">"), page.indexOf("<section>"));
    }

    private static String fixed(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }

    @Test
    void leadsWithTheLargestEffortOfTheProfile() {
        ExerciseProfile profile = Exercises.profile("knee-extension-cuff");
        double most = 0;
        double at = 0;
        for (Phase phase : List.of(Phase.LIFTING, Phase.LOWERING)) {
            for (int i = 0; i < profile.positions(); i++) {
                for (Joint joint : profile.joints()) {
                    double effort = profile.limbs().get(0).effort(joint, phase, i);
                    at = effort > most ? profile.driving(i) : at;
                    most = Math.max(most, effort);
                }
            }
        }
        Document page = Pages.read(page(CUFF));
        assertThat(Pages.texts(page, "p").get(1))
                .startsWith("Left knee extension: " + Math.round(100 * most) + "\u00A0% of what it has")
                .endsWith("at knee flexion " + Math.round(Math.toDegrees(at)) + "°");
    }

    @Test
    void everyLineOfTheLiftIsTheProfiles() {
        ExerciseProfile profile = Exercises.profile("knee-extension-cuff");
        LimbProfile limb = profile.limbs().get(0);
        Element table = Pages.table(Pages.read(page(CUFF)), "left, lifting");
        for (int row = 0; row < 9; row++) {
            // nine lines, evenly spread over the positions, the nearest one where that is between two
            int i = (int) Math.round(row * (profile.positions() - 1) / 8.0);
            assertThat(Pages.row(table, row).subList(0, 5))
                    .containsExactly(
                            fixed(Math.toDegrees(profile.driving(i)), 1),
                            fixed(
                                    profile.limbs()
                                            .get(0)
                                            .force("ankle cuff", Phase.LIFTING, i)
                                            .norm(),
                                    0),
                            fixed(limb.torque(Joint.KNEE, Phase.LIFTING, i), 1),
                            fixed(limb.had(Joint.KNEE, Phase.LIFTING, i), 1),
                            fixed(100 * limb.effort(Joint.KNEE, Phase.LIFTING, i), 0));
        }
    }

    @Test
    void aLegCurlIsToldAsFlexion() {
        ExerciseProfile profile = Exercises.profile("knee-flexion-seated-lever");
        double torque = profile.limbs().get(0).torque(Joint.KNEE, Phase.LIFTING, 0);
        assertThat(torque).isNegative();
        String page = page(Exercises.text("knee-flexion-seated-lever"));
        Element table = Pages.table(Pages.read(page), "left, lifting");
        assertThat(Pages.texts(Pages.read(page), "th")).contains("knee flexion asked N·m");
        assertThat(Pages.row(table, 0)).contains(fixed(-torque, 1)).doesNotContain(fixed(torque, 1));
        assertThat(page).contains("Left knee flexion: asked and had").doesNotContain("below 0: knee flexion");
    }

    @Test
    void noKneecapStressIsDrawnWhereTheKneeIsNeverExtended() {
        assertThat(page(Exercises.text("knee-flexion-seated-lever"))).doesNotContain("Kneecap joint stress");
        assertThat(page(CUFF)).contains("Kneecap joint stress, left");
    }

    @Test
    void whatIsLookedUpSeldomIsFolded() {
        Document page = Pages.read(page(CUFF));
        Element folded = Pages.all(page, "details").get(0);
        assertThat(Pages.all(folded, "caption").stream().map(Element::getTextContent))
                .containsExactly("left, held", "left, lowering", "left, lifting: what each torque is made of");
        assertThat(Pages.texts(page, "caption")).contains("left, lifting");
    }

    @Test
    void partsOfATorqueAddUpToIt() {
        Document page = Pages.read(page(Exercises.text("squat-bar")));
        List<String> heads = Pages.texts(page, "th");
        assertThat(heads).anyMatch(head -> head.startsWith("knee extension: "));
        Element parts = Pages.table(page, "left, lifting: what each torque is made of");
        Element whole = Pages.table(page, "left, lifting");
        List<String> names =
                Pages.all(parts, "th").stream().map(Element::getTextContent).toList();
        for (int row = 0; row < 9; row++) {
            double sum = 0;
            for (int column = 0; column < names.size(); column++) {
                if (names.get(column).startsWith("knee extension: ")) {
                    sum += Double.parseDouble(Pages.row(parts, row).get(column));
                }
            }
            // each is rounded to 0.1 N·m: up to seven parts and the sum may each be off by half of that
            assertThat(sum)
                    .isCloseTo(
                            Double.parseDouble(Pages.row(whole, row).get(5)),
                            org.assertj.core.api.Assertions.within(0.4));
        }
    }

    @Test
    void moreThanThereIsIsSaidFirst() {
        String heavy = page(CUFF.replace("chosen: 6 kg", "chosen: 30 kg"));
        assertThat(answer(heavy)).contains("Too heavy as set: left knee extension, ", "as set, this cannot be done");
        assertThat(answer(page(CUFF))).doesNotContain("Too heavy", "cannot be done");
    }

    @Test
    void whereStrengthIsNotKnownIsSaidInTheAnswer() {
        String press = page(Exercises.text("overhead-press-rail"));
        ExerciseProfile profile = Exercises.profile("overhead-press-rail");
        int last = profile.positions() - 1;
        assertThat(profile.effort(Joint.SHOULDER, Phase.LIFTING, last)).isNaN();
        assertThat(answer(press))
                .contains("Not known everywhere.", "Strength of the shoulder is not known from travel ");
        assertThat(answer(page(CUFF))).doesNotContain("Not known everywhere");
    }

    @Test
    void saysWhatTheChosenWeightComesToWithWhatIsFixed() {
        // a bar of 20 kg with 40 kg on it
        assertThat(answer(page(Exercises.text("squat-bar"))))
                .contains("40\u00A0kg<small>bar 60\u00A0kg in all</small>");
        assertThat(answer(page(CUFF))).contains("6\u00A0kg").doesNotContain("in all");
    }

    @Test
    void tellsWhatToMeasureAndWhatCanGoWrongHere() {
        String page = page(CUFF);
        assertThat(page)
                .contains("where the cuff sits (along)", "Kitchen scale; the number sewn on is often wrong.")
                .contains("stop short of the angle that hurts.", "licensed professional");
    }

    @Test
    void whatRollsIsNoLoad() {
        assertThat(page(Exercises.text("knee-extension-lever"))).doesNotContain("as its pad rolls");
        assertThat(page(Exercises.text("overhead-press-rail-tubing")))
                .contains("bar on rails and floor tubes")
                .doesNotContain("on its rail");
    }

    @ParameterizedTest
    @ValueSource(strings = {"knee-extension-cuff", "squat-bar", "bench-press-chains", "hip-abduction-cable"})
    void standsAloneAndIsWellFormed(String name) {
        String page = page(Exercises.text(name));
        Pages.read(page);
        assertThat(page)
                .doesNotContain("<script", "NaN", "Infinity", "null")
                .doesNotContainPattern("(src|href)=\"(?!#)");
    }

    @Test
    void whatAPersonTypedIsNeverMarkup() {
        String page = page(CUFF.replace("name: Knee extension with an ankle cuff, seated", "name: '<b>x</b> & \"y\"'"));
        assertThat(page).contains("&lt;b&gt;x&lt;/b&gt; &amp; &quot;y&quot;").doesNotContain("<b>x");
        Pages.read(page);
    }

    @Test
    void readersInPoundsReadPounds() {
        String page = ExercisePage.html(Exercises.findings(CUFF, Units.IMPERIAL));
        String text = Pages.read(page).getElementsByTagName("main").item(0).getTextContent();
        assertThat(text).contains("lbf", "ft·lbf", "lb").doesNotContainPattern("\\d[\\s\u00a0\u2009](cm|N|N·m|kg)\\b");
    }
}
