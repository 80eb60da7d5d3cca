package counterpull.report.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterpull.report.Exercises;
import counterpull.report.Html;
import counterpull.report.table.Column;
import counterpull.report.table.Measure;
import counterpull.report.table.NumberColumn;
import counterpull.report.table.Table;
import counterpull.report.table.WordColumn;
import counterpull.scenario.units.Units;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** The frame of a page and what is put on it. */
class PaperTest {
    private static final Table TABLE = new Table(
            "two rows",
            List.of(
                    new WordColumn(new Column.Head("what", "what", "what it is"), List.of("a < b", "c")),
                    new NumberColumn(
                            new Column.Head("pull", "pull", "how hard"), Measure.FORCE, 4.4482216152605, Double.NaN)),
            1);

    private static Element table(Units units) {
        Paper paper = new Paper(units);
        paper.html().open("main");
        paper.table(TABLE);
        return Pages.all(Pages.read(paper.html().close().done()), "table").get(0);
    }

    @Test
    void aTableHasItsUnitInItsHeadAndADashForWhatIsNotKnown() {
        Element metric = table(Units.METRIC);
        assertThat(Pages.all(metric, "th").get(1).getTextContent()).isEqualTo("pull N");
        assertThat(Pages.row(metric, 0)).containsExactly("a < b", "4");
        assertThat(Pages.row(metric, 1)).containsExactly("c", "–");
        // one pound-force is 4.4482216152605 N by definition
        assertThat(Pages.row(table(Units.IMPERIAL), 0)).containsExactly("a < b", "1.0");
    }

    @Test
    void wordsUnderAPictureOnlyWhereThereAreAny() {
        Paper paper = new Paper(Units.METRIC);
        paper.html().open("main");
        paper.picture("<svg/>", "");
        paper.picture("<svg/>", "x & y");
        Document page = Pages.read(paper.html().close().done());
        assertThat(Pages.all(page, "figure")).hasSize(2);
        assertThat(Pages.texts(page, "figcaption")).containsExactly("x & y");
    }

    @Test
    void aPageHasOneTitleOneStyleAndItsHead() {
        Html html = new Html();
        Sheets.open(html, "Dunlin: <press>", Exercises.heading());
        html.put("p", "text");
        Document page = Pages.read(Sheets.close(html));
        assertThat(Pages.texts(page, "title")).containsExactly("Dunlin: <press>: report");
        assertThat(Pages.texts(page, "h1")).containsExactly("Dunlin: <press>");
        assertThat(Pages.all(page, "style")).hasSize(1);
        assertThat(Pages.texts(page, "header").get(0)).contains("2026-11-25", "Counterpull 0.1.0", "dunlin");
        assertThat(Pages.all(page, "main").get(0).getTextContent()).isEqualTo("\ntext");
    }

    @Test
    void aSectionLeftOpenIsNoticed() {
        Html html = new Html();
        Sheets.open(html, "x", Exercises.heading());
        html.open("section");
        assertThatThrownBy(() -> Sheets.close(html)).isInstanceOf(IllegalStateException.class);
    }
}
