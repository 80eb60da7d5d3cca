package counterpull.readings.table;

import counterpull.readings.table.ColumnUse.Sign;
import counterpull.readings.table.Mapping.Lines;
import counterpull.readings.table.Mapping.Standing;
import counterpull.scenario.fields.Choices;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Shape;
import counterpull.scenario.fields.Span;
import counterpull.scenario.problem.Code;
import counterpull.scenario.problem.Nearest;
import counterpull.scenario.problem.Problems;
import counterpull.scenario.read.FormatLine;
import counterpull.scenario.tree.Node.MapNode;
import counterpull.scenario.tree.Source;
import counterpull.scenario.tree.TreeReader;
import counterpull.scenario.units.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads a mapping; open questions are read as such, anything else that is wrong is a problem. */
public final class MappingReader {
    /** What a mapping begins with, after "format: ". */
    public static final String FORMAT = "counterpull-mapping/1";

    /** A column that is not used. */
    static final String NOTHING = "nothing";

    private static final Shape SHAPE = Shape.of(
            "mapping",
            FormatLine.KEY,
            "confirmed",
            "as",
            "heading row",
            "units row",
            "decimals",
            "columns",
            "whole file");
    private static final Shape COLUMN = Shape.of("column", "column", "heading", "is", "unit", "sign");
    private static final Span LINE = new Span(0, SheetReader.MOST_ROWS);
    private static final Span COLUMNS = new Span(1, SheetReader.MOST_CELLS);
    private static final Choices<Standing> STANDING =
            Choices.of(standing -> standing == Standing.CONFIRMED ? "yes" : "no", Standing.values());
    private static final Choices<Sign> SIGN = Choices.of(Sign::word, Sign.values());
    private static final Choices<Optional<DecimalSign>> DECIMALS = Choices.of(
            sign -> sign.map(DecimalSign::word).orElse(Mapping.OPEN),
            Optional.of(DecimalSign.POINT),
            Optional.of(DecimalSign.COMMA),
            Optional.empty());

    private final Fields top;
    private final TableKind kind;

    private MappingReader(Fields top, TableKind kind) {
        this.top = top;
        this.kind = kind;
    }

    /** The mapping; empty once a problem is reported. */
    public static Optional<Mapping> read(Source source, List<TableKind> kinds, Problems problems) {
        return TreeReader.read(source, problems).flatMap(file -> read(file, kinds, problems));
    }

    private static Optional<Mapping> read(MapNode file, List<TableKind> kinds, Problems problems) {
        FormatLine.check(file, FORMAT, problems);
        Fields top = Fields.open(file, SHAPE, problems);
        Choices<TableKind> words = Choices.of(TableKind::word, kinds.toArray(new TableKind[0]));
        TableKind kind = top.choice("as", words);
        return problems.isEmpty() ? new MappingReader(top, kind).mapping() : Optional.empty();
    }

    private Optional<Mapping> mapping() {
        Standing standing = top.choice("confirmed", STANDING);
        Lines lines = new Lines(
                top.optionalCount("heading row", LINE).orElse(0),
                top.optionalCount("units row", LINE).orElse(0));
        Optional<DecimalSign> decimals = top.choice("decimals", DECIMALS);
        List<ColumnUse> columns = new ArrayList<>();
        for (Fields fields : top.groups("columns", COLUMN, COLUMNS)) {
            columns.add(column(fields));
        }
        Map<String, String> whole = whole();
        twice(columns, whole);
        return top.isSound()
                ? Optional.of(new Mapping(kind, standing, lines, decimals, columns, whole))
                : Optional.empty();
    }

    private ColumnUse column(Fields fields) {
        int number = fields.count("column", COLUMNS);
        String heading = fields.optionalText("heading").orElse("");
        Optional<Wanted> means = means(fields);
        String unit = fields.optionalText("unit").orElse("");
        Sign sign = fields.optionalChoice("sign", SIGN).orElse(Sign.AS_IT_IS);
        means.ifPresent(wanted -> unit(fields, wanted, unit));
        return new ColumnUse(number, heading, means, unit, sign);
    }

    private Optional<Wanted> means(Fields fields) {
        String word = fields.text("is");
        List<String> known =
                new ArrayList<>(kind.columns().stream().map(Wanted::key).toList());
        known.add(NOTHING);
        if (!word.isEmpty() && !known.contains(word)) {
            fields.report(
                    Code.NOT_A_CHOICE,
                    "is",
                    "\"" + word + "\" is nothing that a table of kind " + kind.word() + " has",
                    Nearest.hint(word, known, "One of: " + String.join(", ", known)));
        }
        return kind.column(word);
    }

    private static void unit(Fields fields, Wanted wanted, String unit) {
        if (!(wanted.due() instanceof Due.Amount amount)
                || unit.equals(Mapping.OPEN)
                || unit.equals(ColumnUse.IN_CELLS)) {
            return;
        }
        boolean fits = Heading.known(unit)
                .or(() -> unit.isEmpty() ? Unit.spelled("") : Optional.empty())
                .filter(known -> known.dimension() == amount.measure().dimension())
                .isPresent();
        if (!fits) {
            fields.report(
                    Code.UNKNOWN_UNIT,
                    "unit",
                    "\"" + unit + "\" is no unit of "
                            + amount.measure().dimension().words(),
                    "One of: " + ProposalFinder.units(amount.measure().dimension()) + ", or \"" + ColumnUse.IN_CELLS
                            + "\"");
        }
    }

    private Map<String, String> whole() {
        Shape shape =
                new Shape("whole file", kind.columns().stream().map(Wanted::key).toList());
        Map<String, String> whole = new LinkedHashMap<>();
        top.optionalGroup("whole file", shape).ifPresent(fields -> {
            for (Wanted wanted : kind.columns()) {
                if (fields.has(wanted.key())) {
                    whole.put(wanted.key(), whole(fields, wanted));
                }
            }
        });
        return whole;
    }

    private static String whole(Fields fields, Wanted wanted) {
        String text = fields.sentence(wanted.key());
        ColumnUse inCells = new ColumnUse(1, "", Optional.of(wanted), ColumnUse.IN_CELLS, Sign.AS_IT_IS);
        if (text.equals(Mapping.OPEN)) {
            return text;
        }
        Due.Cell cell = wanted.due().cell(text, inCells, DecimalSign.POINT);
        if (cell.text().isEmpty() && !text.isEmpty()) {
            fields.report(
                    Code.WRONG_KIND,
                    wanted.key(),
                    "\"" + text + "\": " + cell.why(),
                    "Give " + wanted.due().inWords());
        }
        return cell.text().orElse(text);
    }

    private void twice(List<ColumnUse> columns, Map<String, String> whole) {
        for (Wanted wanted : kind.columns()) {
            long times = columns.stream()
                    .filter(use -> use.means().filter(wanted::equals).isPresent())
                    .count();
            if (times > 1) {
                top.report(Code.CONTRADICTION, "columns", times + " columns are the " + wanted.key(), "Keep one");
            }
            if (times + (whole.containsKey(wanted.key()) ? 1 : 0) == 0 && wanted.need() == Wanted.Need.MUST) {
                top.report(
                        Code.MISSING_KEY,
                        "columns",
                        "no column is the " + wanted.key(),
                        "Say which one is, or write it under \"whole file\"");
            }
        }
    }
}
