package counterpull.report.page;

import counterpull.report.Findings;
import counterpull.report.Heading;
import counterpull.report.Html;
import counterpull.report.Style;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Writes the report: one page that stands alone, needs no script and loads nothing. */
public final class ReportWriter {
    private static final List<Section> SECTIONS = List.of(
            new Answer(),
            new Comparison(),
            new Figures(),
            new Charts(),
            new OrderSection(),
            new LetGoSection(),
            new Strategies(),
            new Rejected(),
            new PushSection(),
            new NotKnown(),
            new Inputs(),
            new Numbers(),
            new CautionSection());

    private ReportWriter() {}

    /** The page as UTF-8; the stream is left open. */
    public static void html(Findings findings, OutputStream to) throws IOException {
        to.write(html(findings).getBytes(StandardCharsets.UTF_8));
    }

    /** The page as text. */
    public static String html(Findings findings) {
        Desk desk = new Desk(findings);
        Html html = desk.html();
        html.own("<!DOCTYPE html>\n").open("html", "lang", "en").line();
        head(html, findings.heading());
        html.open("body").line();
        title(html, findings.heading());
        html.open("main").line();
        SECTIONS.forEach(section -> section.write(desk));
        html.close().close().line();
        return html.close().done();
    }

    private static void head(Html html, Heading heading) {
        html.open("head").empty("meta", "charset", "utf-8");
        html.own("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>");
        html.put("title", heading.client() + ": report").line();
        html.open("style").own(Style.page()).close().close().line();
    }

    private static void title(Html html, Heading heading) {
        html.open("header.head").put("h1", heading.client() + " on " + heading.machine());
        html.put("p", heading.made() + " · Counterpull " + heading.version() + " · " + heading.scenario());
        html.close().line();
    }
}
