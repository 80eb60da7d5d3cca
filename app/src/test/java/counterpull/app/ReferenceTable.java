package counterpull.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;

/** A table of reference numbers: remarks, one line of column names, then rows; cells parted by commas. */
record ReferenceTable(List<String> columns, List<List<String>> rows) {

    static ReferenceTable read(Path file) throws IOException {
        List<List<String>> lines = new ArrayList<>();
        for (String line : Files.readAllLines(file)) {
            if (!line.startsWith("#")) {
                lines.add(List.of(line.split(",", -1)));
            }
        }
        return new ReferenceTable(lines.get(0), lines.subList(1, lines.size()));
    }

    String cell(int row, String column) {
        return rows.get(row).get(columns.indexOf(column));
    }

    void eachRow(IntConsumer visit) {
        for (int row = 0; row < rows.size(); row++) {
            visit.accept(row);
        }
    }

    /** The largest magnitude in a column of numbers, at least 1e-3. */
    double largest(String column) {
        double largest = 1e-3;
        for (int row = 0; row < rows.size(); row++) {
            String cell = cell(row, column);
            largest = cell.isEmpty() ? largest : Math.max(largest, Math.abs(Double.parseDouble(cell)));
        }
        return largest;
    }
}
