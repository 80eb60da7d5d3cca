package counterpull.report.page;

import counterpull.picture.Chart;
import counterpull.picture.Figure;
import counterpull.picture.Palette;
import counterpull.picture.Size;
import counterpull.picture.View;
import counterpull.picture.Wording;
import counterpull.report.Findings;
import counterpull.report.Html;
import counterpull.report.table.Column;
import counterpull.report.table.Measure;
import counterpull.report.table.Table;
import counterpull.report.table.UnitSet;
import counterpull.scenario.units.Units;

/** What every section of the page works with: the findings, the paper, and how pictures and tables are put on it. */
final class Desk {
    /** Drawn as small as they are shown on a telephone or three in a row on a desk, so that their words stay readable. */
    private static final Size CHART = new Size(440, 310);

    private static final Size FIGURE = new Size(440, 360);
    private final Findings findings;
    private final Html html = new Html();

    Desk(Findings findings) {
        this.findings = findings;
    }

    Findings findings() {
        return findings;
    }

    Html html() {
        return html;
    }

    Units units() {
        return findings.units();
    }

    UnitSet unitSet() {
        return findings.unitSet();
    }

    /** An SI value with its unit. */
    String say(Measure measure, double si) {
        return measure.words(si, unitSet());
    }

    void chart(Chart chart) {
        picture(chart.svg(view(CHART)), "");
    }

    void figure(Figure figure, String caption) {
        picture(figure.svg(view(FIGURE)), caption);
    }

    private void picture(String svg, String caption) {
        html.open("figure").own(svg);
        if (!caption.isEmpty()) {
            html.put("figcaption", caption);
        }
        html.close().line();
    }

    private View view(Size size) {
        Wording wording = units() == Units.METRIC ? Wording.metric() : Wording.inchPound();
        return new View(size, Palette.themed(), wording);
    }

    /** A table in a box of its own that scrolls sideways. */
    void table(Table table) {
        html.open("div.scroll", "tabindex", "0").open("table").put("caption", table.title());
        html.open("thead").open("tr");
        table.columns().forEach(this::head);
        html.close().close().open("tbody");
        for (int row = 0; row < table.rows(); row++) {
            html.open("tr");
            for (Column column : table.columns()) {
                html.put(column.numeric() ? "td.n" : "td.setup", column.shown(row, unitSet()));
            }
            html.close().line();
        }
        html.close().close().close().line();
    }

    private void head(Column column) {
        html.open(column.numeric() ? "th.n" : "th", "scope", "col")
                .text(column.head().title());
        String unit = column.unit(unitSet());
        if (!unit.isEmpty()) {
            html.text(" ").put("small", unit);
        }
        html.close();
    }
}
