package counterpull.report.bench;

import counterpull.bench.tubing.Band;
import counterpull.bench.tubing.Pull;
import counterpull.bench.tubing.TubingBench;
import counterpull.bench.tubing.TubingResult;
import counterpull.engine.elastic.Rubber;
import counterpull.picture.Chart;
import counterpull.picture.Coordinate;
import counterpull.picture.Ink;
import counterpull.picture.Layer;
import counterpull.picture.Look;
import counterpull.picture.Marker;
import counterpull.picture.Range;
import counterpull.picture.Series;
import counterpull.picture.Stroke;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;

/** Force of one strand against length: readings, the fitted curve with its band, and what is left over. */
final class RubberCharts {
    private static final Chart.Measure FORCE = new Chart.Measure(Chart.Quantity.FORCE, "force of one strand");
    private static final Chart.Measure LEFT = new Chart.Measure(Chart.Quantity.FORCE, "reading less curve, one strand");
    private static final Coordinate LENGTH = new Coordinate("length of the rubber", Coordinate.Kind.LENGTH);

    /** How much of the axis lies past the tested length, hatched. */
    private static final double BEYOND = 0.12;

    private final TubingBench bench;
    private final TubingResult result;
    private final double natural;
    private final double longest;

    RubberCharts(TubingBench bench, TubingResult result) {
        this.bench = bench;
        this.result = result;
        natural = result.band().first();
        longest = result.band().last();
    }

    List<BenchSection.Captioned> all() {
        return List.of(
                new BenchSection.Captioned(
                        forces(),
                        "Readings of one strand (" + shapes() + "), and the curve that is used: "
                                + result.law().family().words()
                                + ", with the area in which it lies 95 times in 100. Hatched: past the tested length, where nothing"
                                + " is known."),
                new BenchSection.Captioned(
                        residuals(),
                        "What is left over. Points that go up and down without a pattern: the curve fits. A bow: it does not. One far"
                                + " from the others: take that reading again."));
    }

    private String shapes() {
        String up = "discs while stretching";
        String down = bench.pulls().lettingGo().isEmpty() ? "" : ", triangles while letting go";
        String first = bench.pulls().firstStretch().isEmpty() ? "" : ", crosses the first stretch";
        return up + down + first;
    }

    private Range range() {
        return Range.between(LENGTH, natural, longest + BEYOND * (longest - natural));
    }

    private Chart forces() {
        List<Layer> layers = new ArrayList<>();
        layers.add(beyond());
        List<Band.Point> points = result.band().points();
        layers.add(new Layer.Band(
                series(points, point -> point.force().low()),
                series(points, point -> point.force().high()),
                Ink.RUBBER));
        layers.add(new Layer.Curve(
                series(points, point -> point.force().value()), Look.of(Ink.RUBBER, Stroke.ASKED), "stretching"));
        result.loss()
                .ifPresent(loss ->
                        layers.add(new Layer.Curve(back(points), Look.of(Ink.QUIET, Stroke.HAD), "letting go")));
        dots(layers, bench.pulls().stretching(), Marker.CIRCLE, "");
        dots(layers, bench.pulls().lettingGo(), Marker.TRIANGLE, "");
        dots(layers, bench.pulls().firstStretch(), Marker.CROSS, "first stretch");
        return new Chart("Force against length", FORCE, range(), layers, OptionalInt.empty());
    }

    private Layer beyond() {
        return new Layer.Stretch(longest, longest + BEYOND * (longest - natural), "not tested");
    }

    private void dots(List<Layer> layers, List<Pull> pulls, Marker marker, String label) {
        if (pulls.isEmpty()) {
            return;
        }
        List<Pull> rising =
                pulls.stream().sorted(Comparator.comparingDouble(Pull::length)).toList();
        double[] lengths = rising.stream().mapToDouble(Pull::length).toArray();
        double[] forces = rising.stream()
                .mapToDouble(pull -> pull.force() / bench.piece().strands())
                .toArray();
        layers.add(new Layer.Dots(new Series(lengths, forces), marker, Ink.INK, label));
    }

    private Series back(List<Band.Point> points) {
        Rubber rubber = result.rubber();
        return series(points, point -> {
            double stretch = Math.min(point.length() / rubber.naturalLength(), rubber.maxStretch());
            return rubber.unloading().tension(rubber.law(), stretch);
        });
    }

    private static Series series(List<Band.Point> points, ToDoubleFunction<Band.Point> value) {
        return new Series(
                points.stream().mapToDouble(Band.Point::length).toArray(),
                points.stream().mapToDouble(value).toArray());
    }

    private Chart residuals() {
        double[] lengths = bench.pulls().stretching().stream()
                .mapToDouble(Pull::length)
                .sorted()
                .toArray();
        double[] left = result.law().residuals().stream()
                .mapToDouble(Double::doubleValue)
                .toArray();
        List<Layer> layers = new ArrayList<>();
        layers.add(beyond());
        layers.add(new Layer.Curve(
                new Series(new double[] {natural, longest}, new double[] {0, 0}),
                Look.of(Ink.RUBBER, Stroke.TODAY),
                ""));
        layers.add(new Layer.Dots(new Series(lengths, left), Marker.CIRCLE, Ink.INK, ""));
        return new Chart("What is left over", LEFT, range(), layers, OptionalInt.empty());
    }
}
