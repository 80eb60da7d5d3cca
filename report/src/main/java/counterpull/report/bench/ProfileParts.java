package counterpull.report.bench;

import counterpull.bench.Kind;
import counterpull.bench.Way;
import counterpull.bench.machine.ProfileFound;
import counterpull.bench.machine.Seen;
import counterpull.engine.load.MeasuredProfile;
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

/** An unknown machine: its curve up and down. */
final class ProfileParts implements MachineParts {
    private final ProfileFound found;
    private final BenchWords words;
    private final List<MeasuredProfile.Reading> grid;

    ProfileParts(ProfileFound found, BenchWords words) {
        this.found = found;
        this.words = words;
        grid = found.readings();
    }

    private Kind size() {
        return found.bench().quantity().size();
    }

    private Kind position() {
        return found.bench().quantity().position();
    }

    private double peak() {
        double at = found.first();
        for (MeasuredProfile.Reading reading : grid) {
            at = found.mean(reading.position()).value() > found.mean(at).value() ? reading.position() : at;
        }
        return at;
    }

    @Override
    public String headline() {
        return "Held, it asks for most at " + words.say(peak(), position()) + ": "
                + words.say(found.mean(peak()), size());
    }

    @Override
    public List<String> sentences() {
        return List.of(
                "At its ends it asks for " + words.say(found.mean(found.first()), size()) + " and "
                        + words.say(found.mean(found.last()), size()) + "; friction there takes "
                        + words.say(found.half(found.first()), size()) + " and "
                        + words.say(found.half(found.last()), size()) + " each way.",
                "A single reading scatters by " + words.say(found.noise(), size())
                        + ". Slow readings do not show the machine's inertia: a fast start asks for more.");
    }

    @Override
    public List<Table> tables() {
        Measure size = size() == Kind.TORQUE ? Measure.TORQUE : Measure.FORCE;
        Measure position = position() == Kind.LENGTH ? Measure.LENGTH : Measure.ANGLE;
        return List.of(new Table(
                "The smooth curve, as a scenario takes it",
                List.of(
                        column("position", "where", position, MeasuredProfile.Reading::position),
                        column("up", "moving slowly up", size, MeasuredProfile.Reading::up),
                        column("down", "slowly let back", size, MeasuredProfile.Reading::down),
                        column("held", "half way between", size, reading -> (reading.up() + reading.down()) / 2),
                        column(
                                "from",
                                "held: low end, 95 times in 100",
                                size,
                                reading -> found.mean(reading.position()).low()),
                        column(
                                "to",
                                "held: high end, 95 times in 100",
                                size,
                                reading -> found.mean(reading.position()).high())),
                1));
    }

    private Column column(
            String key, String meaning, Measure measure, ToDoubleFunction<MeasuredProfile.Reading> value) {
        return new NumberColumn(
                new Column.Head(key, key, meaning),
                measure,
                grid.stream().mapToDouble(value).toArray());
    }

    @Override
    public List<BenchSection.Captioned> charts() {
        BenchCurves curves = new BenchCurves(found.first(), found.last());
        for (Way way : Way.values()) {
            List<Seen> seen = found.bench().readings().stream()
                    .filter(each -> each.way() == way)
                    .toList();
            curves.way(way, way.words(), at -> found.way(way, at))
                    .dots(
                            way,
                            seen.stream().mapToDouble(Seen::position).toArray(),
                            seen.stream().mapToDouble(Seen::size).toArray());
        }
        boolean travel = position() == Kind.LENGTH;
        Coordinate coordinate =
                new Coordinate(travel ? "travel" : "angle", travel ? Coordinate.Kind.LENGTH : Coordinate.Kind.ANGLE);
        Chart.Measure measure = new Chart.Measure(
                size() == Kind.TORQUE ? Chart.Quantity.TORQUE : Chart.Quantity.FORCE, "as the scale reads it");
        Range range = Range.between(coordinate, found.first(), found.last());
        BenchCurves friction = new BenchCurves(found.first(), found.last());
        friction.curve(Ink.FRICTION, Stroke.ASKED, "friction", found::half);
        return List.of(
                new BenchSection.Captioned(
                        new Chart(
                                "What it asks for, up and down", measure, range, curves.layers(), OptionalInt.empty()),
                        "Circles: slowly up. Squares: slowly let back. Each curve's light edges hold it 95 times in 100 at each position; half"
                                + " their distance is friction."),
                new BenchSection.Captioned(
                        new Chart(
                                "Friction, each way",
                                new Chart.Measure(measure.quantity(), "half of what up and down differ by"),
                                range,
                                friction.layers(),
                                OptionalInt.empty()),
                        "The light band holds it 95 times in 100 at each position."));
    }
}
