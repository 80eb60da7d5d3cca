package counterpull.report.card;

import counterpull.engine.load.Resistance;
import counterpull.engine.load.StretchLine;
import counterpull.engine.load.StretchSeries;
import counterpull.engine.motion.Tempo;
import counterpull.engine.profile.ExerciseProfile;
import counterpull.picture.ExerciseFigure;
import counterpull.report.Cautions;
import counterpull.report.Exact;
import counterpull.report.Html;
import counterpull.report.SessionPlan;
import counterpull.report.Style;
import counterpull.report.page.ExerciseFindings;
import counterpull.report.table.Measure;
import counterpull.report.words.ChallengeWords;
import counterpull.report.words.SetupWords;
import counterpull.scenario.content.Plan;
import counterpull.scenario.units.Dimension;
import counterpull.scenario.units.Units;
import counterpull.scenario.write.SettingsInWords;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Optional;

/** Writes the floor card of an exercise: one A4 page in letters that can be read at arm's length. */
public final class ExerciseCard {
    private final ExerciseFindings findings;
    private final ExerciseProfile profile;
    private final ChallengeWords words;
    private final Html html = new Html();

    private ExerciseCard(ExerciseFindings findings) {
        this.findings = findings;
        profile = findings.profile();
        words = new ChallengeWords(profile, findings.unitSet());
    }

    /**
     * The card.
     *
     * @param findings what it shows
     * @param to where the PDF goes; left open
     * @return notes for whoever asked for it; usually none
     */
    public static List<String> pdf(ExerciseFindings findings, OutputStream to) throws IOException {
        ExerciseFigure figure = ExerciseFigure.of(findings.profile());
        return CardPdf.write(
                density -> new ExerciseCard(findings).page(density, CardFigure.of(figure, density)),
                findings.heading(),
                CardFonts.found(),
                to);
    }

    private String page(Density density, String figure) {
        html.open("html", "xmlns", "http://www.w3.org/1999/xhtml").open("head");
        html.put("title", "Floor card").open("style").own(Style.card()).close().close();
        html.open("body." + density.css());
        head();
        numbers();
        work();
        settings(figure);
        rubber();
        stop();
        foot();
        return html.close().close().done();
    }

    private void head() {
        html.open("table.block fit").open("tr");
        html.open("td.q").put("span.who", findings.heading().client()).close();
        html.open("td.right").text(findings.name()).close().close().close();
    }

    private void numbers() {
        html.open("table.block rule fit").open("tr");
        double chosen = findings.scenario().doing().chosen();
        if (chosen > 0) {
            cell("Chosen weight", SetupWords.trimmed(Measure.MASS, chosen, findings.unitSet()));
        }
        String coordinate = profile.driver().map(joint -> joint.angleWords()).orElse("travel");
        cell("Start, " + coordinate, words.place(0));
        cell("End", words.place(profile.positions() - 1));
        html.close().close();
        html.put("p.block", words.headline() + ".");
    }

    private void cell(String label, String value) {
        html.open("td").put("div.label q", label).put("div.n q", value).close();
    }

    private void work() {
        html.open("table.block rule fit").open("tr");
        Optional<Plan> plan = findings.scenario().aim().plan();
        cell("Sets × reps", plan.map(p -> p.sets() + " × " + p.repetitions()).orElse("…… × ……"));
        cell("Leave", plan.map(p -> String.valueOf(p.repetitionsLeft())).orElse("……"));
        cell("Rest", plan.map(p -> seconds(p.rest())).orElse("……"));
        Tempo.Seconds seconds = profile.task().tempo().seconds(profile.course().travel());
        cell("Down", seconds(seconds.lowering()));
        cell("Wait low", seconds(seconds.lowPause()));
        cell("Up", seconds(seconds.lifting()));
        cell("Wait high", seconds(seconds.highPause()));
        html.close().close();
        if (!profile.task().tempo().words().isEmpty()) {
            html.put("p.block", "Turn: " + profile.task().tempo().words() + ".");
        }
    }

    private String seconds(double time) {
        return Exact.words(time, Dimension.TIME, findings.units());
    }

    private void settings(String figure) {
        String title = findings.units() == Units.METRIC ? "As measured" : "As measured, metric";
        html.open("table.block rule").open("tr").open("td").put("b", title);
        for (String setting : SettingsInWords.of(findings.scenario())) {
            html.put("span.step", setting);
        }
        html.close();
        if (!figure.isEmpty()) {
            html.open("td.figure").own(figure).close();
        }
        html.close().close();
    }

    /** How loose each tube hangs at the bottom: what a tape can check before the first repetition. */
    private void rubber() {
        for (Resistance resistance : profile.task().exercise().resists()) {
            if (resistance instanceof StretchLine line) {
                StretchSeries series = line.over(profile.limbs().get(0).path());
                double loose = series.looseness(0);
                html.put(
                        "p.block",
                        "Check at the start: " + line.name() + (loose >= 0 ? " loose by " : " stretched by ")
                                + Measure.LENGTH.words(Math.abs(loose), findings.unitSet()) + ".");
            }
        }
    }

    private void stop() {
        html.open("p.block rule").put("b", "Stop when ");
        html.text(String.join("; ", SessionPlan.USUAL_STOPS) + ".").close();
        findings.scenario().about().ifPresent(about -> {
            if (!about.cautions().isEmpty()) {
                html.put("p.block", String.join(" ", about.cautions()));
            }
        });
    }

    private void foot() {
        html.open("p.thin").text(Cautions.FOR_CARD + " ");
        html.put(
                        "span.foot",
                        findings.heading().made() + " · Counterpull "
                                + findings.heading().version() + " · "
                                + findings.heading().scenario())
                .close();
    }
}
