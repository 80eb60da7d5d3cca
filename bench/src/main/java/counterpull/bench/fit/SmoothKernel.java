package counterpull.bench.fit;

import java.util.List;

/** exp(−(x − x′)²/2ℓ²) for one width ℓ, between the readings (kept) and from a look to them. */
final class SmoothKernel {
    private final SmoothScale scale;
    private final double width;
    private final double[] places;
    private final double[][] between;

    SmoothKernel(SmoothScale scale, double width) {
        this.scale = scale;
        this.width = width;
        List<SmoothCurves.Sight> sights = scale.sights();
        places = new double[sights.size()];
        between = new double[places.length][];
        for (int i = 0; i < places.length; i++) {
            places[i] = scale.place(sights.get(i).at());
            between[i] = new double[i + 1];
            for (int k = 0; k <= i; k++) {
                between[i][k] = value(places[i] - places[k]);
            }
        }
    }

    SmoothScale scale() {
        return scale;
    }

    /** Between readings i and k, k not above i. */
    double between(int i, int k) {
        return between[i][k];
    }

    private double value(double apart) {
        double u = apart / width;
        return Math.exp(-u * u / 2);
    }

    /** From a look to every reading. */
    double[] from(SmoothScale.Look look) {
        double[] to = new double[places.length];
        for (int i = 0; i < to.length; i++) {
            double apart = scale.place(look.at()) - places[i];
            to[i] = look.order() == 0 ? value(apart) : -apart / (width * width) * value(apart);
        }
        return to;
    }

    /** Of a look with itself. */
    double at(SmoothScale.Look look) {
        return look.order() == 0 ? 1 : 1 / (width * width);
    }
}
