package counterpull.readings.table;

import counterpull.scenario.fields.Measure;
import counterpull.scenario.units.Dimension;
import java.util.List;

/** A small kind of table for tests: a length, a force, a way, a number and words. */
final class Pulls implements TableKind {
    @Override
    public String word() {
        return "pulls";
    }

    @Override
    public List<Wanted> columns() {
        return List.of(
                Wanted.must(
                        "length", new Due.Amount(Measure.between(Dimension.LENGTH, "1 cm", "20 m")), "stretched to"),
                Wanted.must("force", new Due.Amount(Measure.between(Dimension.FORCE, "0 N", "10 kN")), "load", "pull"),
                Wanted.may("way", new Due.OneOf(List.of("stretching", "letting go"))),
                Wanted.may("cycles", new Due.Whole(0, 1000)),
                Wanted.may("note", new Due.Words(60)));
    }
}
