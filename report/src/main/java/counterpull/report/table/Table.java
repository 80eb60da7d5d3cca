package counterpull.report.table;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A table that any output can write.
 *
 * @param title what it shows
 * @param columns at least one, all with the same number of rows
 * @param leading how many of the first columns say which row it is; repeated where a table is too wide for one block
 */
public record Table(String title, List<Column> columns, int leading) {
    public Table {
        columns = List.copyOf(columns);
        int rows = columns.get(0).rows();
        for (Column column : columns) {
            if (column.rows() != rows) {
                throw new IllegalArgumentException(
                        column.head().key() + " has " + column.rows() + " rows where the table has " + rows);
            }
        }
    }

    /** How many rows. */
    public int rows() {
        return columns.get(0).rows();
    }

    /** The same table with only these rows. */
    public Table only(int[] rows) {
        return new Table(
                title, columns.stream().map(column -> column.only(rows)).toList(), leading);
    }

    /** The same table under another title. */
    public Table titled(String other) {
        return new Table(other, columns, leading);
    }

    /** The same table without the columns in which every number is exactly zero: nothing of that kind is there. */
    public Table withoutEmpty() {
        return new Table(
                title,
                IntStream.range(0, columns.size())
                        .filter(k -> k < leading || !columns.get(k).allZero())
                        .mapToObj(columns::get)
                        .toList(),
                leading);
    }

    /** The column of that key. */
    public Column column(String key) {
        return columns.stream()
                .filter(column -> column.head().key().equals(key))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no column " + key));
    }
}
