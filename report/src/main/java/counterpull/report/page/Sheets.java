package counterpull.report.page;

import counterpull.report.Heading;
import counterpull.report.Html;
import counterpull.report.Style;

/** The frame that every page has: head with the one style sheet, title, body. */
public final class Sheets {
    private Sheets() {}

    /** Opens a page up to its {@code main}; the caller closes with {@link #close}. */
    public static void open(Html html, String title, Heading heading) {
        html.own("<!DOCTYPE html>\n").open("html", "lang", "en").line();
        html.open("head").empty("meta", "charset", "utf-8");
        html.own("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>");
        html.put("title", title + ": report").line();
        html.open("style").own(Style.page()).close().close().line();
        html.open("body").line();
        html.open("header.head").put("h1", title);
        html.put("p", heading.made() + " · Counterpull " + heading.version() + " · " + heading.scenario());
        html.close().line();
        html.open("main").line();
    }

    /** Closes it and gives the page. */
    public static String close(Html html) {
        html.close().close().line();
        return html.close().done();
    }
}
