package counterpull.report.bench;

import counterpull.bench.Estimate;
import counterpull.bench.Kind;
import counterpull.bench.Way;
import counterpull.bench.sled.LoadCheck;
import counterpull.bench.sled.Pull;
import counterpull.bench.sled.SledFound;
import counterpull.bench.sled.SledFriction;
import counterpull.picture.Chart;
import counterpull.picture.Coordinate;
import counterpull.picture.Ink;
import counterpull.picture.Layer;
import counterpull.picture.Marker;
import counterpull.picture.Range;
import counterpull.picture.Stroke;
import counterpull.readings.machines.SledSubject;
import counterpull.report.table.Column;
import counterpull.report.table.Measure;
import counterpull.report.table.NumberColumn;
import counterpull.report.table.Table;
import counterpull.report.table.WordColumn;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** A sled that was measured, for people. */
final class SledSection {
    private static final Coordinate PLATES = new Coordinate("added plates", Coordinate.Kind.MASS);

    private final SledSubject subject;
    private final BenchWords words;

    SledSection(SledSubject subject, BenchWords words) {
        this.subject = subject;
        this.words = words;
    }

    BenchSection section() {
        return subject.answer()
                .result()
                .map(this::found)
                .orElseGet(() ->
                        BenchSection.refused(subject.name(), subject.answer().remarks()));
    }

    private BenchSection found(SledFound found) {
        return new BenchSection(
                subject.name(),
                "The carriage weighs " + words.say(found.mass(), Kind.MASS) + ", and the rail stands at "
                        + words.say(found.angle(), Kind.ANGLE),
                sentences(found),
                List.of(estimates(found), pulls(found)),
                charts(found),
                subject.answer().remarks(),
                subject.forScenario());
    }

    private List<String> sentences(SledFound found) {
        List<String> sentences = new ArrayList<>();
        double most = loads(found)[1];
        sentences.add("Empty it takes " + words.say(pull(found, Way.UP, 0), Kind.FORCE) + " to draw it up slowly and "
                + words.say(pull(found, Way.DOWN, 0), Kind.FORCE) + " to let it back"
                + (most > 0
                        ? "; with " + words.say(most, Kind.MASS) + " of plates "
                                + words.say(pull(found, Way.UP, most), Kind.FORCE) + " and "
                                + words.say(pull(found, Way.DOWN, most), Kind.FORCE)
                        : "")
                + ".");
        if (found.friction() instanceof SledFriction.Apart) {
            sentences.add(
                    "Half the difference is friction: a constant part, and one that grows with what presses on the rail.");
        }
        found.breakaway()
                .ifPresent(first -> sentences.add("It first moves at " + words.say(first, Kind.FORCE)
                        + " beyond its weight's share; that matters where somebody lets go, and is in no profile."));
        found.loads().ifPresent(check -> sentences.add(agreement(check)));
        return sentences;
    }

    private static double pull(SledFound found, Way way, double plates) {
        return found.lines().pull(way, plates).value();
    }

    private String agreement(LoadCheck check) {
        boolean agree = Math.abs(check.disagreement()) <= 1.3;
        double ten = 10 * check.found().value();
        String read = "each added " + words.say(10, Kind.MASS) + " adds " + words.say(ten, Kind.FORCE)
                + " to the pull, and by gauge and plates it should add "
                + words.say(10 * check.expected().value(), Kind.FORCE);
        return agree
                ? "Gauge, plates and scale agree: " + read + "."
                : "Gauge, plates and scale do not agree: " + read + ". See above for what to look at.";
    }

    private Table estimates(SledFound found) {
        EstimateTable table = new EstimateTable(words)
                .put("rail angle, by the gauge alone", found.angle(), Kind.ANGLE)
                .put("carriage", found.mass(), Kind.MASS);
        if (found.friction() instanceof SledFriction.Apart apart) {
            table.put("friction, constant part", apart.constant(), Kind.FORCE);
            table.put("friction coefficient", apart.coefficient(), Kind.SHARE);
        } else if (found.friction() instanceof SledFriction.Together together) {
            table.put("friction with " + words.say(together.plates(), Kind.MASS), together.force(), Kind.FORCE);
        }
        found.breakaway().ifPresent(first -> table.put("breakaway, beyond its weight's share", first, Kind.FORCE));
        return table.table();
    }

