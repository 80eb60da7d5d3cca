package counterpull.report.bench;

import counterpull.bench.Kind;
import counterpull.bench.person.Ended;
import counterpull.bench.person.PersonFindings;
import counterpull.bench.person.PersonFindings.Beside;
import counterpull.bench.person.PersonFindings.Length;
import counterpull.bench.person.PersonFindings.Range;
import counterpull.bench.person.PersonFindings.Tested;
import counterpull.bench.person.StrengthResult;
import counterpull.report.table.Column;
import counterpull.report.table.Measure;
import counterpull.report.table.NumberColumn;
import counterpull.report.table.Table;
import counterpull.report.table.WordColumn;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** A person's numbers as tables. */
final class PersonTables {
    private final PersonFindings findings;
    private final BenchWords words;

    PersonTables(PersonFindings findings, BenchWords words) {
        this.findings = findings;
        this.words = words;
    }

    List<Table> all() {
        List<Table> tables = new ArrayList<>();
        if (!findings.tests().isEmpty()) {
            tables.add(tests());
        }
        if (!findings.comparisons().sides().isEmpty()) {
            tables.add(beside("Left beside right", findings.comparisons().sides(), "left", "right"));
        }
        if (!findings.comparisons().changes().isEmpty()) {
            tables.add(beside("Since the visit before", findings.comparisons().changes(), "now", "before"));
        }
        if (!findings.ranges().isEmpty()) {
            tables.add(ranges());
        }
        if (!findings.lengths().isEmpty()) {
            tables.add(lengths());
        }
        return tables;
    }

    private Table tests() {
        List<Tested> rows = findings.tests();
        return new Table(
                "Strength tests, limb weight taken out",
                List.of(
                        word(
                                "test",
                                "test",
                                "what was tested",
                                rows,
                                test -> test.result().of().subject().words()),
                        number(
                                "angle",
                                "at",
                                "joint angle",
                                Measure.ANGLE,
                                rows,
                                test -> test.result().of().subject().angle()),
                        word(
                                "date",
                                "on",
                                "day of the test",
                                rows,
                                test -> test.date().toString()),
                        word(
                                "torque",
                                "torque",
                                "mean of the efforts that reached the most, or a floor, with its standard uncertainty",
                                rows,
                                test -> torque(test.result())),
                        word("ended", "efforts", "how many, and what ended them", rows, test -> ended(test.result())),
                        number(
                                "best",
                                "best",
                                "highest of all efforts",
                                Measure.TORQUE,
                                rows,
                                test -> test.result().best()),
                        number(
                                "variation",
                                "CV",
                                "coefficient of variation of the efforts that reached the most",
                                Measure.EFFORT_FINE,
                                rows,
                                test -> test.result().efforts().reached().variation()),
                        number(
                                "limb_weight",
                                "weight",
                                "what the limb's own weight added or took",
                                Measure.TORQUE,
                                rows,
                                test -> test.result().efforts().limbWeight())),
                3);
    }

    private static String ended(StrengthResult result) {
        Map<Ended, Integer> counts = new EnumMap<>(Ended.class);
        result.of().efforts().forEach(effort -> counts.merge(effort.ended(), 1, Integer::sum));
        List<String> parts = new ArrayList<>();
        counts.forEach((ended, count) -> parts.add(count + " " + ended.words()));
        return String.join(", ", parts);
    }

    private String torque(StrengthResult result) {
        String said = words.say(result.torque(), Kind.TORQUE);
        return result.floorOnly() ? "at least " + said : said;
    }

    private Table beside(String title, List<Beside> rows, String one, String other) {
        return new Table(
                title,
                List.of(
                        word("test", "test", "what was tested", rows, row -> subject(row, one)),
                        number(
                                "angle",
                                "at",
                                "joint angle",
                                Measure.ANGLE,
                                rows,
                                row -> row.one().result().of().subject().angle()),
                        number(
                                "one",
                                one,
                                "torque",
                                Measure.TORQUE,
                                rows,
                                row -> row.one().result().log().value()),
                        number(
                                "other",
                                other,
                                "torque",
                                Measure.TORQUE,
                                rows,
                                row -> row.other().result().log().value()),
                        word(
                                "difference",
                                "difference",
                                one + " over " + other + ", less one",
                                rows,
                                row -> percent(row.comparison().ratio() - 1)),
                        word(
                                "interval",
                                "95 in 100",
                                "interval of the difference",
                                rows,
                                row -> percent(row.comparison().percent().low()) + " to "
                                        + percent(row.comparison().percent().high())),
                        word(
                                "told",
                                "beyond measuring",
                                "whether it is beyond what measuring alone makes",
                                rows,
                                row -> row.comparison().beyond()
                                        ? "yes"
                                        : "no, from "
                                                + percent(
                                                        row.comparison().ratio() >= 1
                                                                ? row.comparison()
                                                                        .detectable()
                                                                : -row.comparison()
                                                                        .detectable()))),
                1);
    }

    private static String subject(Beside row, String one) {
        return one.equals("left")
                ? row.one().result().of().subject().action().words()
                : row.one().result().of().subject().words();
    }

    private String percent(double share) {
        return BenchWords.signed(share);
    }

    private Table ranges() {
        List<Range> rows = findings.ranges();
        return new Table(
                "Ranges",
                List.of(
                        word(
                                "end",
                                "end of the range",
                                "joint, side, end and how",
                                rows,
                                row -> row.result().of().which().words()),
                        word(
                                "angle",
                                "angle",
                                "mean with its standard uncertainty",
                                rows,
                                row -> words.say(row.result().angle(), Kind.ANGLE)),
                        number(
                                "readings",
                                "readings",
                                "how many",
                                Measure.COUNT,
                                rows,
                                row -> row.result().scatter().count()),
                        word(
                                "change",
                                "since before",
                                "now less the visit before",
                                rows,
                                row -> row.change()
                                        .map(change -> BenchWords.turned(change.value()))
                                        .orElse("")),
                        word(
                                "told",
                                "beyond measuring",
                                "whether that is beyond what measuring alone makes",
                                rows,
                                row -> row.change()
                                        .map(change -> change.holds(0)
                                                ? "no, from " + BenchWords.degrees(change.halfWidth())
                                                : "yes")
                                        .orElse(""))),
                1);
    }

    private Table lengths() {
        List<Length> rows = findings.lengths();
        return new Table(
                "Lengths and girths",
                List.of(
                        word(
                                "what",
                                "what",
                                "what was taped",
                                rows,
                                row -> row.of().words()),
                        word(
                                "length",
                                "length",
                                "mean with its standard uncertainty",
                                rows,
                                row -> words.say(row.estimate(), Kind.LENGTH)),
                        number(
                                "readings",
                                "readings",
                                "how many",
                                Measure.COUNT,
                                rows,
                                row -> row.of().readings().size())),
                1);
    }

    private static <T> Column word(String key, String title, String meaning, List<T> rows, Function<T, String> cell) {
        return new WordColumn(
                new Column.Head(key, title, meaning), rows.stream().map(cell).toList());
    }

    private static <T> Column number(
            String key, String title, String meaning, Measure measure, List<T> rows, ToDoubleFunction<T> cell) {
        return new NumberColumn(
                new Column.Head(key, title, meaning),
                measure,
                rows.stream().mapToDouble(cell).toArray());
    }
}
