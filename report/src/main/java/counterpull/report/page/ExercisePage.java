package counterpull.report.page;

import counterpull.engine.body.Joint;
import counterpull.engine.load.DeadWeight;
import counterpull.engine.load.Resistance;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.ExerciseProfile;
import counterpull.picture.Build;
import counterpull.picture.EffortChart;
import counterpull.picture.ExerciseFigure;
import counterpull.picture.PullChart;
import counterpull.picture.StressChart;
import counterpull.picture.TorqueChart;
import counterpull.report.Cautions;
import counterpull.report.Html;
import counterpull.report.result.ExerciseTables;
import counterpull.report.result.ProfileTables;
import counterpull.report.table.Measure;
import counterpull.report.table.Table;
import counterpull.report.words.ApartWords;
import counterpull.report.words.ChallengeWords;
import counterpull.report.words.SetupWords;
import counterpull.report.words.TempoWords;
import counterpull.scenario.content.About;
import java.util.List;

/** Writes the report of one exercise: one page that stands alone, needs no script and loads nothing. */
public final class ExercisePage {
    private static final int POSITIONS = 9;
    private static final String[] WHERE = {"At the bottom", "Half way", "At the top"};
    private final ExerciseFindings findings;
    private final ExerciseProfile profile;
    private final ChallengeWords words;
    private final Paper paper;
    private final Html html;

    private ExercisePage(ExerciseFindings findings) {
        this.findings = findings;
        profile = findings.profile();
        words = new ChallengeWords(profile, findings.unitSet());
        paper = new Paper(findings.units());
        html = paper.html();
    }

    /** The page as text. */
    public static String html(ExerciseFindings findings) {
        return new ExercisePage(findings).write();
    }

    private String write() {
        Sheets.open(html, findings.heading().client() + ": " + findings.name(), findings.heading());
        answer();
        figures();
        charts();
        SureSection.write(paper, findings);
        ReleaseSection.write(paper, profile);
        measure();
        numbers();
        gaps();
        cautions();
        return Sheets.close(html);
    }

    private void answer() {
        html.open("div.answer").put("h2", "What it asks most");
        html.put("p.loud", words.headline());
        html.put("p.lead", words.sureness());
        String weights = ChallengeWords.weights(profile.task(), paper.unitSet());
        if (!weights.isEmpty()) {
            html.put("p.lead", weights);
        }
        List<String> unknown = words.unknown();
        if (!unknown.isEmpty()) {
            html.open("p.warn").put("strong", "Not known everywhere. ");
            html.text(String.join(" ", unknown) + " The hardest place may lie there.")
                    .close();
        }
        findings.scenario().about().ifPresent(about -> html.put("p", about.what()));
        html.open("ul");
        words.joints().forEach(sentence -> html.put("li", sentence));
        html.close();
        settings();
        html.put("p.small", Cautions.FOR_CARD).close().line();
    }

    private void settings() {
        html.open("dl.settings pair");
        html.open("div").put("dt", "Range").put("dd", words.range()).close();
        chosen();
        wide("What resists", String.join("; ", profile.limbs().get(0).loads()));
        wide(
                "Tempo",
                new TempoWords(findings.units())
                        .of(profile.task().tempo(), profile.course().travel()));
        html.close();
    }

    private void chosen() {
        double chosen = findings.scenario().doing().chosen();
        if (chosen <= 0) {
            return;
        }
        html.open("div").put("dt", "Chosen weight").open("dd").text(mass(chosen));
        for (Resistance resists : profile.task().exercise().resists()) {
            if (resists instanceof DeadWeight weight
                    && weight.mass().mass(0) > 0
                    && weight.mass().mass(chosen) > weight.mass().mass(0)) {
                html.put("small", weight.name() + " " + mass(weight.mass().mass(chosen)) + " in all");
            }
        }
        html.close().close();
    }

    private String mass(double kilograms) {
        return SetupWords.trimmed(Measure.MASS, kilograms, paper.unitSet());
    }

    private void wide(String term, String value) {
        html.open("div.wide").put("dt", term).put("dd", value).close();
    }

