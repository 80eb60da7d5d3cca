package counterpull.report.page;

import counterpull.engine.choice.Candidate;
import counterpull.engine.choice.Choice;
import counterpull.engine.choice.Ranking;
import counterpull.engine.choice.SplitSetup;
import counterpull.engine.choice.Strategy;
import counterpull.report.Facts;
import counterpull.report.Setup;
import counterpull.report.SetupSentences;
import counterpull.report.table.Measure;
import java.util.List;

/** The best few of every way to shape the load, each with its reason. */
final class Strategies implements Section {
    private static final int FEW = 3;

    @Override
    public void write(Desk desk) {
        desk.findings().others().choice().ifPresent(choice -> write(desk, choice));
    }

    private static void write(Desk desk, Choice choice) {
        desk.html().open("section").put("h2", "Other ways to get there");
        for (Ranking ranking : choice.rankings()) {
            ranking(desk, ranking);
        }
        if (choice.question().strategies().contains(Strategy.SPLIT_RANGE)) {
            splits(desk, choice.splits());
        }
        desk.html().close().line();
    }

    private static void ranking(Desk desk, Ranking ranking) {
        desk.html().put("h3", capital(ranking.strategy().words()));
        desk.html().put("p", reason(ranking.strategy()));
        if (ranking.size() == 0) {
            desk.html().put("p", "No setup of this kind keeps every limit, or the kit has none.");
            return;
        }
        FactTable table = new FactTable();
        for (Candidate candidate : ranking.best(FEW)) {
            table.add(words(desk, candidate), facts(candidate), candidate.pieces());
        }
        desk.table(table.table("Best of " + ranking.size() + " that keep every limit"));
        ties(desk, ranking);
    }

    private static void ties(Desk desk, Ranking ranking) {
        int ties = ranking.ties().size();
        if (ties > 1) {
            desk.html()
                    .put(
                            "p.small",
                            ties + " setups come exactly as near to the target as the best one; the one with"
                                    + " the smaller largest effort, then with fewer pieces, stands first.");
        }
    }

    private static void splits(Desk desk, List<SplitSetup> splits) {
        desk.html().put("h3", capital(Strategy.SPLIT_RANGE.words()));
        desk.html().put("p", reason(Strategy.SPLIT_RANGE));
        if (splits.isEmpty()) {
            desk.html().put("p", "No pair of sets keeps every limit, or the machine has no second stop.");
            return;
        }
        Grid grid = Grid.open(
                desk.html(),
                "Best pairs",
                List.of("under target", "whole range", "upper part", "upper part begins at"));
        for (SplitSetup split : splits.subList(0, Math.min(FEW, splits.size()))) {
            grid.row(
                    desk.say(Measure.EFFORT_FINE, split.shortfall()),
                    words(desk, split.whole()),
                    words(desk, split.upper()),
                    desk.say(Measure.FRACTION, split.changeover()) + " of the travel");
        }
        grid.close();
    }

    private static String words(Desk desk, Candidate candidate) {
        Setup setup = Setup.of("", candidate, desk.findings().scenario());
        String seat = candidate.place().stance().seat().name();
        String row = candidate.place().stance().row().name();
        SetupSentences words = new SetupSentences(setup, desk.units());
        String bottom = (setup.order().stopped() ? "stop at " : "bottom at ") + words.bottom();
        return words.whole() + " (" + seat + ", " + row + ", " + bottom + ")";
    }

    private static Facts facts(Candidate candidate) {
        return Facts.of(candidate.profile(), candidate.verdict());
    }

    private static String reason(Strategy strategy) {
        return switch (strategy) {
            case LOAD_ALONE -> "Plates only: the least to set up, and the same load along the rail everywhere.";
            case RELIEVE_LOW ->
                "Rubber hung above takes load off where the knee is most bent, so that plates can suit the" + " top.";
            case ADD_HIGH ->
                "Rubber anchored low adds load where the leg is strong, so that plates can suit the bottom and"
                        + " there is less to start and stop.";
            case BOTH -> "Rubber above and below: the most freedom, and the most to set up.";
            case SPLIT_RANGE ->
                "Two kinds of set: a heavy one from a shallower stop and a light one over the whole range.";
        };
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
