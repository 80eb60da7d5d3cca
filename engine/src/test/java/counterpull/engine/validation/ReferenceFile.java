package counterpull.engine.validation;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * A reference data file under {@code reference/} of the test resources: lines that start with # say where it comes from,
 * then one line of column names, then rows; cells are parted by tabs.
 */
public final class ReferenceFile {
    private final List<String> provenance;
    private final List<String> columns;
    private final List<String[]> rows;

    private ReferenceFile(List<String> lines) {
        this.provenance = lines.stream().filter(line -> line.startsWith("#")).toList();
        List<String> table =
                lines.stream().filter(line -> !line.startsWith("#")).toList();
        this.columns = List.of(table.get(0).split("\t"));
        this.rows = table.stream().skip(1).map(line -> line.split("\t", -1)).toList();
    }

    /** Reads a file by its name. */
    public static ReferenceFile read(String name) {
        try (InputStream in = ReferenceFile.class.getResourceAsStream("/reference/" + name)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return new ReferenceFile(text.lines().toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The lines that say where the data come from. */
    public List<String> provenance() {
        return provenance;
    }

    /** How many rows there are. */
    public int size() {
        return rows.size();
    }

    /** One cell as it stands in the file. */
    public String text(int row, String column) {
        int place = columns.indexOf(column);
        if (place < 0) {
            throw new IllegalArgumentException("no column " + column + " among " + columns);
        }
        return rows.get(row)[place].strip();
    }

    /** One cell as a number; NaN where the file says NaN. */
    public double number(int row, String column) {
        return Double.parseDouble(text(row, column));
    }
}
