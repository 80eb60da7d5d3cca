package counterpull.report.page;

import counterpull.engine.profile.ExerciseProfile;
import counterpull.letgo.MachineReleases;
import counterpull.report.Html;
import counterpull.report.words.ReleaseWords;

/** What the machines of an exercise do if the person lets go; nothing where nothing resists. */
final class ReleaseSection {
    private ReleaseSection() {}

    static void write(Paper paper, ExerciseProfile profile) {
        if (profile.task().exercise().resists().isEmpty()) {
            return;
        }
        Html html = paper.html();
        ReleaseWords words = new ReleaseWords(profile, paper.unitSet());
        html.open("section").put("h2", "If they let go");
        words.machines().forEach(machine -> write(html, words, machine));
        words.others().forEach(other -> html.put("p", other));
        if (words.tells()) {
            html.put("p.small", words.how());
        }
        html.close().line();
    }

    private static void write(Html html, ReleaseWords words, MachineReleases machine) {
        html.open("p").put("strong", words.name(machine) + ". ");
        html.text(String.join(" ", words.sentences(machine))).close();
        for (String caution : words.cautions(machine)) {
            html.open("p.warn").put("strong", "Careful. ").text(caution).close();
        }
    }
}
