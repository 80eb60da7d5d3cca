package counterpull.report.bench;

import counterpull.bench.Kind;
import counterpull.bench.Way;
import counterpull.bench.machine.LeverFound;
import counterpull.bench.machine.LeverReading;
import counterpull.picture.Chart;
import counterpull.picture.Coordinate;
import counterpull.picture.Range;
import counterpull.report.table.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** A lever: own moment, friction, horn. */
final class LeverParts implements MachineParts {
    private final LeverFound found;
    private final BenchWords words;

    LeverParts(LeverFound found, BenchWords words) {
        this.found = found;
        this.words = words;
    }

    @Override
    public String headline() {
        return "The lever alone turns back with up to " + words.say(found.moment(), Kind.TORQUE)
                + ", where its centre of mass is level with the pivot";
    }

    @Override
    public List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        sentences.add("Its centre of mass lies " + words.say(found.offset(), Kind.ANGLE)
                + " from the line pivot to pad, counter-clockwise as seen with the person facing right; friction at the pivot takes "
                + words.say(found.friction(), Kind.TORQUE) + " each way.");
        found.horn()
                .ifPresent(horn -> sentences.add("The plates hang " + words.say(horn.radius(), Kind.LENGTH)
                        + " from the pivot by what they pull"
                        + found.bench()
                                .horn()
                                .map(tape -> ", and " + words.say(tape.radius(), Kind.LENGTH) + " by the tape")
                                .orElse("")
                        + "."));
        return sentences;
    }

    @Override
    public List<Table> tables() {
        EstimateTable table = new EstimateTable(words)
                .put("moment of the lever itself", found.moment(), Kind.TORQUE)
                .put("angle of its centre of mass", found.offset(), Kind.ANGLE)
                .put("friction at the pivot", found.friction(), Kind.TORQUE);
        found.horn()
                .ifPresent(horn -> table.put("horn, from the pivot", horn.radius(), Kind.LENGTH)
                        .put("horn, from the pad's line", horn.offset(), Kind.ANGLE));
        return List.of(table.table());
    }

    @Override
    public List<BenchSection.Captioned> charts() {
        double[] loads = found.bench().readings().stream()
                .mapToDouble(LeverReading::plates)
                .distinct()
                .sorted()
                .toArray();
        List<BenchSection.Captioned> charts = new ArrayList<>();
        for (double plates : loads) {
            charts.add(new BenchSection.Captioned(
                    chart(plates),
                    "Circles: slowly up. Squares: slowly let back. The curves are the fit of all readings together, their light edges hold it"
                            + " 95 times in 100."));
        }
        return charts;
    }

    private Chart chart(double plates) {
        double low = found.bench().readings().stream()
                .mapToDouble(LeverReading::angle)
                .min()
                .orElse(0);
        double high = found.bench().readings().stream()
                .mapToDouble(LeverReading::angle)
                .max()
                .orElse(1);
        BenchCurves curves = new BenchCurves(low, high);
        for (Way way : Way.values()) {
            List<LeverReading> here = found.bench().readings().stream()
                    .filter(each -> each.way() == way && each.plates() == plates)
                    .toList();
            curves.way(way, way.words(), at -> found.reading(way, at, plates))
                    .dots(
                            way,
                            here.stream().mapToDouble(LeverReading::angle).toArray(),
                            here.stream().mapToDouble(LeverReading::size).toArray());
        }
        boolean force = found.bench().hold().byForce();
        return new Chart(
                plates == 0 ? "The lever alone" : "The lever with " + words.say(plates, Kind.MASS),
                new Chart.Measure(
                        force ? Chart.Quantity.FORCE : Chart.Quantity.TORQUE,
                        "as the scale reads it, square to the lever"),
                Range.between(new Coordinate("angle of the lever", Coordinate.Kind.ANGLE), low, high),
                curves.layers(),
                OptionalInt.empty());
    }
}
