package counterpull.report.bench;

import counterpull.bench.Remark;
import counterpull.report.Cautions;
import counterpull.report.Heading;
import counterpull.report.Html;
import counterpull.report.page.Paper;
import counterpull.report.page.Sheets;
import counterpull.scenario.units.Units;
import java.util.List;

/** The page of a file of readings: a section for each thing that was measured. It stands alone, needs no script and loads nothing. */
public final class BenchPage {
    private final Paper paper;
    private final Html html;
    private final BenchWords words;

    private BenchPage(Units units) {
        paper = new Paper(units);
        html = paper.html();
        words = new BenchWords(units);
    }

    /** The page as text. */
    public static String html(List<BenchSection> sections, Heading heading, Units units) {
        BenchPage page = new BenchPage(units);
        Sheets.open(page.html, "What the readings say", heading);
        sections.forEach(page::section);
        page.cautions();
        return Sheets.close(page.html);
    }

    private void section(BenchSection section) {
        html.open("section").put("h2", section.title());
        remarks(section, Remark.Weight.REFUSES, "No answer can come of these readings. ");
        if (!section.headline().isEmpty()) {
            html.put("p.lead", section.headline() + ".");
        }
        remarks(section, Remark.Weight.DOUBTFUL, "Look at this first. ");
        list(section.sentences());
        html.open("div.pictures");
        section.charts().forEach(one -> paper.chart(one.chart(), one.caption()));
        html.close();
        section.tables().forEach(paper::table);
        list(section.remarks().stream()
                .filter(remark -> remark.weight() == Remark.Weight.NOTE)
                .map(words::say)
                .toList());
        if (!section.forScenario().isEmpty()) {
            html.open("details").put("summary", "For a scenario file");
            html.put("pre", section.forScenario()).close();
        }
        html.close().line();
    }

    private void remarks(BenchSection section, Remark.Weight weight, String lead) {
        List<Remark> found = section.remarks().stream()
                .filter(remark -> remark.weight() == weight)
                .toList();
        if (found.isEmpty()) {
            return;
        }
        html.open("div.warn").open("p").put("strong", lead).close();
        list(found.stream().map(words::say).toList());
        html.close().line();
    }

    private void list(List<String> sentences) {
        if (sentences.isEmpty()) {
            return;
        }
        html.open("ul");
        sentences.forEach(sentence -> html.put("li", sentence));
        html.close().line();
    }

    private void cautions() {
        html.open("section").put("h2", "Before you act on a number").open("div.cautions");
        list(List.of(Cautions.COMPUTES, Cautions.DECIDES, Cautions.MAKER, Cautions.RUBBER));
        html.close().close().line();
    }
}
