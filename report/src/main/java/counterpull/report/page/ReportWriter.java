package counterpull.report.page;

import counterpull.report.Findings;
import counterpull.report.Html;
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
            new SureSection(),
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
        Sheets.open(
                html, findings.heading().client() + " on " + findings.heading().machine(), findings.heading());
        SECTIONS.forEach(section -> section.write(desk));
        return Sheets.close(html);
    }
}
