package counterpull.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.motion.Phase;
import counterpull.engine.profile.PressProfile;
import counterpull.report.Cases;
import counterpull.report.Cautions;
import counterpull.report.Demo;
import counterpull.report.Findings;
import counterpull.report.Html;
import counterpull.report.table.Decimals;
import counterpull.scenario.units.Units;
import java.io.StringReader;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

/** The page is well formed, stands alone, and says what the profile says. */
class ReportWriterTest {
    private static Document parsed(String page) throws Exception {
        String xml = page.replace("<!DOCTYPE html>\n", "");
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(xml)));
    }

    @Test
    void everyCaseIsWellFormedAndStandsAlone() throws Exception {
        for (Findings findings :
                List.of(Demo.usual(), Cases.noLines(), Cases.oneLimb(), Cases.hardest(), Cases.nasty())) {
            String page = ReportWriter.html(findings);
            assertThat(parsed(page).getElementsByTagName("section").getLength()).isGreaterThan(6);
            assertThat(page.replace("http://www.w3.org/2000/svg", ""))
                    .doesNotContain("<script", "http:", "https:", "src=", "url(", "@import", "NaN", "Infinity");
            assertThat(page).contains(Html.escaped(Cautions.RUBBER), Html.escaped(Cautions.AVERAGES));
        }
    }

    @Test
    void whatAPersonTypedStaysText() throws Exception {
        String page = ReportWriter.html(Cases.nasty());
        assertThat(page).doesNotContain("<b>");
        assertThat(parsed(page).getElementsByTagName("h1").item(0).getTextContent())
                .contains(Cases.NASTY);
    }

    @Test
    void theAnswerComesFirstWithTheProfilesNumbers() throws Exception {
        Findings findings = Demo.usual();
        PressProfile profile = findings.first().profile();
        String text = parsed(ReportWriter.html(findings)).getDocumentElement().getTextContent();
        int answer = text.indexOf("The chosen setup");
        assertThat(answer).isPositive().isLessThan(text.indexOf("Today and chosen"));
        assertThat(text)
                .contains("the push is " + Math.round(profile.force(Phase.LIFTING, 0)) + "\u00A0N at the bottom")
                .contains(Math.round(profile.force(Phase.LIFTING, profile.positions() - 1)) + "\u00A0N at the top");
        double peak = findings.first().verdict().peak().orElseThrow().limiting().effort();
        assertThat(text)
                .contains("at " + Decimals.fixed(100 * peak, 1) + "\u00A0% of what it has")
                .contains("within the strength's 90\u00A0% band");
    }

    @Test
    void everyStatedLimitIsDrawnOnItsChart() {
        // the example limits kneecap stress, knee extension torque and the least push
        // without a search, so that no table of limits has the same words
        String page = ReportWriter.html(Demo.asLoaded(Demo.text(), Units.METRIC));
        assertThat(page).contains(">limit<", ">limit, knee", ">least push<");
        String without = ReportWriter.html(
                Demo.asLoaded(Demo.text().replaceFirst("(?m)^  kneecap stress: .*$", ""), Units.METRIC));
        assertThat(without).doesNotContain(">limit<");
    }

    @Test
    void saysWhenTheAnswerDependsOnThePush() {
        // in the example the push may stray by 10°, and that passes the ceiling
        assertThat(ReportWriter.html(Demo.usual())).contains("It depends on how they push");
    }

    @Test
    void everyStrategyAndEveryReasonIsThere() {
        String page = ReportWriter.html(Demo.usual());
        assertThat(page)
                .contains(
                        "Load alone", "Relieve low", "Add high", "Why the others failed", "kneecap joint stress limit");
        assertThat(ReportWriter.html(Cases.noLines())).doesNotContain("Why the others failed");
    }
}
