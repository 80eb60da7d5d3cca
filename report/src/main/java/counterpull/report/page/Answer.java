package counterpull.report.page;

import counterpull.engine.choice.Choice;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.profile.PressTask;
import counterpull.engine.profile.PushCheck;
import counterpull.report.Cautions;
import counterpull.report.Html;
import counterpull.report.LoadingWords;
import counterpull.report.Setup;
import counterpull.report.SetupSentences;
import counterpull.report.table.Measure;
import counterpull.report.words.LetGoWords;
import counterpull.report.words.SetupWords;
import counterpull.report.words.TempoWords;
import counterpull.report.words.VerdictWords;
import java.util.List;

/** The chosen setup, first and large. */
final class Answer implements Section {
    @Override
    public void write(Desk desk) {
        List<Setup> chosen = desk.findings().chosen();
        for (Setup setup : chosen) {
            desk.html().open("div.answer");
            String title = desk.findings().split() ? "The chosen setup: " + setup.name() : "The chosen setup";
            desk.html().put("h2", title);
            answer(desk, setup);
            desk.html().put("p.small", Cautions.FOR_CARD);
            desk.html().close().line();
        }
    }

    private static void answer(Desk desk, Setup setup) {
        Html html = desk.html();
        SetupSentences words = new SetupSentences(setup, desk.units());
        html.put("p.loud", words.load());
        html.put(
                "p.lead",
                words.course() + " " + new VerdictWords(setup.profile(), setup.verdict(), desk.unitSet()).hardest());
        proof(desk);
        depends(desk, setup);
        for (String alarm : new LoadingWords(setup, desk.units()).alarms()) {
            html.open("p.warn").put("strong", "Stop. ").text(alarm).close();
        }
        for (String caution : new LetGoWords(setup.profile(), desk.unitSet()).cautions()) {
            html.open("p.warn").put("strong", "Careful. ").text(caution).close();
        }
        settings(desk, setup, words);
    }

    private static void proof(Desk desk) {
        desk.findings()
                .others()
                .choice()
                .map(Answer::looked)
                .ifPresent(text -> desk.html().put("p.small", text));
    }

    private static String looked(Choice choice) {
        String judged = choice.extent().considered() + " setups of the kit were judged";
        if (!choice.feasible()) {
            return judged + "; none keeps every limit.";
        }
        return choice.extent().complete()
                ? judged + ", that is all of them: none that keeps every limit comes nearer to the target."
                : judged + ", not yet all of them.";
    }

    private static void depends(Desk desk, Setup setup) {
        double ceiling = desk.findings().goal().ceiling();
        PushCheck check = PushCheck.of(setup.profile(), desk.findings().goal().joints());
        if (check.matters(ceiling)) {
            desk.html().open("p.warn").put("strong", "It depends on how they push. ");
            desk.html().text("See “Direction of the push”.").close();
        }
    }

    private static void settings(Desk desk, Setup setup, SetupSentences words) {
        PressTask task = setup.profile().task();
        Html html = desk.html();
        html.open("dl.settings");
        entry(html, "Seat and back", task.stance().seat().name());
        entry(html, "Foot row", task.stance().row().name());
        String bottom = setup.order().stopped() ? "Bottom stop at mark" : "Bottom at mark (no stop)";
        entry(html, bottom, words.bottom().toString());
        entry(
                html,
                "Top at mark",
                desk.say(Measure.LENGTH, setup.profile().mark(setup.profile().positions() - 1)));
        entry(
                html,
                setup.plates().areOnStack() ? "On the stack" : "Plates in all",
                SetupWords.trimmed(Measure.MASS, setup.plates().total(), desk.unitSet()));
        wide(html, "Tempo", tempo(desk, setup));
        wide(html, "Push", task.pushing().push().words());
        for (ElasticLine line : setup.profile().loading().lines()) {
            wide(html, "Rubber", words.line(line));
        }
        html.close();
    }

    private static String tempo(Desk desk, Setup setup) {
        double travel = setup.profile().ground().motion().stroke().travel();
        return new TempoWords(desk.units()).of(setup.profile().task().tempo(), travel);
    }

    private static void entry(Html html, String term, String value) {
        html.open("div").put("dt", term).put("dd", value).close();
    }

    private static void wide(Html html, String term, String value) {
        html.open("div.wide").put("dt", term).put("dd", value).close();
    }
}
