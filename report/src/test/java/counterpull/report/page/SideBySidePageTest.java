package counterpull.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.LimbProfile;
import counterpull.report.Exercises;
import counterpull.report.result.ChallengeTable;
import counterpull.scenario.units.Units;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;

class SideBySidePageTest {
    private static final ChallengeTable.Entry CUFF =
            new ChallengeTable.Entry("cuff", Exercises.anyProfile("knee-extension-cuff"));
    private static final ChallengeTable.Entry PRESS =
            new ChallengeTable.Entry("press", Exercises.anyProfile("leg-press-stack-plate"));
    private static final String PAGE = page(List.of(CUFF, PRESS));

    private static String page(List<ChallengeTable.Entry> entries) {
        return SideBySidePage.html(Exercises.heading(), entries, Units.METRIC);
    }

    /** Knee extension torque at a knee angle while lifting, straight between the two nearest positions. */
    private static double torque(LimbProfile limb, double angle) {
        for (int i = 1; i < limb.path().positions(); i++) {
            double before = limb.angle(Joint.KNEE, i - 1);
            double after = limb.angle(Joint.KNEE, i);
            if (angle <= before && angle >= after) {
                double part = (before - angle) / (before - after);
                return (1 - part) * limb.torque(Joint.KNEE, Phase.LIFTING, i - 1)
                        + part * limb.torque(Joint.KNEE, Phase.LIFTING, i);
            }
        }
        throw new AssertionError(angle + " rad is not in the range");
    }

    @Test
    void saysAtWhichAngleTheyAskTheSameAndWhichAsksMoreWhere() {
        LimbProfile cuff = CUFF.profile().limbs().get(0);
        LimbProfile press = PRESS.profile().limbs().get(0);
        double low = Math.toRadians(15);
        double high = Math.toRadians(80);
        assertThat(torque(press, high)).isGreaterThan(torque(cuff, high));
        assertThat(torque(press, low)).isLessThan(torque(cuff, low));
        for (int halving = 0; halving < 40; halving++) {
            double middle = (low + high) / 2;
            boolean pressAsksMore = torque(press, middle) > torque(cuff, middle);
            low = pressAsksMore ? low : middle;
            high = pressAsksMore ? middle : high;
        }
        assertThat(PAGE)
                .contains("Equal at knee flexion " + Math.round(Math.toDegrees(low))
                        + "°; above that angle “press” asks more, below it “cuff”.");
    }

    @Test
    void wordsStandUnderTheirChart() {
        Document page = Pages.read(PAGE);
        assertThat(Pages.texts(page, "figcaption")).isNotEmpty().allMatch(text -> text.startsWith("Equal at "));
    }

    @Test
    void leadsWithWhatEachAsksMost() {
        Document page = Pages.read(PAGE);
        assertThat(Pages.texts(page, "dt")).containsExactly("cuff", "press");
        assertThat(Pages.texts(page, "dd").get(0))
                .startsWith("Left knee extension: ")
                .contains("Knee flexion from 90° to 10°");
    }

    @Test
    void aJointThatOneOfThemHoldsStillHasARowAndNoChart() {
        Document page = Pages.read(PAGE);
        assertThat(Pages.texts(page, "h2")).contains("Knee").doesNotContain("Ankle", "Hip");
        assertThat(Pages.texts(page, "td")).contains("ankle", "hip");
    }

    @Test
    void curlsBesideEachOtherHaveNoKneecapChart() {
        String curls = page(List.of(
                new ChallengeTable.Entry("seated", Exercises.profile("knee-flexion-seated-lever")),
                new ChallengeTable.Entry("prone", Exercises.profile("knee-flexion-prone-lever"))));
        assertThat(curls).doesNotContain("Kneecap");
        assertThat(PAGE).contains("Kneecap joint stress, lifting");
    }

    @Test
    void namesAreNeverMarkup() {
        String page = page(List.of(new ChallengeTable.Entry("<i>one</i>", CUFF.profile()), PRESS));
        assertThat(page).contains("&lt;i&gt;one&lt;/i&gt;").doesNotContain("<i>");
        Pages.read(page);
    }
}
