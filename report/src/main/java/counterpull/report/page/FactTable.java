package counterpull.report.page;

import counterpull.report.Facts;
import counterpull.report.table.Column;
import counterpull.report.table.Measure;
import counterpull.report.table.NumberColumn;
import counterpull.report.table.Table;
import counterpull.report.table.WordColumn;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Setups beside each other by the few numbers that matter. */
final class FactTable {
    private final List<String> names = new ArrayList<>();
    private final List<Facts> facts = new ArrayList<>();
    private final List<Integer> pieces = new ArrayList<>();

    FactTable add(String name, Facts of, int howMany) {
        names.add(name);
        facts.add(of);
        pieces.add(howMany);
        return this;
    }

    Table table(String title) {
        return new Table(
                title,
                List.of(
                        new WordColumn(new Column.Head("setup", "setup", "the setup"), names),
                        numbers("shortfall", "under target", Measure.EFFORT_FINE, Facts::shortfall),
                        numbers("peak", "largest effort", Measure.EFFORT_FINE, Facts::peak),
                        numbers("kneecap", "kneecap stress", Measure.STRESS, Facts::kneecapStress),
                        numbers("turn", "inertia at the turn", Measure.FORCE, Facts::turnForce),
                        numbers("bottom", "push at bottom", Measure.FORCE, Facts::forceBottom),
                        numbers("top", "push at top", Measure.FORCE, Facts::forceTop),
                        new NumberColumn(
                                new Column.Head("pieces", "pieces to set up", "plates and rubber handled"),
                                Measure.COUNT,
                                pieces.stream()
                                        .mapToDouble(Integer::doubleValue)
                                        .toArray())),
                1);
    }

    private Column numbers(String key, String title, Measure measure, ToDoubleFunction<Facts> value) {
        return new NumberColumn(
                new Column.Head(key, title, title),
                measure,
                facts.stream().mapToDouble(value).toArray());
    }
}