    private static Table pulls(SledFound found) {
        List<Pull> pulls = found.bench().pulls();
        double[] left = new double[pulls.size()];
        double[] number = new double[left.length];
        for (int i = 0; i < left.length; i++) {
            left[i] = found.lines().residual(i);
            number[i] = i + 1;
        }
        return new Table(
                "Pulls, and what the fit leaves over",
                List.of(
                        new NumberColumn(new Column.Head("pull", "pull", "number in the file"), Measure.COUNT, number),
                        word("way", pulls, pull -> pull.way().words()),
                        number("plates", "added plates", Measure.MASS, pulls, Pull::plates),
                        number("read", "what the scale read", Measure.FORCE, pulls, Pull::force),
                        new NumberColumn(
                                new Column.Head("left_over", "left over", "reading less fit"), Measure.FORCE, left)),
                2);
    }

    private static Column word(String key, List<Pull> pulls, Function<Pull, String> what) {
        return new WordColumn(
                new Column.Head(key, key, "which way it moved"),
                pulls.stream().map(what).toList());
    }

    private static Column number(
            String key, String meaning, Measure measure, List<Pull> pulls, ToDoubleFunction<Pull> what) {
        return new NumberColumn(
                new Column.Head(key, key, meaning),
                measure,
                pulls.stream().mapToDouble(what).toArray());
    }

    private static double[] loads(SledFound found) {
        double most =
                found.bench().pulls().stream().mapToDouble(Pull::plates).max().orElse(0);
        double least =
                found.bench().pulls().stream().mapToDouble(Pull::plates).min().orElse(0);
        return new double[] {least, most};
    }

    private List<BenchSection.Captioned> charts(SledFound found) {
        double[] loads = loads(found);
        double low = loads[1] > loads[0] ? loads[0] : Math.max(0, loads[0] - 5);
        double high = loads[1] > loads[0] ? loads[1] : loads[0] + 5;
        BenchCurves curves = new BenchCurves(low, high);
        BenchCurves over = new BenchCurves(low, high);
        over.curve(
                Ink.QUIET,
                Stroke.TODAY,
                "fit",
                plates -> Estimate.normal(0, found.lines().noise()));
        for (Way way : Way.values()) {
            curves.way(way, way.words(), plates -> found.lines().pull(way, plates));
            List<Pull> pulls = found.bench().pulls();
            double[] at = pulls.stream()
                    .filter(pull -> pull.way() == way)
                    .mapToDouble(Pull::plates)
                    .toArray();
            double[] force = pulls.stream()
                    .filter(pull -> pull.way() == way)
                    .mapToDouble(Pull::force)
                    .toArray();
            curves.dots(way, at, force);
            double[] left = java.util.stream.IntStream.range(0, pulls.size())
                    .filter(i -> pulls.get(i).way() == way)
                    .mapToDouble(i -> found.lines().residual(i))
                    .toArray();
            over.dots(way, at, left);
        }
        Range range = Range.between(PLATES, low, high);
        BenchCurves friction = new BenchCurves(low, high);
        friction.curve(Ink.FRICTION, Stroke.ASKED, "friction", found.lines()::friction);
        halves(found, friction);
        return List.of(
                new BenchSection.Captioned(
                        chart("Pull against added plates", "pull along the rail", range, curves.layers()),
                        "Circles: slowly up. Squares: slowly let back. The lines are the fit, their light edges hold it 95 times in 100; half"
                                + " their distance is friction."),
                new BenchSection.Captioned(
                        chart("Friction against added plates", "each way", range, friction.layers()),
                        "Triangles: half of what the means of up and down differ by, at each load. The light band holds the line 95 times in"
                                + " 100."),
                new BenchSection.Captioned(
                        chart("What the fit leaves over", "reading less fit", range, over.layers()),
                        "The light band holds 95 of 100 readings. A row of readings all above or all below it at one load points at those"
                                + " plates."));
    }

    private static void halves(SledFound found, BenchCurves friction) {
        List<Pull> pulls = found.bench().pulls();
        double[] loads =
                pulls.stream().mapToDouble(Pull::plates).distinct().sorted().toArray();
        double[] half = new double[loads.length];
        for (int i = 0; i < loads.length; i++) {
            double load = loads[i];
            half[i] = (mean(pulls, Way.UP, load) - mean(pulls, Way.DOWN, load)) / 2;
        }
        friction.dots(Marker.TRIANGLE, Ink.FRICTION, loads, half);
    }

    private static double mean(List<Pull> pulls, Way way, double load) {
        return pulls.stream()
                .filter(pull -> pull.way() == way && pull.plates() == load)
                .mapToDouble(Pull::force)
                .average()
                .orElse(Double.NaN);
    }

    private static Chart chart(String title, String height, Range range, List<Layer> layers) {
        return new Chart(title, new Chart.Measure(Chart.Quantity.FORCE, height), range, layers, OptionalInt.empty());
    }
}
