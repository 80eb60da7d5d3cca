package counterpull.report.card;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.choice.Strategy;
import counterpull.report.Cases;
import counterpull.report.Demo;
import counterpull.report.Findings;
import counterpull.report.Setup;
import counterpull.report.page.ReportWriter;
import counterpull.scenario.units.Units;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One page, large letters, everything on it. */
class FloorCardTest {
    @Test
    void everyCaseIsOnePage() throws IOException {
        for (Findings findings :
                List.of(Demo.usual(), Cases.noLines(), Cases.oneLimb(), Cases.hardest(), Cases.nasty())) {
            CardText card = CardText.of(findings);
            assertThat(card.pages).as(findings.heading().client()).isEqualTo(1);
            assertThat(card.notes).as(findings.heading().client()).isEmpty();
        }
    }

    @Test
    void noLetterIsSmallerThan14PointsAndNumbersToSetAre22() throws IOException {
        for (Findings findings : List.of(Demo.usual(), Cases.hardest())) {
            CardText card = CardText.of(findings);
            assertThat(card.letters)
                    .allSatisfy(letter -> assertThat(letter.points()).isGreaterThanOrEqualTo(14));
            var line = findings.first().profile().loading().lines().get(0);
            for (String set : List.of(
                    findings.first().profile().task().stance().seat().name(),
                    line.rubber().tag(),
                    line.ends().anchor().name(),
                    card.after("Dead length"),
                    card.after("Bottom stop at"),
                    "3 × 8")) {
                assertThat(card.sizeOf(set)).as(set).isGreaterThanOrEqualTo(22);
            }
        }
    }

    @Test
    void carriesWhatTheFloorNeeds() throws IOException {
        CardText card = CardText.of(Demo.usual());
        assertThat(card.words)
                .contains("Tern", "sled by the window", "Load", "Unload", "Stop when", "Tubing can snap", "2026-11-25")
                .contains(
                        "Counterpull 0.1.0",
                        "example",
                        "Let the carriage rest on the stop",
                        "Down",
                        "Leave",
                        "→",
                        "×",
                        "°");
    }

    @Test
    void withoutTheFontTheBuiltInOnesStandInAndItIsSaid() throws IOException {
        CardText card = CardText.builtIn(Demo.usual());
        assertThat(card.pages).isEqualTo(1);
        assertThat(card.notes).singleElement().asString().contains("built-in fonts");
        assertThat(card.words).contains("to side pins", "°", "×").doesNotContain("#");
    }

    @Test
    void aNameIsNeverMarkup() throws IOException {
        assertThat(CardText.of(Cases.nasty()).words).contains(Cases.NASTY);
    }

    @Test
    void theSameInputGivesTheSameBytes() throws IOException {
        ByteArrayOutputStream first = new ByteArrayOutputStream();
        ByteArrayOutputStream second = new ByteArrayOutputStream();
        FloorCard.pdf(Demo.usual(), first);
        FloorCard.pdf(Demo.usual(), second);
        assertThat(second.toByteArray()).isEqualTo(first.toByteArray());
    }

    @Test
    void everyTempoPushAndRangeEndFitsAndIsSaid() throws IOException {
        String fullStop = "full stop: {lowering: 3 s, low pause: 1 s, lifting: 2 s, high pause: 0 s}";
        String bounce = "bounce: {lowering speed: 0.25 m/s, lifting speed: 0.2 m/s, turn time: 0.2 s}";
        assertThat(changed(fullStop, bounce)).contains("0.25 m/s", "0.2 m/s", "0.2 s", "bounce at the bottom");
        assertThat(changed(fullStop, "flowing: {at: bottom, lowering: 3 s, lifting: 2 s}"))
                .contains("flowing");
        assertThat(changed("    angle: 0 deg\n", "    angle: -3.25 deg\n")).contains("at -3.25° to the rail");
        assertThat(changed("    angle: 0 deg\n", "    least effort: {from: -5 deg, to: 8 deg}\n"))
                .contains("between -5° and 8° to the rail");
        assertThat(changed("stops: [10 cm, 15 cm, 20 cm, 25 cm]", "stops: []"))
                .contains("No bottom stop: nothing catches the load", "Stroke starts at 90.0° of knee bend")
                .doesNotContainPattern("\\d\\.\\d{4}");
    }

    private static String changed(String from, String to) throws IOException {
        assertThat(Demo.text()).contains(from);
        CardText card = CardText.of(Demo.asLoaded(Demo.text().replace(from, to), Units.METRIC));
        assertThat(card.pages).isEqualTo(1);
        return card.words.replaceAll("\\s+", " ");
    }

    @Test
    void aSplitRangeHasACardForEachSet() throws IOException {
        Findings whole = Demo.usual();
        Setup upper = Setup.of("upper part", Demo.best(Strategy.LOAD_ALONE).orElseThrow(), whole.scenario());
        Findings split = new Findings(
                whole.heading(),
                whole.scenario(),
                List.of(whole.first(), upper),
                whole.others(),
                whole.plan(),
                whole.units());
        assertThat(CardText.of(split, upper).words).contains("upper part", "No rubber.");
        assertThat(CardText.of(split, split.first()).words)
                .contains(split.first().name(), "R1");
        assertThat(ReportWriter.html(split)).contains("The chosen setup: upper part");
    }
}
