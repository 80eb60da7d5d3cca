package counterpull.report.bench;

import counterpull.bench.Answer;
import counterpull.bench.Kind;
import counterpull.bench.repetitions.JointEvidence;
import counterpull.bench.repetitions.RepetitionBench;
import counterpull.bench.repetitions.RepetitionResult;
import counterpull.bench.repetitions.SetEnd;
import counterpull.engine.body.Side;
import counterpull.engine.strength.DrawnCurve;
import counterpull.engine.strength.IsometricTest.Meaning;
import counterpull.engine.strength.Tester;
import counterpull.readings.people.TestLines;
import counterpull.report.table.Column;
import counterpull.report.table.Measure;
import counterpull.report.table.NumberColumn;
import counterpull.report.table.Table;
import counterpull.report.table.WordColumn;
import counterpull.scenario.units.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** What a set of repetitions says, for people. */
public final class RepetitionSection {
    private final RepetitionBench bench;
    private final BenchWords words;

    private RepetitionSection(RepetitionBench bench, Units units) {
        this.bench = bench;
        words = new BenchWords(units);
    }

    /** The section of a set. */
    public static BenchSection of(RepetitionBench bench, Units units) {
        RepetitionSection section = new RepetitionSection(bench, units);
        Answer<RepetitionResult> answer = bench.answer();
        return answer.result()
                .map(result -> section.found(result, answer))
                .orElseGet(() -> BenchSection.refused(section.title(), answer.remarks()));
    }

    private String title() {
        String done = bench.done() == 1 ? "1 repetition" : bench.done() + " repetitions";
        if (bench.end() instanceof SetEnd.Called called) {
            return done + ", " + called.left() + " left";
        }
        return done + (bench.end().onlyAtLeast() ? ", stopped" : ", and the next one failed");
    }

    private BenchSection found(RepetitionResult result, Answer<RepetitionResult> answer) {
        return new BenchSection(
                title(),
                headline(result),
                sentences(result),
                List.of(table(result)),
                List.of(),
                answer.remarks(),
                forScenario(result));
    }

    private String headline(RepetitionResult result) {
        String share = BenchWords.percent(result.share().value());
        String between = BenchWords.percent(result.share().low()) + " to "
                + BenchWords.percent(result.share().high());
        return result.onlyAtMost()
                ? "The setup asks " + share + " of what can be lifted once, or less"
                : "The setup asks about " + share + " of what can be lifted once (95 in 100: " + between + ")";
    }

    private List<String> sentences(RepetitionResult result) {
        List<String> sentences = new ArrayList<>();
        if (!bench.end().onlyAtLeast()) {
            sentences.add("Failure would have come after about "
                    + words.say(result.toFailure().mean(), Kind.NUMBER) + " repetitions of "
                    + bench.relation().words()
                    + ".");
        }
        if (!result.onlyAtMost()) {
            JointEvidence first = result.joints().get(0);
            sentences.add("Most likely " + first.place().words() + " gave out (" + BenchWords.percent(first.limiting())
                    + "), hardest at " + BenchWords.degrees(first.place().at().angle()) + " while "
                    + first.place().at().phase().words() + ".");
        }
        sentences.add(
                "Where a joint was the one that may have limited, the set measures it; every other one has at least what it"
                        + " did, which is a floor. It is rough: a test with a strap says more.");
        sentences.add(
                "Two sets of one person err alike, so the lines of one set count, not those of several; the curves here should be"
                        + " without the lines of another set.");
        return sentences;
    }

    private Table table(RepetitionResult result) {
        List<JointEvidence> rows = result.joints();
        return new Table(
                "What follows for each joint",
                List.of(
                        word(
                                "joint",
                                "joint",
                                "action and side",
                                rows,
                                row -> row.place().words()),
                        number(
                                "angle",
                                "at",
                                "joint angle where it was hardest",
                                Measure.ANGLE,
                                rows,
                                row -> row.place().at().angle()),
                        number(
                                "effort",
                                "effort",
                                "share of its curve there, as the curve stood",
                                Measure.EFFORT,
                                rows,
                                row -> row.place().effort()),
                        number(
                                "limited",
                                "limited",
                                "chance that it was the one that gave out",
                                Measure.EFFORT,
                                rows,
                                JointEvidence::limiting),
                        number(
                                "before",
                                "before",
                                "held still there, by the curve as it stood",
                                Measure.TORQUE,
                                rows,
                                JointEvidence::before),
                        word(
                                "after",
                                "after",
                                "held still there, with one standard deviation",
                                rows,
                                row -> words.say(row.after(), Kind.TORQUE)),
                        word("counts", "counts as", "what a curve takes of it", rows, RepetitionSection::counts)),
                1);
    }

    private static String counts(JointEvidence row) {
        if (row.test().isEmpty()) {
            return "nothing new";
        }
        return row.test().get().meaning() == Meaning.REACHED ? "a test" : "a floor";
    }

    private String forScenario(RepetitionResult result) {
        StringBuilder out = new StringBuilder();
        for (Side side : Side.values()) {
            List<JointEvidence> joints = result.joints().stream()
                    .filter(each -> each.place().limb() == side && each.test().isPresent())
                    .toList();
            if (!joints.isEmpty()) {
                out.append("# under tests: of the ")
                        .append(side.words())
                        .append(" limb, from ")
                        .append(title())
                        .append('\n');
                joints.forEach(each -> out.append(line(each)).append('\n'));
            }
        }
        return out.toString();
    }

    private String line(JointEvidence each) {
        String ended = bench.end().onlyAtLeast() ? "pain" : "another joint";
        String line = TestLines.line(each.place().action(), each.test().orElseThrow(), Tester.REPETITIONS, ended);
        // an own curve replaces tests: there the line says how far to move it
        return each.place().curve() instanceof DrawnCurve
                ? "# " + each.place().action().words() + " has an own curve, which tests do not bend: " + line
                : line;
    }

    private static Column word(
            String key, String title, String meaning, List<JointEvidence> rows, Function<JointEvidence, String> cell) {
        return new WordColumn(
                new Column.Head(key, title, meaning), rows.stream().map(cell).toList());
    }

    private static Column number(
            String key,
            String title,
            String meaning,
            Measure measure,
            List<JointEvidence> rows,
            ToDoubleFunction<JointEvidence> cell) {
        return new NumberColumn(
                new Column.Head(key, title, meaning),
                measure,
                rows.stream().mapToDouble(cell).toArray());
    }
}
