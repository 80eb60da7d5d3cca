package counterpull.report.result;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import counterpull.engine.choice.Candidate;
import counterpull.engine.choice.Choice;
import counterpull.engine.choice.LimitKind;
import counterpull.engine.choice.Ranking;
import counterpull.engine.choice.Rejections;
import counterpull.engine.choice.SplitSetup;

/** What a search found, for machines: the best few of each strategy and what stopped the rest. */
final class ChoiceJson {
    private static final int FEW = 5;

    private ChoiceJson() {}

    static void write(ObjectNode node, Choice choice) {
        node.put("considered", choice.extent().considered());
        node.put("complete", choice.extent().complete());
        ArrayNode strategies = node.putArray("strategies");
        for (Ranking ranking : choice.rankings()) {
            ObjectNode one = strategies.addObject();
            one.put("strategy", ranking.strategy().words());
            one.put("keep_every_limit", ranking.size());
            ArrayNode best = one.putArray("best");
            ranking.best(FEW).forEach(candidate -> candidate(best.addObject(), candidate));
        }
        ArrayNode splits = node.putArray("split_range");
        choice.splits().stream().limit(FEW).forEach(split -> split(splits.addObject(), split));
        rejections(node, choice.rejections());
    }

    private static void candidate(ObjectNode node, Candidate candidate) {
        node.put("seat", candidate.place().stance().seat().name());
        node.put("foot_row", candidate.place().stance().row().name());
        node.put("plates_kg", candidate.plates().total());
        ArrayNode lines = node.putArray("lines");
        candidate.lines().forEach(line -> SetupJson.line(lines.addObject(), line));
        SetupJson.number(node, "shortfall", candidate.score().shortfall());
        SetupJson.number(node, "peak_effort", candidate.score().peak());
        node.put("pieces", candidate.pieces());
    }

    private static void split(ObjectNode node, SplitSetup split) {
        candidate(node.putObject("whole"), split.whole());
        candidate(node.putObject("upper"), split.upper());
        node.put("changeover_fraction", split.changeover());
        SetupJson.number(node, "shortfall", split.shortfall());
    }

    private static void rejections(ObjectNode node, Rejections rejections) {
        ObjectNode stopped = node.putObject("stopped_by");
        for (LimitKind kind : LimitKind.values()) {
            stopped.put(kind.words(), rejections.stoppedBy(kind));
        }
        ArrayNode left = node.putArray("left_out");
        rejections.leftOut().forEach(left::add);
    }
}
