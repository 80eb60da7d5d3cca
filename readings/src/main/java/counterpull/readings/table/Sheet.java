package counterpull.readings.table;

import java.util.List;

/**
 * A CSV file as it is, cells without their quotes.
 *
 * @param file its name
 * @param separator what stands between cells
 * @param rows every row that is not blank, comments and headers among them
 */
public record Sheet(String file, Separator separator, List<Row> rows) {
    public Sheet {
        rows = List.copyOf(rows);
    }

    /**
     * One row.
     *
     * @param line where it begins in the file, counted from 1
     * @param cells its cells without spaces around them
     */
    public record Row(int line, List<String> cells) {
        public Row {
            cells = List.copyOf(cells);
        }

        /** A cell; empty past the row's end. */
        public String cell(int column) {
            return column < cells.size() ? cells.get(column) : "";
        }

        boolean isComment() {
            return cell(0).startsWith("#");
        }

        /** Cells up to the last one that is not empty. */
        int filled() {
            int last = cells.size();
            while (last > 0 && cells.get(last - 1).isEmpty()) {
                last--;
            }
            return last;
        }

        /** About as it stood in the file. */
        public String joined(Separator separator) {
            return String.join(separator == Separator.TAB ? "  " : separator.sign() + " ", cells.subList(0, filled()));
        }

        /** The row on one line, for a person. */
        String shown() {
            return String.join(" | ", cells.subList(0, filled()));
        }
    }
}
