package counterpull.report.result;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.Why;
import counterpull.report.Demo;
import counterpull.report.table.UnitSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A person can add the lines up by hand. */
class WhyTextTest {
    private static final Pattern SUMMAND = Pattern.compile("(?m)^ +(-?[\\d.]+) N·m  (?!sum)");

    @Test
    void theLinesAddUpToTheNumber() {
        PressProfile profile = Demo.usual().first().profile();
        Why why = profile.why().torque(new Why.Place(0, Joint.KNEE, Phase.LIFTING, 30));
        String text = WhyText.of("left knee", why, UnitSet.METRIC, 100);
        Matcher matcher = SUMMAND.matcher(text);
        double sum = 0;
        int count = 0;
        while (matcher.find()) {
            sum += Double.parseDouble(matcher.group(1));
            count++;
        }
        assertThat(count).isEqualTo(why.summands().size());
        // each line is rounded to 0.1 N·m
        assertThat(sum).isCloseTo(profile.limbs().get(0).torque(Joint.KNEE, Phase.LIFTING, 30), within(0.05 * count));
        assertThat(text).contains("Source: " + why.source());
    }

    @Test
    void keepsToTheWidthAndTurnsUnits() {
        PressProfile profile = Demo.usual().first().profile();
        String text = WhyText.of("push", profile.why().push(Phase.LOWERING, 0), UnitSet.IMPERIAL, 60);
        assertThat(text).contains("lbf").doesNotContain(" N ");
        assertThat(text.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(60));
    }
}
