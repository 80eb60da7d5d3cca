package counterpull.report.table;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Tables for a terminal of a given width: what does not fit beside each other goes into further blocks below. */
public final class TextTable {
    private static final String GAP = "  ";
    private static final int NARROWEST_TITLE = 6;
    private final Table table;
    private final UnitSet units;
    private final List<Block> cells;

    private TextTable(Table table, UnitSet units) {
        this.table = table;
        this.units = units;
        cells = table.columns().stream().map(this::block).toList();
    }

    /** One column as lines of equal width: heading lines, unit, cells. */
    private record Block(int width, List<String> title, String unit, List<String> cells, boolean right) {
        String line(String text) {
            String fill = " ".repeat(Math.max(0, width - length(text)));
            return right ? fill + text : text + fill;
        }
    }

    /**
     * The table as text.
     *
     * @param table the table
     * @param units in which units
     * @param width characters in a line, 40 or more are useful
     */
    public static String of(Table table, UnitSet units, int width) {
        return new TextTable(table, units).text(width);
    }

    private Block block(Column column) {
        List<String> shown = new ArrayList<>();
        for (int row = 0; row < table.rows(); row++) {
            shown.add(column.shown(row, units));
        }
        String unit = column.unit(units);
        int widest = Math.max(NARROWEST_TITLE, length(unit));
        for (String cell : shown) {
            widest = Math.max(widest, length(cell));
        }
        List<String> title = Wrap.lines(column.head().title(), widest + 2);
        for (String line : title) {
            widest = Math.max(widest, length(line));
        }
        return new Block(widest, title, unit, shown, column.numeric());
    }

    private static int length(String text) {
        return text.codePointCount(0, text.length());
    }

    private String text(int width) {
        StringBuilder out = new StringBuilder(Wrap.block(table.title(), width, ""));
        int lead = 0;
        for (Block block : cells.subList(0, table.leading())) {
            lead += block.width + GAP.length();
        }
        int next = table.leading();
        do {
            int end = fitting(next, width - lead);
            List<Block> shown = new ArrayList<>(cells.subList(0, table.leading()));
            shown.addAll(cells.subList(next, end));
            out.append(next > table.leading() ? "\n" : "");
            write(out, shown);
            next = end;
        } while (next < cells.size());
        return out.toString();
    }

    private int fitting(int from, int room) {
        int end = from;
        int used = 0;
        while (end < cells.size() && (end == from || used + cells.get(end).width <= room)) {
            used += cells.get(end).width + GAP.length();
            end++;
        }
        return end;
    }

    private void write(StringBuilder out, List<Block> shown) {
        int heads = 1;
        for (Block block : shown) {
            heads = Math.max(heads, block.title.size());
        }
        for (int i = 0; i < heads; i++) {
            int line = i - heads;
            write(out, shown, block -> head(block, line));
        }
        if (shown.stream().anyMatch(block -> !block.unit.isEmpty())) {
            write(out, shown, Block::unit);
        }
        write(out, shown, block -> "─".repeat(block.width));
        for (int row = 0; row < table.rows(); row++) {
            int at = row;
            write(out, shown, block -> block.cells.get(at));
        }
    }

    /** Headings stand on the line above the unit, so shorter ones start lower. */
    private static String head(Block block, int fromEnd) {
        int at = block.title.size() + fromEnd;
        return at < 0 ? "" : block.title.get(at);
    }

    private static void write(StringBuilder out, List<Block> shown, Function<Block, String> cell) {
        StringBuilder line = new StringBuilder();
        for (Block block : shown) {
            line.append(line.isEmpty() ? "" : GAP).append(block.line(cell.apply(block)));
        }
        out.append(line.toString().stripTrailing()).append('\n');
    }
}
