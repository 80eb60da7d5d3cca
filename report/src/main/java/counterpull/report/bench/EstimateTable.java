package counterpull.report.bench;

import counterpull.bench.Estimate;
import counterpull.bench.Kind;
import counterpull.report.table.Column;
import counterpull.report.table.Table;
import counterpull.report.table.WordColumn;
import java.util.ArrayList;
import java.util.List;

/** Numbers of different kinds below each other, each with its standard uncertainty and its interval. */
final class EstimateTable {
    private final BenchWords words;
    private final List<String> what = new ArrayList<>();
    private final List<String> value = new ArrayList<>();
    private final List<String> interval = new ArrayList<>();

    EstimateTable(BenchWords words) {
        this.words = words;
    }

    EstimateTable put(String name, Estimate estimate, Kind kind) {
        what.add(name);
        boolean limit = estimate.standing() == Estimate.Standing.AT_LIMIT;
        value.add(limit ? words.say(estimate.value(), kind) + " (at its limit)" : words.say(estimate, kind));
        interval.add(words.interval(estimate, kind));
        return this;
    }

    Table table() {
        return new Table(
                "What was found, ± one standard deviation",
                List.of(
                        new WordColumn(new Column.Head("what", "what", "what was found"), what),
                        new WordColumn(new Column.Head("value", "value", "the value ± one standard deviation"), value),
                        new WordColumn(
                                new Column.Head("interval", "95 times in 100 from", "holds the truth 95 times in 100"),
                                interval)),
                1);
    }
}
