package counterpull.report.bench;

import counterpull.bench.tubing.Candidate;
import counterpull.bench.tubing.Constant;
import counterpull.bench.tubing.TubingResult;
import counterpull.report.table.Column;
import counterpull.report.table.Measure;
import counterpull.report.table.NumberColumn;
import counterpull.report.table.Table;
import counterpull.report.table.WordColumn;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** The laws that were tried, and the curve in numbers. */
final class RubberTables {
    private static final int STEPS = 8;

    private final TubingResult result;
    private final BenchWords words;

    RubberTables(TubingResult result, BenchWords words) {
        this.result = result;
        this.words = words;
    }

    List<Table> all() {
        return List.of(laws(), constants(), curve());
    }

    private Table laws() {
        List<Candidate> laws = result.laws();
        List<String> names = laws.stream()
                .map(each -> each.family().words() + (each.family() == result.chosen() ? " (used)" : ""))
                .toList();
        return new Table(
                "Laws that were tried: smaller is better",
                List.of(
                        new WordColumn(new Column.Head("law", "law", "which kind of law"), names),
                        numbers(
                                "numbers",
                                "numbers",
                                "how many numbers the readings chose",
                                Measure.NUMBER_ROUGH,
                                each -> each.score().numbers()),
                        numbers(
                                "rms",
                                "left over",
                                "root of the mean square of what is left over",
                                Measure.FORCE_FINE,
                                Candidate::rms),
                        numbers(
                                "aicc",
                                "AICc",
                                "what is left over, weighed against how many numbers it took",
                                Measure.NUMBER_ROUGH,
                                each -> each.score().aicc().orElse(Double.NaN)),
                        numbers(
                                "foretold",
                                "foretold within",
                                "each reading as the others foretell it",
                                Measure.FORCE_FINE,
                                each -> each.score().crossValidation().orElse(Double.NaN))),
                1);
    }

    private Column numbers(
            String key, String title, String meaning, Measure measure, ToDoubleFunction<Candidate> value) {
        return new NumberColumn(
                new Column.Head(key, title, meaning),
                measure,
                result.laws().stream().mapToDouble(value).toArray());
    }

    private Table constants() {
        List<String> names = new ArrayList<>();
        List<String> values = new ArrayList<>();
        List<String> intervals = new ArrayList<>();
        names.add("natural length");
        values.add(words.say(result.lengths().fitted(), counterpull.bench.Kind.LENGTH));
        intervals.add(words.interval(result.lengths().fitted(), counterpull.bench.Kind.LENGTH));
        for (Constant constant : result.law().constants()) {
            names.add(constant.symbol());
            values.add(words.say(constant.estimate(), constant.kind()));
            intervals.add(words.interval(constant.estimate(), constant.kind()));
        }
        return new Table(
                "Numbers of the law that is used",
                List.of(
                        new WordColumn(new Column.Head("number", "number", "which number"), names),
                        new WordColumn(new Column.Head("value", "value ± standard error", "most likely value"), values),
                        new WordColumn(
                                new Column.Head("interval", "95 times in 100", "interval that holds the truth"),
                                intervals)),
                1);
    }

    private Table curve() {
        double[] lengths = new double[STEPS];
        double[] stretch = new double[STEPS];
        double[][] forces = new double[3][STEPS];
        double first = result.band().first();
        double last = result.band().last();
        for (int i = 0; i < STEPS; i++) {
            lengths[i] = first + (last - first) * (i + 1) / STEPS;
            stretch[i] = lengths[i] / first;
            var force = result.band().force(lengths[i]);
            forces[0][i] = force.value();
            forces[1][i] = force.low();
            forces[2][i] = force.high();
        }
        return new Table(
                "The curve of one strand, to its tested length",
                List.of(
                        new NumberColumn(new Column.Head("length", "length", "of the rubber"), Measure.LENGTH, lengths),
                        new NumberColumn(
                                new Column.Head("stretch", "over natural", "length over natural length"),
                                Measure.NUMBER,
                                stretch),
                        new NumberColumn(
                                new Column.Head("force", "force", "most likely"), Measure.FORCE_FINE, forces[0]),
                        new NumberColumn(
                                new Column.Head("low", "at least", "lower end of the band"),
                                Measure.FORCE_FINE,
                                forces[1]),
                        new NumberColumn(
                                new Column.Head("high", "at most", "upper end of the band"),
                                Measure.FORCE_FINE,
                                forces[2])),
                1);
    }
}
