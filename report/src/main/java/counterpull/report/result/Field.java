package counterpull.report.result;

import counterpull.report.table.Column;
import counterpull.report.table.Measure;
import counterpull.report.table.NumberColumn;
import counterpull.report.table.WordColumn;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** One thing that a result says at every spot, and how it becomes a column. */
sealed interface Field {
    /** What it is. */
    Column.Head head();

    /** Its values at these spots. */
    Column column(List<Spot> spots);

    /** A number, SI. */
    record Number(Column.Head head, Measure measure, ToDoubleFunction<Spot> value) implements Field {
        @Override
        public Column column(List<Spot> spots) {
            return new NumberColumn(
                    head, measure, spots.stream().mapToDouble(value).toArray());
        }
    }

    /** Words. */
    record Words(Column.Head head, Function<Spot, String> value) implements Field {
        @Override
        public Column column(List<Spot> spots) {
            return new WordColumn(head, spots.stream().map(value).toList());
        }
    }

    /** A numeric field. */
    static Field number(String key, String title, Measure measure, String meaning, ToDoubleFunction<Spot> value) {
        return new Number(new Column.Head(key, title, meaning), measure, value);
    }

    /** A field of words. */
    static Field words(String key, String title, String meaning, Function<Spot, String> value) {
        return new Words(new Column.Head(key, title, meaning), value);
    }
}
