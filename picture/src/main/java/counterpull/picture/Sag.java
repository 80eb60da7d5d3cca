package counterpull.picture;

import counterpull.engine.planar.Vec;

/**
 * A line that hangs between two points, px: the quadratic curve through both whose length is the line's own; its middle hangs
 * straight down. A parabola, not the catenary: near enough for a picture, and its length is true.
 *
 * @param control control point of the curve
 * @param lowest the curve's middle
 */
record Sag(Vec control, Vec lowest) {
    private static final int PIECES = 48;
    private static final int HALVINGS = 40;

    static Sag of(Vec from, Vec to, double length) {
        Vec middle = from.plus(to).times(0.5);
        double low = 0;
        double high = 2 * length;
        for (int i = 0; i < HALVINGS; i++) {
            double half = (low + high) / 2;
            if (length(from, middle.plus(new Vec(0, half)), to) < length) {
                low = half;
            } else {
                high = half;
            }
        }
        Vec control = middle.plus(new Vec(0, low));
        return new Sag(control, middle.plus(control).times(0.5));
    }

    /** Length of the quadratic curve, px. */
    static double length(Vec from, Vec control, Vec to) {
        double sum = 0;
        Vec last = from;
        for (int i = 1; i <= PIECES; i++) {
            double t = i / (double) PIECES;
            Vec next = from.times((1 - t) * (1 - t))
                    .plus(control.times(2 * t * (1 - t)))
                    .plus(to.times(t * t));
            sum += next.minus(last).norm();
            last = next;
        }
        return sum;
    }
}
