package counterpull.engine.validation;

import java.util.List;

/** One row of the validation log, every number already in its printed form. */
record Row(
        String section,
        String quantity,
        String unit,
        String published,
        String ours,
        String difference,
        String tolerance,
        String reason,
        String source) {
    Row {
        for (String cell : List.of(section, quantity, unit, published, ours, difference, tolerance, reason, source)) {
            if (cell.indexOf('\t') >= 0 || cell.indexOf('\n') >= 0) {
                throw new IllegalArgumentException("a cell of the validation log holds a tab or a line break: " + cell);
            }
        }
    }

    String key() {
        return section + "\t" + quantity + "\t" + source;
    }

    String line() {
        return String.join("\t", section, quantity, unit, published, ours, difference, tolerance, reason, source);
    }

    static Row parse(String line) {
        String[] cell = line.split("\t", -1);
        if (cell.length != 9) {
            throw new IllegalArgumentException("a row of the validation log has 9 cells, not " + cell.length);
        }
        return new Row(cell[0], cell[1], cell[2], cell[3], cell[4], cell[5], cell[6], cell[7], cell[8]);
    }
}
