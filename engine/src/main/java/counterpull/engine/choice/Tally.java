package counterpull.engine.choice;

/**
 * What the search needs to know of one setup: its shortfall and peak effort, and how far past each limit it is. A mutable
 * working value, filled anew for every setup.
 */
final class Tally {
    double shortfall;
    double peak;
    /** Largest excess over each limit as a share of it, by the limit's ordinal; −∞ where none is stated. */
    final double[] excess = new double[LimitKind.values().length];

    void clear() {
        shortfall = Double.NaN;
        peak = Double.NaN;
        java.util.Arrays.fill(excess, Double.NEGATIVE_INFINITY);
    }

    /** Notes a value against an upper limit. */
    void upper(LimitKind kind, double value, double limit) {
        double past = (value - limit) / Math.max(Math.abs(limit), 1e-12);
        if (past > excess[kind.ordinal()]) {
            excess[kind.ordinal()] = past;
        }
    }

    /** Notes a value against a lower limit. */
    void lower(LimitKind kind, double value, double limit) {
        double past = (limit - value) / Math.max(Math.abs(limit), 1e-12);
        if (past > excess[kind.ordinal()]) {
            excess[kind.ordinal()] = past;
        }
    }

    double worst() {
        double worst = Double.NEGATIVE_INFINITY;
        for (double past : excess) {
            worst = Math.max(worst, past);
        }
        return worst;
    }

    boolean feasible() {
        return !(worst() > Breach.TOUCH);
    }
}
