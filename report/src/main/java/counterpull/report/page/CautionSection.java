package counterpull.report.page;

import counterpull.report.Cautions;

/** The cautions, whole. */
final class CautionSection implements Section {
    @Override
    public void write(Desk desk) {
        desk.html()
                .open("section")
                .put("h2", "Before you act on a number")
                .open("div.cautions")
                .open("ul");
        Cautions.all().forEach(caution -> desk.html().put("li", caution));
        desk.html().close().close().close().line();
    }
}
