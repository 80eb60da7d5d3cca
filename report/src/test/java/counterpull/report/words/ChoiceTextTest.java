package counterpull.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.choice.Candidate;
import counterpull.engine.choice.Choice;
import counterpull.engine.choice.Question;
import counterpull.engine.choice.Ranking;
import counterpull.engine.choice.Search;
import counterpull.engine.choice.Strategy;
import counterpull.report.Cases;
import counterpull.report.Demo;
import counterpull.report.Findings;
import counterpull.report.table.UnitSet;
import counterpull.scenario.PressScenario;
import counterpull.scenario.units.Units;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A search's sentences: sense, grammar and digits. */
class ChoiceTextTest {
    private static final int WIDE = 1000;
    private static final int MANY = 100;
    private static final Pattern INSTEAD = Pattern.compile("(\\d+\\.\\d)\\D{1,60}? instead of (\\d+\\.\\d)");

    private static String text(Choice choice, UnitSet units) {
        return ChoiceText.of(choice, units, WIDE, MANY);
    }

    private static Choice choice(Findings findings) {
        return findings.others().choice().orElseThrow();
    }

    private static Choice changed(String from, String to) {
        String yaml = Demo.text();
        assertThat(yaml).contains(from);
        return choice(Demo.findings(yaml.replace(from, to), Units.METRIC));
    }

    @Test
    void noNumberIsEverSetAgainstItself() {
        Matcher found = INSTEAD.matcher(text(choice(Demo.usual()), UnitSet.METRIC));
        int seen = 0;
        while (found.find()) {
            assertThat(found.group(1)).as(found.group()).isNotEqualTo(found.group(2));
            seen++;
        }
        // so that the pattern cannot be the reason why nothing was found
        assertThat(seen).isGreaterThan(MANY);
    }

    @Test
    void limitsAndValuesAreToldApartByTheirDigits() {
        Matcher found = Pattern.compile("([\\d.]+).MPa where ([\\d.]+).MPa is allowed")
                .matcher(text(choice(Demo.usual()), UnitSet.METRIC));
        int seen = 0;
        while (found.find()) {
            assertThat(found.group(1)).as(found.group()).isNotEqualTo(found.group(2));
            seen++;
        }
        assertThat(seen).isPositive();
    }

    @Test
    void theChosenOneIsNotExplainedTwice() {
        String text = text(choice(Demo.usual()), UnitSet.METRIC);
        assertThat(text.split("This is the chosen one, see above", -1)).hasSize(2);
    }

    @Test
    void oneSetupKeepsAndSeveralKeep() {
        Choice choice = choice(Demo.usual());
        ChoiceWords words = new ChoiceWords(choice, UnitSet.METRIC);
        for (Ranking ranking : choice.rankings()) {
            assertThat(words.heading(ranking))
                    .contains(ranking.size() == 1 ? "1 setup keeps" : ranking.size() + " setups keep");
        }
    }

    @Test
    void nothingFeasibleNamesLimitValueAndNearestSetupAndPraisesNone() {
        Choice none =
                choice(Demo.findings(Demo.text().replace("least force: 50 N", "least force: 5 kN"), Units.METRIC));
        assertThat(text(none, UnitSet.METRIC))
                .contains("NOTHING FEASIBLE", "Nearest: ")
                .contains("It falls below the floor on the contact force: ", "where at least 5000\u00a0N is wanted")
                .doesNotContain("what stands first is the best");
    }

    @Test
    void aPlaceOutOfReachLeavesNothingToJudge() {
        // today's setup cannot be computed either, so it is searched without it
        PressScenario scenario =
                Demo.scenario(Demo.text().replace("stops: [10 cm, 15 cm, 20 cm, 25 cm]", "stops: [2 cm]"));
        Search search = new Search(new Question(
                scenario.task(), scenario.goal(), scenario.kit(), List.of(Strategy.LOAD_ALONE, Strategy.SPLIT_RANGE)));
        assertThat(search.advance(1)).isFalse();
        Choice none = search.result();
        assertThat(text(none, UnitSet.METRIC))
                .contains("No setup could be judged", "Left out: ")
                .doesNotContain("0 setups judged");
    }

    @Test
    void withoutRubberItSaysSo() {
        String yaml = Demo.text();
        int lines = yaml.indexOf("  lines:\n    - rubber: R1");
        yaml = yaml.substring(0, lines) + yaml.substring(yaml.indexOf("# How fast."));
        int rubber = yaml.indexOf("  rubber:\n    - tag: R1");
        yaml = yaml.substring(0, rubber) + yaml.substring(yaml.indexOf("  # Anchors sit"));
        yaml = yaml.replaceAll("  rubber:\n    - \\{tag: R1, .*\n", "");
        String text = text(choice(Demo.findings(yaml, Units.METRIC)), UnitSet.METRIC);
        assertThat(text).contains("relieve low, ", "no setup keeps every limit", "There is no rubber in the kit.");
    }

    @Test
    void withoutAStopTheBottomIsRoundedAndSaidToHaveNone() {
        Choice choice = changed("  stops: [10 cm, 15 cm, 20 cm, 25 cm]", "  #");
        assertThat(text(choice, UnitSet.METRIC)).containsPattern("bottom at mark \\d+\\.\\d.cm, no stop");
    }

    @Test
    void eachReasonForLeavingOutIsGivenOnceAndInTheReadersUnits() {
        List<String> metric = new ChoiceWords(choice(Demo.usual()), UnitSet.METRIC).leftOut();
        assertThat(metric).allMatch(sentence -> sentence.startsWith("Left out: ") && sentence.endsWith("."));
        assertThat(metric.stream().filter(sentence -> sentence.contains("past its tested length")))
                .hasSize(1);
        assertThat(String.join(" ", new ChoiceWords(choice(Demo.usual()), UnitSet.IMPERIAL).leftOut()))
                .doesNotContain("mm");
    }

    @Test
    void aMixedTotalIsGivenInBothUnits() {
        Choice choice = changed("count: 2, name: old 25s", "count: 2, name: 25 lb");
        Candidate best = choice.rankings().get(0).best(1).get(0);
        assertThat(new ChoiceWords(choice, UnitSet.METRIC).line(best)).contains("25 lb (", "kg in all, ", "\u00a0lb)");
        assertThat(new ChoiceWords(choice(Demo.usual()), UnitSet.METRIC).line(best))
                .doesNotContain("lb");
    }

    @Test
    void aProfileSaysLegsThatAreAlikeTogether() {
        Findings findings = Cases.noLines();
        ProfileWords words = new ProfileWords(findings.first().profile(), findings.goal(), UnitSet.METRIC);
        assertThat(words.unknown())
                .allMatch(sentence -> sentence.startsWith("Strength of the ") && sentence.endsWith("."));
        assertThat(words.turn()).containsPattern("Moving takes up to \\d+.% more than holding still");
        assertThat(words.push()).contains("give or take 10°").doesNotContain("places looked at");
    }
}
