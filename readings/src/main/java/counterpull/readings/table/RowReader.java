package counterpull.readings.table;

import counterpull.readings.table.Conversion.Refused;
import counterpull.readings.table.Sheet.Row;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads one row as a mapping says: its values, or everything that is wrong with it. */
final class RowReader {
    private final Row row;
    private final Plan plan;
    private final Map<String, String> values = new LinkedHashMap<>();
    private final List<Refused> refused = new ArrayList<>();

    private RowReader(Row row, Plan plan) {
        this.row = row;
        this.plan = plan;
    }

    /**
     * A mapping, looked up once for all rows.
     *
     * @param mapping the mapping
     * @param cells what is wanted, each with its column
     * @param open whether the mapping still asks something
     */
    record Plan(Mapping mapping, Map<Wanted, Optional<ColumnUse>> cells, boolean open) {
        static Plan of(Mapping mapping) {
            Map<Wanted, Optional<ColumnUse>> cells = new LinkedHashMap<>();
            mapping.kind().columns().forEach(wanted -> cells.put(wanted, mapping.column(wanted)));
            return new Plan(mapping, cells, !MappingFit.open(mapping).isEmpty());
        }

        DecimalSign decimals() {
            return mapping.decimals().orElse(DecimalSign.POINT);
        }
    }

    static RowReader read(Row row, Plan plan) {
        RowReader reader = new RowReader(row, plan);
        reader.read();
        return reader;
    }

    Map<String, String> values() {
        return values;
    }

    List<Refused> refused() {
        return refused;
    }

    /** What stands in columns that are not used. */
    List<String> unused() {
        return plan.mapping().columns().stream()
                .filter(use ->
                        use.means().isEmpty() && !row.cell(use.number() - 1).isEmpty())
                .map(use -> "row " + row.line() + ", " + use.named() + ": " + row.cell(use.number() - 1))
                .toList();
    }

    private void read() {
        int width = plan.mapping().columns().size();
        if (row.filled() > width) {
            refuse(
                    "",
                    row.shown(),
                    "the row has " + row.filled() + " cells under " + width
                            + " headings: a decimal comma, or a separator inside words without quotes?");
            return;
        }
        plan.cells().forEach(this::value);
        // with open questions a row is not yet whole
        if (refused.isEmpty() && !plan.open()) {
            plan.mapping().kind().lacking(values).forEach(fault -> refuse("", row.shown(), fault));
        }
    }

    private void value(Wanted wanted, Optional<ColumnUse> use) {
        String written = use.map(column -> row.cell(column.number() - 1)).orElse("");
        Map<String, String> whole = plan.mapping().whole();
        if (!written.isEmpty()) {
            cell(wanted, use.orElseThrow(), written);
        } else if (whole.containsKey(wanted.key())) {
            values.put(wanted.key(), whole.get(wanted.key()));
        } else if (wanted.need() == Wanted.Need.MUST && use.isPresent()) {
            refuse(use.get().named(), "", "the " + wanted.key() + " is missing");
        }
    }

    private void cell(Wanted wanted, ColumnUse use, String written) {
        boolean amount = wanted.due() instanceof Due.Amount;
        boolean fraction = amount && (written.indexOf(',') >= 0 || written.indexOf('.') >= 0);
        boolean decimalsOpen = fraction && plan.mapping().decimals().isEmpty();
        // what hangs on an open question is not refused: it is not read yet
        if (decimalsOpen || use.unit().equals(Mapping.OPEN) || use.sign() == ColumnUse.Sign.OPEN) {
            return;
        }
        Due.Cell cell = wanted.due().cell(written, use, plan.decimals());
        cell.text().ifPresent(text -> values.put(wanted.key(), text));
        if (cell.text().isEmpty()) {
            refuse(use.named(), written, cell.why());
        }
    }

    private void refuse(String where, String text, String why) {
        refused.add(new Refused(row, where, text, why));
    }
}
