package counterpull.report.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** RFC 4180: commas, quotes and line breaks in quotes, quotes doubled, CRLF. */
class CsvTest {
    private static Table table(String... words) {
        return new Table(
                "t",
                List.of(
                        new WordColumn(new Column.Head("who", "who", "whose, \"it\" is"), List.of(words)),
                        new NumberColumn(
                                new Column.Head("torque", "torque", "asked"),
                                Measure.TORQUE_PER_ANGLE,
                                new double[words.length])),
                1);
    }

    @Test
    void quotesWhatNeedsIt() {
        String csv = Csv.of(table("a,b", "say \"yes\"", "two\nlines", "plain"), UnitSet.SI);
        assertThat(csv)
                .isEqualTo(
                        "who,torque [N·m/rad]\r\n\"a,b\",0\r\n\"say \"\"yes\"\"\",0\r\n\"two\nlines\",0\r\nplain,0\r\n");
    }

    @Test
    void aNameThatASpreadsheetWouldRunIsDisarmed() {
        assertThat(Csv.of(table("=1+1", "-2", "@x"), UnitSet.SI)).contains("\r\n'=1+1,", "\r\n'-2,", "\r\n'@x,");
    }

    @Test
    void whatIsNotKnownIsEmptyAndSaidSo() {
        NumberColumn column = new NumberColumn(
                new Column.Head("e", "e", "effort"), Measure.EFFORT, Double.NaN, 0.5, Double.POSITIVE_INFINITY);
        Table table = new Table("t", List.of(column), 0);
        assertThat(Csv.of(table, UnitSet.SI)).isEqualTo("e\r\n\r\n0.5\r\n\r\n");
        assertThat(Csv.dictionary(table, UnitSet.METRIC)).contains("e,e,%,effort,not known");
        assertThat(Csv.dictionary(table("x"), UnitSet.SI)).contains("\"whose, \"\"it\"\" is\"");
    }
}
