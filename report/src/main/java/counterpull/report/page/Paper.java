package counterpull.report.page;

import counterpull.picture.Chart;
import counterpull.picture.Palette;
import counterpull.picture.Size;
import counterpull.picture.View;
import counterpull.picture.Wording;
import counterpull.report.Html;
import counterpull.report.table.Column;
import counterpull.report.table.Measure;
import counterpull.report.table.Table;
import counterpull.report.table.UnitSet;
import counterpull.scenario.units.Units;

/** A page that is being written: how pictures and tables are put on it, in a reader's units. */
public class Paper {
    /** Drawn as small as they are shown on a telephone or three in a row on a desk, so that their words stay readable. */
    private static final Size CHART = new Size(440, 310);

    private static final Size FIGURE = new Size(440, 360);
    private final Units units;
    private final Html html = new Html();

    /** An empty page in a reader's units. */
    public Paper(Units units) {
        this.units = units;
    }

    /** What is written on. */
    public Html html() {
        return html;
    }

    /** The reader's units. */
    public Units units() {
        return units;
    }

    /** The same for numbers in tables and sentences. */
    public UnitSet unitSet() {
        return UnitSet.of(units);
    }

    /** An SI value with its unit. */
    public String say(Measure measure, double si) {
        return measure.words(si, unitSet());
    }

    /** A chart without words under it. */
    public void chart(Chart chart) {
        chart(chart, "");
    }

    /** A chart with words under it; none where they are empty. */
    public void chart(Chart chart, String caption) {
        picture(chart.svg(view(CHART)), caption);
    }

    /** A picture that this program drew, with words under it. */
    public void picture(String svg, String caption) {
        html.open("figure").own(svg);
        if (!caption.isEmpty()) {
            html.put("figcaption", caption);
        }
        html.close().line();
    }

    /** The units of what is drawn. */
    public Wording wording() {
        return units == Units.METRIC ? Wording.metric() : Wording.inchPound();
    }

    /** How a figure is looked at. */
    public View figureView() {
        return view(FIGURE);
    }

    private View view(Size size) {
        return new View(size, Palette.themed(), wording());
    }

    /** A table in a box of its own that scrolls sideways. */
    public void table(Table table) {
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
