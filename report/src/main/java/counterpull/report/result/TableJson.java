package counterpull.report.result;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import counterpull.report.table.Column;
import counterpull.report.table.NumberColumn;
import counterpull.report.table.Table;
import counterpull.report.table.UnitSet;

/** A table as JSON: its columns with key, unit and meaning, then its rows; numbers in SI, null where not known. */
public final class TableJson {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private TableJson() {}

    /** The whole table, indented. */
    public static String of(Table table) {
        ObjectNode root = MAPPER.createObjectNode();
        root.put("title", table.title());
        ArrayNode columns = root.putArray("columns");
        for (Column column : table.columns()) {
            columns.addObject()
                    .put("key", column.head().key())
                    .put("unit", column.unit(UnitSet.SI))
                    .put("meaning", column.head().meaning());
        }
        ArrayNode rows = root.putArray("rows");
        for (int row = 0; row < table.rows(); row++) {
            ObjectNode cells = rows.addObject();
            for (Column column : table.columns()) {
                put(cells, column, row);
            }
        }
        return root.toPrettyString() + "\n";
    }

    private static void put(ObjectNode cells, Column column, int row) {
        String key = column.head().key();
        if (!(column instanceof NumberColumn numbers)) {
            cells.put(key, column.exact(row, UnitSet.SI));
        } else if (Math.abs(numbers.value(row)) <= Double.MAX_VALUE) {
            cells.put(key, numbers.value(row));
        } else {
            cells.putNull(key);
        }
    }
}
