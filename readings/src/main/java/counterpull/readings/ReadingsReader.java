package counterpull.readings;

import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Shape;
import counterpull.scenario.fields.Span;
import counterpull.scenario.problem.Code;
import counterpull.scenario.problem.Problems;
import counterpull.scenario.read.FormatLine;
import counterpull.scenario.tree.Node.MapNode;
import counterpull.scenario.tree.Source;
import counterpull.scenario.tree.TreeReader;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a file of readings. Never throws for what the file holds: it answers or says every problem. */
public final class ReadingsReader {
    /** What a file of readings begins with, after "format: ". */
    public static final String FORMAT = "counterpull-readings/1";

    private static final Span ANY = new Span(0, 200);

    private ReadingsReader() {}

    /**
     * What came of reading.
     *
     * @param readings what was measured; empty if there is any problem
     * @param problems every problem
     */
    public record Result(Optional<Readings> readings, Problems problems) {}

    /** Reads one file, YAML or JSON; what comes due is judged on the day that the file names, or else on the day of its readings. */
    public static Result read(Source source) {
        return read(source, SubjectKinds.ALL);
    }

    /** The same where what comes due is judged on a day given from outside, unless the file names one. */
    public static Result read(Source source, LocalDate today) {
        return read(source, SubjectKinds.judged(Optional.of(today)));
    }

    private static Result read(Source source, List<SubjectKind> kinds) {
        Problems problems = new Problems();
        Optional<MapNode> file = TreeReader.read(source, problems);
        file.ifPresent(found -> FormatLine.check(found, FORMAT, problems));
        // the keys of another format would all count as unknown
        Optional<Readings> readings =
                problems.isEmpty() ? file.map(found -> readings(found, kinds, problems)) : Optional.empty();
        return new Result(problems.isEmpty() ? readings : Optional.empty(), problems);
    }

    private static Readings readings(MapNode file, List<SubjectKind> kinds, Problems problems) {
        Fields top = Fields.open(file, shape(), problems);
        List<Subject> subjects = new ArrayList<>();
        for (SubjectKind kind : kinds) {
            for (Fields fields : top.optionalGroups(kind.key(), kind.shape(), ANY)) {
                kind.read(fields).ifPresent(subjects::add);
            }
        }
        if (top.isSound() && subjects.isEmpty()) {
            top.reportHere(Code.MISSING_KEY, "nothing was measured in this file", "Give one of: " + keys());
        }
        return new Readings(subjects);
    }

    static Shape shape() {
        List<String> keys = new ArrayList<>();
        keys.add(FormatLine.KEY);
        SubjectKinds.ALL.forEach(kind -> keys.add(kind.key()));
        return new Shape("file of readings", keys);
    }

    private static String keys() {
        return String.join(", ", SubjectKinds.ALL.stream().map(SubjectKind::key).toList());
    }
}
