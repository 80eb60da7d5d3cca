package counterpull.report.page;

import counterpull.engine.Refusal;
import counterpull.engine.strength.Tester;
import counterpull.engine.uncertainty.Doubts;
import counterpull.engine.uncertainty.EffortBands;
import counterpull.engine.uncertainty.HowSure;
import counterpull.engine.uncertainty.Looked;
import counterpull.engine.uncertainty.Sampling;
import counterpull.engine.uncertainty.Trial;
import counterpull.picture.SureChart;
import counterpull.report.Html;
import counterpull.report.Setup;
import counterpull.report.result.SureTables;
import counterpull.report.words.SureWords;
import java.util.function.Supplier;

/** How sure the answer is: bands, chances, what contributes, which reading next. */
final class SureSection implements Section {
    /** Fewer than on the command line, so that a page does not wait; ours. */
    private static final int DRAWS = 1000;

    private static final int SEED = 1;
    private static final int READINGS = 5;

    @Override
    public void write(Desk desk) {
        desk.html().open("section").put("h2", "How sure that is");
        for (Setup setup : desk.findings().chosen()) {
            if (desk.findings().split()) {
                desk.html().put("h3", setup.name());
            }
            write(
                    desk,
                    () -> sure(
                            desk.findings().scenario().doubts(setup.profile()),
                            desk.findings().scenario().looked()));
        }
        desk.html().close().line();
    }

    /** The same for any other exercise. */
    static void write(Paper paper, ExerciseFindings findings) {
        paper.html().open("section").put("h2", "How sure that is");
        write(
                paper,
                () -> sure(findings.scenario().doubts(), findings.scenario().looked()));
        paper.html().close().line();
    }

    private static <T extends Trial<T>> HowSure sure(Doubts<T> doubts, Looked looked) {
        EffortBands bands = new Sampling<>(doubts, looked, SEED, DRAWS).bands();
        return HowSure.of(doubts, bands, Tester.BELT_FIXED);
    }

    /** A setup that cannot be set up as measured has no band: the rest of the page stands. */
    private static void write(Paper paper, Supplier<HowSure> sure) {
        try {
            write(paper, sure.get());
        } catch (Refusal refusal) {
            paper.html().put("p", "That cannot be said: " + refusal.getMessage() + ".");
        }
    }

    private static void write(Paper paper, HowSure sure) {
        Html html = paper.html();
        SureWords words = new SureWords(sure, paper.unitSet());
        words.all().forEach(sentence -> html.put("p", sentence));
        html.open("div.pictures");
        paper.chart(SureChart.of(sure));
        html.close();
        sure.contributions().ifPresent(found -> {
            paper.table(SureTables.contributions(found, paper.unitSet()));
            html.put("p.small", SureTables.rest(found));
        });
        if (!sure.next().isEmpty()) {
            paper.table(SureTables.next(sure, paper.unitSet(), READINGS));
        }
        html.put("p.small", words.notVaried()).line();
    }
}
