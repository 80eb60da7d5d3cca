package counterpull.app.cli;

import counterpull.engine.profile.PressProfile;
import counterpull.report.Setup;
import counterpull.report.result.ProfileTables;
import counterpull.report.result.SummaryTable;
import counterpull.report.result.TextChoice;
import counterpull.report.table.Wrap;
import counterpull.report.words.ProfileWords;
import counterpull.report.words.VerdictWords;
import counterpull.scenario.PressScenario;

/** What a terminal shows of a profile: the small table, what it means, then the detailed tables if they are asked for. */
record ProfilePage(PressScenario scenario, Setup today, TextChoice shown) {
    String text(boolean detailed) {
        String heading = scenario.client().name() + " on " + scenario.machine().name() + ", "
                + today.plates().words() + ", " + today.profile().task().tempo().words();
        StringBuilder text = new StringBuilder(Wrap.block(heading, shown.width(), ""));
        summary(text);
        if (detailed) {
            text.append('\n').append(ProfileTables.text(today.profile(), shown));
        } else {
            Output.say(
                    text,
                    "More: --side left --phase lifting (detailed tables), --all, --format csv; \"counterpull why\""
                            + " for the reason of one number.");
        }
        return text.toString();
    }

    /** The small table and its sentences. */
    void summary(StringBuilder text) {
        PressProfile profile = today.profile();
        text.append(SummaryTable.text(profile, scenario.goal().joints(), shown));
        ProfileWords words = new ProfileWords(profile, scenario.goal(), shown.units());
        VerdictWords verdict = new VerdictWords(profile, today.verdict(), shown.units());
        Output.say(text, String.join(" ", verdict.all()));
        Output.say(text, words.turn());
        Output.say(text, words.push());
        words.unknown().forEach(sentence -> Output.say(text, sentence));
        words.unjudged().forEach(sentence -> Output.say(text, sentence));
    }
}
