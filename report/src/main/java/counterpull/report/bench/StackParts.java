package counterpull.report.bench;

import counterpull.bench.Estimate;
import counterpull.bench.Kind;
import counterpull.bench.Way;
import counterpull.bench.machine.PinFound;
import counterpull.bench.machine.StackFound;
import counterpull.bench.machine.StackPull;
import counterpull.engine.Constants;
import counterpull.picture.Chart;
import counterpull.picture.Coordinate;
import counterpull.picture.Ink;
import counterpull.picture.Layer;
import counterpull.picture.Marker;
import counterpull.picture.Range;
import counterpull.picture.Series;
import counterpull.picture.Stroke;
import counterpull.report.table.Column;
import counterpull.report.table.Measure;
import counterpull.report.table.NumberColumn;
import counterpull.report.table.Table;
import counterpull.report.table.WordColumn;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;

/** A weight stack: ratio, friction, pins. */
final class StackParts implements MachineParts {
    private final StackFound found;
    private final BenchWords words;

    StackParts(StackFound found, BenchWords words) {
        this.found = found;
        this.words = words;
    }

    @Override
    public String headline() {
        String friction = "friction takes " + words.say(found.friction(), Kind.SHARE) + " of the pull each way";
        return found.ratio()
                .map(ratio -> "The line runs " + words.say(ratio, Kind.NUMBER)
                        + " times as far as the stack rises, and " + friction)
                .orElse("F" + friction.substring(1));
    }

    @Override
    public List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        found.pins().stream()
                .filter(pin -> pin.mass().isPresent())
                .max(java.util.Comparator.comparingDouble(
                        pin -> Math.abs(pin.error().orElseThrow().value())))
                .ifPresent(pin -> sentences.add("Farthest from what is printed is the pin of "
                        + words.say(pin.printed(), Kind.MASS) + ": it weighs "
                        + words.say(pin.mass().orElseThrow(), Kind.MASS) + "."));
        if (found.ratio().isPresent()) {
            sentences.add(
                    "A ratio that is off makes every pin off by the same share, so a common share in all pins may be the tape's.");
        }
        sentences.add("A single pull scatters by " + words.say(found.noise(), Kind.FORCE) + ".");
        return sentences;
    }

    @Override
    public List<Table> tables() {
        EstimateTable table = new EstimateTable(words);
        found.ratio().ifPresent(ratio -> table.put("ratio, line to stack", ratio, Kind.NUMBER));
        found.ratioByMass().ifPresent(ratio -> table.put("ratio, by mass laid on", ratio, Kind.NUMBER));
        table.put("friction, share of the pull each way", found.friction(), Kind.SHARE);
        found.moving().ifPresent(moving -> table.put("moves with the line", moving, Kind.MASS));
        List<Table> tables = new ArrayList<>(List.of(table.table()));
        if (!found.pins().isEmpty()) {
            tables.add(pins());
        }
        return tables;
    }

    private Table pins() {
        List<Column> columns = new ArrayList<>();
        columns.add(new NumberColumn(
                new Column.Head("printed", "printed", "what is printed at the pin"),
                Measure.MASS,
                found.pins().stream().mapToDouble(PinFound::printed).toArray()));
        columns.add(words(
                "pull",
                "half way between out and back at the handle",
                pin -> Optional.of(words.say(pin.pull(), Kind.FORCE))));
        columns.add(words("real", "what it weighs", pin -> pin.mass().map(mass -> words.say(mass, Kind.MASS))));
        columns.add(words(
                "off by",
                "real less printed, 95 times in 100",
                pin -> pin.error().map(error -> words.interval(error, Kind.MASS))));
        columns.add(words(
                "felt at a start",
                "mass that starting and stopping feels",
                pin -> pin.felt().map(felt -> words.say(felt, Kind.MASS))));
        return new Table("Pins: printed and real", columns, 1);
    }

    private Column words(String title, String meaning, Function<PinFound, Optional<String>> what) {
        return new WordColumn(
                new Column.Head(title.replace(' ', '_'), title, meaning),
                found.pins().stream().map(pin -> what.apply(pin).orElse("")).toList());
    }

    @Override
    public List<BenchSection.Captioned> charts() {
        List<StackPull> pulls =
                found.bench().pulls().stream().filter(pull -> pull.added() == 0).toList();
        double high = pulls.stream().mapToDouble(StackPull::printed).max().orElse(1);
        BenchCurves curves = new BenchCurves(0, high);
        double factor = found.ratio()
                .map(ratio -> Constants.STANDARD_GRAVITY / ratio.value())
                .orElse(perKilogram());
        curves.curve(
                Ink.QUIET,
                Stroke.TODAY,
                found.ratio().isPresent() ? "as printed" : "as these pins are",
                at -> Estimate.normal(at * factor, 0));
        for (Way way : Way.values()) {
            List<StackPull> here =
                    pulls.stream().filter(pull -> pull.way() == way).toList();
            curves.dots(
                    way,
                    here.stream().mapToDouble(StackPull::printed).toArray(),
                    here.stream().mapToDouble(StackPull::force).toArray());
        }
        List<BenchSection.Captioned> charts = new ArrayList<>();
        charts.add(new BenchSection.Captioned(
                new Chart(
                        "Pull at the handle by what is printed",
                        new Chart.Measure(Chart.Quantity.FORCE, "as the scale reads it"),
                        Range.between(new Coordinate("printed", Coordinate.Kind.MASS), 0, high),
                        curves.layers(),
                        OptionalInt.empty()),
                "Circles: slowly out. Squares: slowly let back. Half way between them is the weight; the grey line is what the printed"
                        + " kilograms would pull without friction."));
        if (found.ratio().isPresent()) {
            charts.add(errors(high));
        }
        return charts;
    }

    private BenchSection.Captioned errors(double high) {
        double[] printed = found.pins().stream().mapToDouble(PinFound::printed).toArray();
        List<Estimate> errors =
                found.pins().stream().map(pin -> pin.error().orElseThrow()).toList();
        Series low =
                new Series(printed, errors.stream().mapToDouble(Estimate::low).toArray());
        Series top =
                new Series(printed, errors.stream().mapToDouble(Estimate::high).toArray());
        Series value =
                new Series(printed, errors.stream().mapToDouble(Estimate::value).toArray());
        return new BenchSection.Captioned(
                new Chart(
                        "What each pin is off by",
                        new Chart.Measure(Chart.Quantity.MASS, "real less printed"),
                        Range.between(new Coordinate("printed", Coordinate.Kind.MASS), 0, high),
                        List.of(new Layer.Bars(low, top, Ink.INK), new Layer.Dots(value, Marker.DIAMOND, Ink.INK, "")),
                        OptionalInt.empty()),
                "The bars hold what a pin is off by 95 times in 100; one that does not reach 0 is off.");
    }

    private double perKilogram() {
        double pull = 0;
        double printed = 0;
        for (PinFound pin : found.pins()) {
            pull += pin.pull().value();
            printed += pin.printed();
        }
        return printed > 0 ? pull / printed : 0;
    }
}
