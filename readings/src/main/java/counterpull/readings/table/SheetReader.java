package counterpull.readings.table;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import counterpull.readings.table.Sheet.Row;
import counterpull.scenario.problem.Code;
import counterpull.scenario.problem.Key;
import counterpull.scenario.problem.Place;
import counterpull.scenario.problem.Problem;
import counterpull.scenario.problem.Problems;
import counterpull.scenario.problem.Shown;
import counterpull.scenario.tree.Source;
import counterpull.scenario.tree.Text;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads CSV after RFC 4180, with any of the usual separators. Whatever the bytes are, it answers with rows or with problems: nothing is
 * thrown, and size, rows and cells of a row are limited.
 */
public final class SheetReader {
    static final int LARGEST = 4 << 20;
    static final int MOST_ROWS = 200_000;
    static final int MOST_CELLS = 200;
    static final int LONGEST_CELL = 400;

    private static final Text.Kind CSV = new Text.Kind(
            LARGEST,
            "the file is larger than 4 MiB, the limit for a table of readings",
            "Save it from the spreadsheet as \"CSV UTF-8\"");

    private static final CsvFactory FACTORY = new CsvFactory();

    private final Place file;
    private final Problems problems;
    private final List<Row> rows = new ArrayList<>();

    private SheetReader(Place file, Problems problems) {
        this.file = file;
        this.problems = problems;
    }

    /** The rows; empty where the file is no table, which is then among the problems. */
    public static Optional<Sheet> read(Source source, Problems problems) {
        SheetReader reader = new SheetReader(Place.file(Shown.shortened(source.name())), problems);
        return Text.of(source, CSV, problems).flatMap(text -> reader.sheet(source.name(), text));
    }

    private Optional<Sheet> sheet(String name, String text) {
        Optional<Separator> separator = Separator.of(text);
        if (text.isBlank()) {
            return refuse(Code.NO_TABLE, file, "the file is empty", "Save the readings again");
        }
        if (separator.isEmpty()) {
            return refuse(
                    Code.NO_TABLE,
                    file,
                    "no comma, semicolon or tab parts the lines into columns",
                    "A table has at least two columns");
        }
        return parsed(text, separator.get()) ? Optional.of(new Sheet(name, separator.get(), rows)) : Optional.empty();
    }

    private boolean parsed(String text, Separator separator) {
        try (CsvParser parser = FACTORY.createParser(text)) {
            parser.setSchema(CsvSchema.emptySchema().withColumnSeparator(separator.sign()));
            parser.enable(CsvParser.Feature.WRAP_AS_ARRAY);
            parser.nextToken();
            while (parser.nextToken() == JsonToken.START_ARRAY) {
                if (!row(parser)) {
                    return false;
                }
            }
            return true;
        } catch (JsonProcessingException broken) {
            return broken(broken);
        } catch (IOException | RuntimeException unreadable) {
            refuse(Code.NOT_READABLE, file, "the file cannot be read as CSV", "Save it again as CSV");
            return false;
        }
    }

    private boolean row(CsvParser parser) throws IOException {
        List<String> cells = new ArrayList<>();
        int line = 0;
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            JsonLocation at = parser.currentTokenLocation();
            line = line == 0 ? at.getLineNr() : line;
            cells.add(parser.getText().strip());
        }
        if (cells.stream().allMatch(String::isEmpty)) {
            return true;
        }
        rows.add(new Row(line, cells));
        return fits(rows.get(rows.size() - 1));
    }

    private boolean fits(Row row) {
        Place place = new Place(file.file(), row.line(), 1, Key.TOP);
        if (rows.size() > MOST_ROWS) {
            refuse(Code.TOO_MANY, place, "there are more than " + MOST_ROWS + " rows, the limit", "Cut it into parts");
        } else if (row.cells().size() > MOST_CELLS) {
            String message = "the row has " + row.cells().size() + " cells; at most " + MOST_CELLS + " are read";
            refuse(Code.TOO_MANY, place, message, "Leave out what is not needed");
        } else if (row.cells().stream().anyMatch(cell -> cell.length() > LONGEST_CELL)) {
            String message = "a cell is longer than " + LONGEST_CELL + " characters, the limit";
            refuse(Code.TOO_LARGE, place, message, "Is a quote missing before or after it?");
        } else {
            return true;
        }
        return false;
    }

    private boolean broken(JsonProcessingException broken) {
        JsonLocation at = broken.getLocation();
        boolean open = broken.getOriginalMessage().startsWith("Missing closing quote");
        int last = rows.isEmpty() ? 0 : rows.get(rows.size() - 1).line();
        Place place = open || at == null
                ? new Place(file.file(), last + 1, 1, Key.TOP)
                : new Place(file.file(), at.getLineNr(), at.getColumnNr(), Key.TOP);
        refuse(
                Code.OPEN_QUOTE,
                place,
                open
                        ? "a quote opens in this row or below and is never closed"
                        : "something stands behind a closing quote before the next " + "cell begins",
                "A quote inside a quoted cell is written twice");
        return false;
    }

    private <T> Optional<T> refuse(Code code, Place place, String message, String hint) {
        problems.add(Problem.of(code, place, message, hint));
        return Optional.empty();
    }
}
