package counterpull.report.bench;

import counterpull.bench.Estimate;
import counterpull.bench.Kind;
import counterpull.bench.machine.CamFound;
import counterpull.engine.load.CamRadius;
import counterpull.picture.Chart;
import counterpull.picture.Coordinate;
import counterpull.picture.Ink;
import counterpull.picture.Range;
import counterpull.picture.Stroke;
import counterpull.report.table.Column;
import counterpull.report.table.Measure;
import counterpull.report.table.NumberColumn;
import counterpull.report.table.Table;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;

/** A cam: its radius by the lever's angle. */
final class CamParts implements MachineParts {
    private final CamFound found;
    private final BenchWords words;
    private final List<CamRadius.Reading> grid;

    CamParts(CamFound found, BenchWords words) {
        this.found = found;
        this.words = words;
        grid = found.cam().readings();
    }

    private Estimate radius(CamRadius.Reading reading) {
        return found.radius(reading.angle());
    }

    @Override
    public String headline() {
        CamRadius.Reading most = grid.get(0);
        CamRadius.Reading least = grid.get(0);
        for (CamRadius.Reading reading : grid) {
            most = reading.radius() > most.radius() ? reading : most;
            least = reading.radius() < least.radius() ? reading : least;
        }
        return "The cam's radius runs from " + words.say(radius(least), Kind.LENGTH) + " at "
                + words.say(least.angle(), Kind.ANGLE) + " to " + words.say(radius(most), Kind.LENGTH) + " at "
                + words.say(most.angle(), Kind.ANGLE);
    }

    @Override
    public List<String> sentences() {
        return List.of(
                "Where the radius is larger the same stack asks for more. It is known least at the two ends, where the line was read on one"
                        + " side only: read one angle more beyond each end that matters.");
    }

    @Override
    public List<Table> tables() {
        return List.of(new Table(
                "Radius by the lever's angle",
                List.of(
                        column("angle", "of the lever", Measure.ANGLE, CamRadius.Reading::angle),
                        column("radius", "of the cam there", Measure.LENGTH, CamRadius.Reading::radius),
                        column(
                                "from",
                                "low end, 95 times in 100",
                                Measure.LENGTH,
                                reading -> radius(reading).low()),
                        column(
                                "to",
                                "high end, 95 times in 100",
                                Measure.LENGTH,
                                reading -> radius(reading).high())),
                1));
    }

    private Column column(String key, String meaning, Measure measure, ToDoubleFunction<CamRadius.Reading> value) {
        return new NumberColumn(
                new Column.Head(key, key, meaning),
                measure,
                grid.stream().mapToDouble(value).toArray());
    }

    @Override
    public List<BenchSection.Captioned> charts() {
        BenchCurves curves = new BenchCurves(found.first(), found.last());
        curves.curve(Ink.KNEE, Stroke.ASKED, "radius", found::radius);
        return List.of(new BenchSection.Captioned(
                new Chart(
                        "The cam's radius",
                        new Chart.Measure(Chart.Quantity.LENGTH, "radius of the cam"),
                        Range.between(
                                new Coordinate("angle of the lever", Coordinate.Kind.ANGLE),
                                found.first(),
                                found.last()),
                        curves.layers(),
                        OptionalInt.empty()),
                "The light edges hold the radius 95 times in 100 at each angle."));
    }
}
