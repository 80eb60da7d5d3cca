package counterpull.readings.people;

import counterpull.bench.person.Effort;
import counterpull.bench.person.Ended;
import counterpull.bench.person.PersonBench;
import counterpull.bench.person.PersonFindings;
import counterpull.bench.person.PersonFindings.Curve;
import counterpull.bench.person.PersonFindings.Length;
import counterpull.bench.person.PersonFindings.Range;
import counterpull.bench.person.RangeBench.End;
import counterpull.bench.person.RangeBench.How;
import counterpull.bench.person.StrengthResult;
import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;
import counterpull.engine.body.Side;
import counterpull.engine.strength.IsometricTest;
import counterpull.scenario.format.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A person's findings as the person of a scenario. What a scenario needs and nobody measured stands as a comment. */
final class PersonText {
    private final PersonFindings findings;
    private final StringBuilder out = new StringBuilder();

    PersonText(PersonFindings findings) {
        this.findings = findings;
    }

    String text() {
        PersonBench bench = findings.of();
        line(0, "# " + bench.name() + ", measured on " + bench.last().date() + "; in place of the scenario's person");
        line(0, "person:");
        line(1, "name: " + quoted(bench.name()));
        line(1, "sex: " + Words.SEX.word(bench.build().sex()));
        line(1, "age: " + Rounded.plain(bench.build().age(), 1) + " years");
        line(1, "stature: " + Rounded.centimetres(bench.build().size().stature()));
        line(1, "mass: " + Rounded.kilograms(bench.build().size().mass()));
        line(1, "segment table: " + Words.TABLE.word(bench.build().table()));
        line(1, "limbs:");
        for (Side side : Side.values()) {
            side(side);
        }
        return out.toString();
    }

    private static String quoted(String name) {
        return "\"" + name.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }

    private void side(Side side) {
        List<Length> lengths = findings.lengths().stream()
                .filter(length ->
                        length.of().side() == side && length.of().which().isPresent())
                .toList();
        List<Joint> limits = limits(side);
        List<String> tests = tests(side);
        if (lengths.isEmpty() && limits.isEmpty() && tests.isEmpty()) {
            return;
        }
        line(2, side.words() + ":");
        for (Length length : lengths) {
            line(
                    3,
                    PeopleShapes.LENGTH_WORDS.get(length.of().which().orElseThrow()) + ": "
                            + Rounded.centimetres(length.estimate().value()));
        }
        workingRange(side);
        if (!limits.isEmpty()) {
            line(3, "joint limits:");
            limits.forEach(joint -> line(4, Words.limit(joint) + ": " + limit(joint, side)));
        }
        if (!tests.isEmpty()) {
            line(3, "tests:");
            tests.forEach(test -> line(4, test));
        }
    }

    /** Where to work is a choice and no measurement: only the depth that does not hurt is known. */
    private void workingRange(Side side) {
        end(Joint.KNEE, side, End.MOST, How.PAIN_FREE)
                .ifPresent(deepest -> line(
                        3,
                        "# range: {bottom: choose, top: choose, pain free: "
                                + Rounded.degrees(deepest.result().angle().value()) + "}"));
    }

    private List<Joint> limits(Side side) {
        List<Joint> found = new ArrayList<>();
        for (Joint joint : Joint.values()) {
            boolean known = limit(joint, side, End.LEAST).isPresent()
                    || limit(joint, side, End.MOST).isPresent();
            if (known) {
                found.add(joint);
            }
        }
        return found;
    }

    private String limit(Joint joint, Side side) {
        List<String> ends = new ArrayList<>();
        limit(joint, side, End.LEAST).ifPresent(angle -> ends.add("from: " + Rounded.degrees(angle)));
        limit(joint, side, End.MOST).ifPresent(angle -> ends.add("to: " + Rounded.degrees(angle)));
        return "{" + String.join(", ", ends) + "}";
    }

    /** The nearer of what goes without pain and what the person's own muscles reach. */
    private Optional<Double> limit(Joint joint, Side side, End end) {
        return findings.ranges().stream()
                .map(range -> range.result())
                .filter(range -> range.of().which().joint() == joint
                        && range.of().which().side() == side
                        && range.of().which().end() == end)
                .map(range -> range.angle().value())
                .reduce((one, other) -> end == End.MOST ? Math.min(one, other) : Math.max(one, other));
    }

    private Optional<Range> end(Joint joint, Side side, End end, How how) {
        return findings.ranges().stream()
                .filter(range -> range.result()
                        .of()
                        .which()
                        .equals(new counterpull.bench.person.RangeBench.Which(joint, side, end, how)))
                .findFirst();
    }

    private List<String> tests(Side side) {
        List<String> lines = new ArrayList<>();
        for (Curve curve : findings.curves()) {
            if (curve.side() == side) {
                int reached = StrengthResult.reached(curve.tests());
                curve.tests().forEach(result -> lines.addAll(lines(curve.action(), result, reached)));
            }
        }
        return lines;
    }

    private static List<String> lines(Action action, StrengthResult result, int reached) {
        return result.tests(reached).stream()
                .map(test -> line(action, test, result))
                .toList();
    }

    private static String line(Action action, IsometricTest test, StrengthResult result) {
        return TestLines.line(action, test, result.of().way().tester(), PeopleShapes.ENDED.word(stopped(result)));
    }

    /** What ended the highest of the efforts that did not reach the most. */
    private static Ended stopped(StrengthResult result) {
        List<Effort> efforts = result.of().efforts();
        Ended found = Ended.PAIN;
        double most = 0;
        for (Effort effort : efforts) {
            if (!effort.ended().reached() && effort.force() > most) {
                most = effort.force();
                found = effort.ended();
            }
        }
        return found;
    }

    private void line(int depth, String text) {
        out.append("  ".repeat(depth)).append(text).append('\n');
    }
}
