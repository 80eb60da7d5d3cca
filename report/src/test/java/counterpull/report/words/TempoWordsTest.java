package counterpull.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.profile.ExerciseProfile;
import counterpull.report.Exercises;
import counterpull.scenario.units.Units;
import org.junit.jupiter.api.Test;

class TempoWordsTest {
    private static String words(String tempo) {
        String yaml = Exercises.text("knee-extension-cuff").replaceAll("(?s)tempo:.*", "tempo:\n  " + tempo + "\n");
        ExerciseProfile profile = ExerciseProfile.of(Exercises.scenario(yaml).task());
        return new TempoWords(Units.METRIC)
                .of(profile.task().tempo(), profile.course().travel());
    }

    @Test
    void everyTimeOfAFullStop() {
        assertThat(words("full stop: {lowering: 3 s, low pause: 1 s, lifting: 2 s, high pause: 0.5 s}"))
                .isEqualTo("down 3\u00A0s, wait 1\u00A0s, up 2\u00A0s, wait 0.5\u00A0s; full stop at both ends");
    }

    @Test
    void flowingTurnsRoundWithoutAWait() {
        assertThat(words("flowing: {at: top, lowering: 3 s, lifting: 2 s}"))
                .startsWith("down 3\u00A0s, wait 0\u00A0s, up 2\u00A0s")
                .doesNotContain("full stop at both ends");
    }
}