    private void figures() {
        html.open("section").put("h2", "Bottom, middle, top").open("div.pictures");
        int last = profile.positions() - 1;
        int[] positions = {0, last / 2, last};
        for (int k = 0; k < positions.length; k++) {
            Phase phase = k == 1 ? Phase.LIFTING : Phase.HELD;
            ExerciseFigure figure =
                    ExerciseFigure.of(profile).built(build()).at(positions[k]).during(phase);
            paper.picture(
                    figure.svg(paper.figureView()),
                    WHERE[k] + ", " + phase.words() + ": " + words.asked(phase, positions[k]));
        }
        html.close().close().line();
    }

    private Build build() {
        Build own = Build.of(profile.limbs().get(0).limb().body());
        return new Build(findings.scenario().client().physique().stature(), own.trunk(), own.upperArm(), own.forearm());
    }

    private void charts() {
        html.open("section").put("h2", "What is asked, and what there is").open("div.pictures");
        paper.chart(EffortChart.of(profile));
        PullChart.of(profile, 0).forEach(paper::chart);
        html.close();
        for (int limb = 0; limb < profile.limbs().size(); limb++) {
            html.put("h3", "The " + profile.limbs().get(limb).side().words() + " side");
            html.open("div.pictures");
            for (Joint joint : profile.joints()) {
                paper.chart(TorqueChart.of(profile, limb, joint));
            }
            if (StressChart.tells(profile)) {
                paper.chart(StressChart.of(profile, limb));
            }
            html.close();
        }
        html.put("p.small", Cautions.NET_TORQUE + " " + Cautions.FIRST_REPETITION)
                .close()
                .line();
    }

    private void measure() {
        List<About.Measuring> measure =
                findings.scenario().about().map(About::measure).orElse(List.of());
        if (measure.isEmpty()) {
            return;
        }
        html.open("section").put("h2", "What to measure before it is used for somebody");
        Grid grid = Grid.open(html, "with tape, inclinometer or scale", List.of("what", "how"));
        measure.forEach(one -> grid.row(one.what(), one.how()));
        grid.close();
        html.close().line();
    }

    /** The lift is shown; what is looked up more seldom is folded away. */
    private void numbers() {
        html.open("section").put("h2", "Numbers");
        for (int limb = 0; limb < profile.limbs().size(); limb++) {
            put(ExerciseTables.asked(profile, limb, Phase.LIFTING));
        }
        html.open("details").put("summary", "Held and lowering, and what each torque is made of");
        for (int limb = 0; limb < profile.limbs().size(); limb++) {
            put(ExerciseTables.asked(profile, limb, Phase.HELD));
            put(ExerciseTables.asked(profile, limb, Phase.LOWERING));
            put(ExerciseTables.parts(profile, limb, Phase.LIFTING));
        }
        html.close();
        html.put(
                "p.small",
                "The first line is the bottom, the last the top. A dash: not known, or not asked. A negative torque asks for"
                        + " the opposite action. What weighs or pulls stands there as its force on the body, without a sign, for all"
                        + " limbs together; rubber on a machine as it arrives at the pad or the grip, where it may help.");
        html.close().line();
    }

    private void put(Table table) {
        paper.table(
                table.only(ProfileTables.evenly(profile.positions(), POSITIONS)).withoutEmpty());
    }

    private void gaps() {
        html.open("section").put("h2", "What is not known").open("ul");
        words.unknown().forEach(gap -> html.put("li", gap));
        ApartWords.of(profile, paper.unitSet()).forEach(gap -> html.put("li", gap));
        html.put(
                "li",
                "A torque is net of all muscles around a joint; muscles that cross two joints, fatigue, and what a"
                        + " surgeon has changed are not in it.");
        html.close().close().line();
    }

    private void cautions() {
        html.open("section")
                .put("h2", "Before you act on a number")
                .open("div.cautions")
                .open("ul");
        findings.scenario().about().ifPresent(about -> about.cautions().forEach(one -> html.put("li", one)));
        Cautions.all().forEach(one -> html.put("li", one));
        html.close().close().close().line();
    }
}
