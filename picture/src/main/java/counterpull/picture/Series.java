package counterpull.picture;

import counterpull.engine.Require;

/** One value at each point of a range, in SI; NaN where it is not known. Read-only. */
public final class Series {
    private final double[] x;
    private final double[] y;

    /**
     * A series.
     *
     * @param x where along the range, rad or m
     * @param y what, SI; as long as x; NaN or infinite where there is no value
     */
    public Series(double[] x, double[] y) {
        Require.within(y.length, new Require.Limits(x.length, x.length), "values of a series", "");
        this.x = x.clone();
        this.y = y.clone();
    }

    /** How many points. */
    public int size() {
        return x.length;
    }

    /** Where along the range point i is, rad or m. */
    public double x(int i) {
        return x[i];
    }

    /** Value at point i, SI. */
    public double y(int i) {
        return y[i];
    }

    /** Whether there is a value at point i. */
    public boolean known(int i) {
        return Math.abs(y[i]) <= Double.MAX_VALUE;
    }

    /** Whether there is a value anywhere. */
    public boolean anyKnown() {
        for (int i = 0; i < y.length; i++) {
            if (known(i)) {
                return true;
            }
        }
        return false;
    }

    /** Of the first and the last point with a value the one farther along the chart, or −1. */
    int endKnown(double sense) {
        int last = y.length - 1;
        while (last >= 0 && !known(last)) {
            last--;
        }
        int first = 0;
        while (first < last && !known(first)) {
            first++;
        }
        return last >= 0 && sense * x[first] > sense * x[last] ? first : last;
    }
}
