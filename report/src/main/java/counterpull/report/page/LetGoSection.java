package counterpull.report.page;

import counterpull.report.Html;
import counterpull.report.Setup;
import counterpull.report.words.LetGoWords;

/** What happens if they stop pushing. */
final class LetGoSection implements Section {
    @Override
    public void write(Desk desk) {
        Html html = desk.html();
        html.open("section").put("h2", "If they let go");
        for (Setup setup : desk.findings().chosen()) {
            if (desk.findings().split()) {
                html.put("h3", setup.name());
            }
            LetGoWords words = new LetGoWords(setup.profile(), desk.unitSet());
            html.put("p", String.join(" ", words.sentences()));
            words.cautions().forEach(caution -> warn(html, caution));
            words.hangs().ifPresent(caution -> warn(html, caution));
            html.put("p.small", words.how());
        }
        html.close().line();
    }

    private static void warn(Html html, String caution) {
        html.open("p.warn").put("strong", "Careful. ").text(caution).close();
    }
}
