package counterpull.report.page;

import counterpull.engine.choice.Breach;
import counterpull.engine.choice.Candidate;
import counterpull.engine.choice.Choice;
import counterpull.engine.choice.LimitKind;
import counterpull.engine.choice.Rejections;
import counterpull.engine.profile.Profile;
import counterpull.report.Setup;
import counterpull.report.SetupSentences;
import counterpull.report.table.Decimals;
import counterpull.report.table.Measure;
import counterpull.report.table.Scale;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Why the rest failed. */
final class Rejected implements Section {
    private static final int MOST_DECIMALS = 9;

    @Override
    public void write(Desk desk) {
        desk.findings().others().choice().map(Choice::rejections).ifPresent(found -> write(desk, found));
    }

    private static void write(Desk desk, Rejections rejections) {
        desk.html().open("section").put("h2", "Why the others failed");
        Grid grid =
                Grid.open(desk.html(), "Setups that passed a limit (one may pass several)", List.of("limit", "setups"));
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
        miss.verdict()
                .tightest()
                .filter(Breach::passed)
                .ifPresent(breach -> desk.html()
                        .put(
                                "p",
                                "The nearest miss: " + what + ". It passes the "
                                        + breach.kind().words() + ": "
                                        + apart(desk, breach) + where(desk, setup, breach)
                                        + "."));
    }

    private static String where(Desk desk, Setup setup, Breach breach) {
        Breach.Where where = breach.where();
        Profile profile = setup.profile();
        StringBuilder words = new StringBuilder();
        where.side().ifPresent(side -> words.append(", ").append(side.words()));
        where.action().ifPresent(action -> words.append(' ').append(action.words()));
        if (where.position() >= 0) {
            words.append(", ").append(where.phase().words()).append(" at ");
            words.append(desk.say(Measure.ANGLE, profile.drivingAngle(where.position())))
                    .append(" of knee bend");
        }
        return words.append(where.label().isEmpty() ? "" : ", " + where.label()).toString();
    }

    /** Value and limit with as many digits as it takes to tell them apart. */
    private static String apart(Desk desk, Breach breach) {
        Scale scale = measure(breach.kind()).in(desk.unitSet());
        int decimals = scale.decimals();
        String value;
        String limit;
        do {
            value = Decimals.fixed(scale.from(breach.value()), decimals);
            limit = Decimals.fixed(scale.from(breach.limit()), decimals);
            decimals++;
        } while (value.equals(limit) && decimals <= MOST_DECIMALS);
        return value + " " + scale.unit() + " where " + limit + " " + scale.unit() + " is the limit";
    }

    private static Measure measure(LimitKind kind) {
        return switch (kind) {
            case CEILING -> Measure.EFFORT;
            case JOINT_TORQUE -> Measure.TORQUE;
            case KNEECAP_STRESS -> Measure.STRESS;
            default -> Measure.FORCE;
        };
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
