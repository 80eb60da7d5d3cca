package counterpull.readings.table;

import counterpull.readings.table.Sheet.Row;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Which rows of a sheet are what.
 *
 * @param sheet the sheet
 * @param headingLine the line with the columns' names; 0 where there is none
 * @param unitsLine the line with their units where those stand in a row of their own; else 0
 */
public record Grid(Sheet sheet, int headingLine, int unitsLine) {
    private static final Pattern NUMERIC =
            Pattern.compile("[+\u2212-]?(?:\\d+[.,]?\\d*|[.,]\\d+)(?:[eE][+-]?\\d+)?(?:\\s*[^\\d\\s].{0,8})?");
    private static final int HEADINGS_WITHIN = 40;

    /** The likeliest heading: before the first row of readings, the row without numbers that names most of what is wanted. */
    static Grid of(Sheet sheet, TableKind kind) {
        List<Row> early = sheet.rows().stream()
                .filter(row -> !row.isComment())
                .limit(HEADINGS_WITHIN)
                .toList();
        Optional<Row> heading = early.stream()
                .filter(row -> row.filled() > 1 && row.cells().stream().noneMatch(Grid::isNumeric))
                .filter(row -> likeness(row, kind) > 0)
                .max(Comparator.comparingInt((Row row) -> likeness(row, kind)).thenComparing(row -> -row.line()));
        int line = heading.or(() -> wordsBeforeNumbers(early)).map(Row::line).orElse(0);
        return new Grid(sheet, line, line == 0 ? 0 : unitsLine(early, line));
    }

    private static Optional<Row> wordsBeforeNumbers(List<Row> early) {
        boolean words = early.size() > 1
                && early.get(0).cells().stream().noneMatch(Grid::isNumeric)
                && early.get(1).cells().stream().anyMatch(Grid::isNumeric);
        return words ? Optional.of(early.get(0)) : Optional.empty();
    }

    private static int likeness(Row row, TableKind kind) {
        int sum = 0;
        for (Wanted wanted : kind.columns()) {
            sum += row.cells().stream()
                    .mapToInt(cell -> wanted.likeness(Heading.of(cell)))
                    .max()
                    .orElse(0);
        }
        return sum;
    }

    /** The row right below the heading if every cell of it that is not empty is a unit. */
    private static int unitsLine(List<Row> early, int headingLine) {
        return early.stream()
                .filter(row -> row.line() > headingLine)
                .findFirst()
                .filter(row -> row.cells().stream()
                        .allMatch(cell ->
                                cell.isEmpty() || Heading.of(cell).name().isEmpty()))
                .map(Row::line)
                .orElse(0);
    }

    static boolean isNumeric(String cell) {
        return NUMERIC.matcher(cell).matches();
    }

    /** Rows that hold readings, or should. */
    public List<Row> data() {
        int after = Math.max(headingLine, unitsLine);
        return sheet.rows().stream()
                .filter(row -> row.line() > after && !row.isComment())
                .toList();
    }

    /** What stands before the heading, and comments anywhere: kept, not read. */
    public List<Row> aside() {
        return sheet.rows().stream()
                .filter(row -> row.isComment() || row.line() < headingLine)
                .toList();
    }

    /** The columns' headings; as many as the widest row of data has cells where there is no heading. */
    List<Heading> headings() {
        Optional<Row> row = at(headingLine);
        int width = row.map(Row::filled)
                .orElseGet(() -> data().stream().mapToInt(Row::filled).max().orElse(0));
        List<Heading> headings = new ArrayList<>();
        for (int i = 0; i < width; i++) {
            headings.add(heading(row.map(Row::cells).orElse(List.of()), i));
        }
        return headings;
    }

    private Heading heading(List<String> cells, int i) {
        Heading heading = Heading.of(i < cells.size() ? cells.get(i) : "");
        String below = at(unitsLine).map(units -> units.cell(i)).orElse("");
        return below.isEmpty()
                ? heading
                : new Heading(heading.text(), heading.name(), Heading.of(below).unit());
    }

    private Optional<Row> at(int line) {
        return sheet.rows().stream()
                .filter(row -> row.line() == line && line > 0)
                .findFirst();
    }
}
