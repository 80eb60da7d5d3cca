package counterpull.picture;

/** The smallest and largest finite value seen so far; starts at zero, which a chart always shows. */
final class Extent {
    private double low;
    private double high;

    void add(double value) {
        if (Math.abs(value) <= Double.MAX_VALUE) {
            low = Math.min(low, value);
            high = Math.max(high, value);
        }
    }

    void add(Series series) {
        for (int i = 0; i < series.size(); i++) {
            add(series.y(i));
        }
    }

    void add(Layer layer) {
        if (layer instanceof Layer.Curve curve) {
            add(curve.series());
        } else if (layer instanceof Layer.Band band) {
            add(band.low());
            add(band.high());
        } else if (layer instanceof Layer.Dots dots) {
            add(dots.series());
        } else if (layer instanceof Layer.Bars bars) {
            add(bars.low());
            add(bars.high());
        } else if (layer instanceof Layer.Limit limit) {
            add(limit.value());
            // room for the hatching on its far side
            add(limit.side() == Layer.Limit.Side.ABOVE ? limit.value() * 1.06 : limit.value() * 0.94);
        }
    }

    double low() {
        return low;
    }

    double high() {
        return high > low ? high : low + 1;
    }
}
