package counterpull.report.page;

import counterpull.picture.Figure;
import counterpull.report.Findings;

/** What every section of a press's report works with: the findings and the paper. */
final class Desk extends Paper {
    private final Findings findings;

    Desk(Findings findings) {
        super(findings.units());
        this.findings = findings;
    }

    Findings findings() {
        return findings;
    }

    void figure(Figure figure, String caption) {
        picture(figure.svg(figureView()), caption);
    }
}
