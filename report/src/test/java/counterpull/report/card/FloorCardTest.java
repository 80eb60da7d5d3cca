package counterpull.report.card;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.report.Cases;
import counterpull.report.Demo;
import counterpull.report.Findings;
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
                .contains("Counterpull 0.1.0", "example", "Rack the carriage at mark", "Down", "Leave", "→", "×", "°");
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
}
