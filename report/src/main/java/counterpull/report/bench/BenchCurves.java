package counterpull.report.bench;

import counterpull.bench.Estimate;
import counterpull.bench.Way;
import counterpull.picture.Ink;
import counterpull.picture.Layer;
import counterpull.picture.Look;
import counterpull.picture.Marker;
import counterpull.picture.Series;
import counterpull.picture.Stroke;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/** Curves with their bands, and readings as shapes: up and down always look the same. */
final class BenchCurves {
    private static final int POINTS = 61;

    private final double low;
    private final double high;
    private final List<Layer> layers = new ArrayList<>();

    BenchCurves(double low, double high) {
        this.low = low;
        this.high = high;
    }

    /** A way's curve with its band. */
    BenchCurves way(Way way, String label, DoubleFunction<Estimate> curve) {
        return curve(ink(way), way == Way.UP ? Stroke.ASKED : Stroke.SECOND, label, curve);
    }

    BenchCurves curve(Ink ink, Stroke stroke, String label, DoubleFunction<Estimate> curve) {
        double[] at = new double[POINTS];
        double[][] values = new double[3][POINTS];
        for (int i = 0; i < POINTS; i++) {
            at[i] = low + (high - low) * i / (POINTS - 1);
            Estimate estimate = curve.apply(at[i]);
            values[0][i] = estimate.value();
            values[1][i] = estimate.low();
            values[2][i] = estimate.high();
        }
        layers.add(new Layer.Band(new Series(at, values[1]), new Series(at, values[2]), ink));
        layers.add(new Layer.Curve(new Series(at, values[0]), Look.of(ink, stroke), label));
        return this;
    }

    BenchCurves dots(Way way, double[] at, double[] values) {
        Marker marker = way == Way.UP ? Marker.CIRCLE : Marker.SQUARE;
        layers.add(new Layer.Dots(new Series(at, values), marker, ink(way), ""));
        return this;
    }

    BenchCurves dots(Marker marker, Ink ink, double[] at, double[] values) {
        layers.add(new Layer.Dots(new Series(at, values), marker, ink, ""));
        return this;
    }

    static Ink ink(Way way) {
        return way == Way.UP ? Ink.KNEE : Ink.HIP;
    }

    List<Layer> layers() {
        return layers;
    }
}
