package counterpull.report.page;

import counterpull.engine.choice.Candidate;
import counterpull.engine.choice.Choice;
import counterpull.engine.choice.LimitKind;
import counterpull.engine.choice.Rejections;
import counterpull.report.Setup;
import counterpull.report.SetupSentences;
import counterpull.report.words.VerdictWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Why the rest failed. */
final class Rejected implements Section {
    @Override
    public void write(Desk desk) {
        desk.findings().others().choice().map(Choice::rejections).ifPresent(found -> write(desk, found));
    }

    private static void write(Desk desk, Rejections rejections) {
        desk.html().open("section").put("h2", "Why the others failed");
        Grid grid = Grid.open(
                desk.html(), "Setups that do not keep a limit (one may miss several)", List.of("limit", "setups"));
        for (LimitKind kind : LimitKind.values()) {
            if (rejections.stoppedBy(kind) > 0) {
                grid.row(kind.words(), String.valueOf(rejections.stoppedBy(kind)));
            }
        }
        grid.close();
        rejections.nearestMiss().ifPresent(miss -> nearest(desk, miss));
        leftOut(desk, rejections.leftOut());
        desk.html().close().line();
    }

    private static void nearest(Desk desk, Candidate miss) {
        Setup setup = Setup.judged("", miss, desk.findings().scenario());
        String what = new SetupSentences(setup, desk.units()).whole();
        String passed = String.join(" ", new VerdictWords(setup.profile(), setup.verdict(), desk.unitSet()).passed());
        desk.html().put("p", "The nearest miss: " + what + ". " + passed);
    }

    /** Each reason once, with how many ways it left out and the first of them. */
    private static void leftOut(Desk desk, List<String> words) {
        if (words.isEmpty()) {
            return;
        }
        Map<String, List<String>> byReason = new LinkedHashMap<>();
        for (String word : words) {
            int cut = word.indexOf(": ");
            String reason = cut < 0 ? "" : word.substring(cut + 2);
            byReason.computeIfAbsent(reason, why -> new ArrayList<>()).add(cut < 0 ? word : word.substring(0, cut));
        }
        desk.html().put("h3", "Left out before anything was computed").open("ul");
        byReason.forEach((reason, ways) -> desk.html().put("li", ways.get(0) + more(ways.size()) + colon(reason)));
        desk.html().close();
    }

    private static String more(int ways) {
        return ways == 1 ? "" : ", and " + (ways - 1) + " more like it";
    }

    private static String colon(String reason) {
        return reason.isEmpty() ? "" : ": " + reason;
    }
}
