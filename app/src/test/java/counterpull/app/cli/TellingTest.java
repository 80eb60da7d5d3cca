package counterpull.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.choice.Question;
import counterpull.engine.choice.Search;
import counterpull.engine.choice.Strategy;
import counterpull.scenario.PressScenario;
import counterpull.scenario.tree.Source;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a long search says of itself. */
class TellingTest {
    private static Search search() {
        PressScenario scenario = ScenarioFiles.read(
                List.of(Source.of(Path.of("../demo/plover.yaml")), Source.of(Path.of("../demo/room.yaml"))));
        return new Search(new Question(
                scenario.task(), scenario.goal(), scenario.kit(), List.of(Strategy.LOAD_ALONE, Strategy.SPLIT_RANGE)));
    }

    @Test
    void itSaysWhichStageItIsInAndHowFar() {
        Search search = search();
        search.advance(1);
        assertThat(Telling.words(search)).contains("1 setups judged; single setups, place 1 of ");
        while (search.splits().isEmpty()) {
            search.advance(200);
        }
        assertThat(Telling.words(search)).contains("pairing heavy and light sets, seat and row 1 of ");
    }

    @Test
    void awayFromATerminalItIsSilent() {
        StringWriter said = new StringWriter();
        Telling telling = new Telling(new PrintWriter(said), false);
        telling.of(search());
        telling.end();
        assertThat(said.toString()).isEmpty();
    }
}
