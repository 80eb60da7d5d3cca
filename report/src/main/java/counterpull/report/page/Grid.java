package counterpull.report.page;

import counterpull.report.Html;
import java.util.List;

/** A table of words: a heading row and rows of cells, in a box of its own that scrolls sideways. */
public final class Grid {
    private final Html html;

    private Grid(Html html) {
        this.html = html;
    }

    public static Grid open(Html html, String caption, List<String> heads) {
        html.open("div.scroll", "tabindex", "0").open("table").put("caption", caption);
        html.open("thead").open("tr");
        heads.forEach(head -> html.put("th", "scope", "col", head));
        html.close().close().open("tbody");
        return new Grid(html);
    }

    public Grid row(String... cells) {
        html.open("tr").put("th", "scope", "row", cells[0]);
        for (int i = 1; i < cells.length; i++) {
            html.put("td.words", cells[i]);
        }
        html.close().line();
        return this;
    }

    public void close() {
        html.close().close().close().line();
    }
}
