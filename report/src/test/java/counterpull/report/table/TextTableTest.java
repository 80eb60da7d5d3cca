package counterpull.report.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Text tables keep to the line they are given and line up. */
class TextTableTest {
    private static Table wide() {
        List<Column> columns = new ArrayList<>();
        columns.add(new NumberColumn(new Column.Head("mark", "tape mark", "m"), Measure.LENGTH, 0.2, 0.25));
        for (int k = 0; k < 12; k++) {
            columns.add(new NumberColumn(
                    new Column.Head("c" + k, "column number " + k, "m"), Measure.TORQUE, 1000 + k, -k - 0.05));
        }
        return new Table("wide", columns, 1);
    }

    @Test
    void noLineIsLongerThanTheWidth() {
        for (int width : new int[] {40, 60, 80, 132}) {
            assertThat(TextTable.of(wide(), UnitSet.METRIC, width).lines())
                    .as("width %d", width)
                    .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(width));
        }
    }

    @Test
    void everyBlockIsLedByTheRowsOwnColumnAndNothingIsLost() {
        String text = TextTable.of(wide(), UnitSet.METRIC, 60);
        assertThat(text.split("tape", -1).length - 1)
                .as("the leading column in each block")
                .isGreaterThan(1);
        for (int k = 0; k < 12; k++) {
            assertThat(text).contains(" " + (1000 + k) + ".0");
        }
    }

    @Test
    void numbersLineUpAtTheRight() {
        List<String> rows = TextTable.of(wide(), UnitSet.IMPERIAL, 200).lines().toList();
        assertThat(rows.get(rows.size() - 1)).hasSameSizeAs(rows.get(rows.size() - 2));
    }
}
