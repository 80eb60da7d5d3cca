package counterpull.picture;

/**
 * Ticks at 1, 2 or 5 times a power of ten that cover an interval: the finest step with no more than so many ticks.
 */
final class Ticks {
    private final double step;
    private final int first;
    private final int last;

    private Ticks(double step, int first, int last) {
        this.step = step;
        this.first = first;
        this.last = last;
    }

    /** Ticks from at or below {@code low} to at or above {@code high}. */
    static Ticks covering(double low, double high, int most) {
        double step = step(low, high, most);
        while (count(low, high, step) > most) {
            step = next(step);
        }
        return new Ticks(step, floor(low / step), -floor(-high / step));
    }

    /** Ticks inside [low, high]. */
    static Ticks within(double low, double high, int most) {
        double step = step(low, high, most);
        return new Ticks(step, -floor(-low / step), floor(high / step));
    }

    private static double step(double low, double high, int most) {
        double span = Math.max(high - low, 1e-9);
        double step = Math.pow(10, Math.floor(Math.log10(span / most)));
        while (span / step > most - 1) {
            step = next(step);
        }
        return step;
    }

    private static int count(double low, double high, double step) {
        return -floor(-high / step) - floor(low / step) + 1;
    }

    // a value within rounding of a tick is that tick
    private static int floor(double value) {
        return (int) Math.floor(value + 1e-9);
    }

    private static double next(double step) {
        double power = Math.pow(10, Math.floor(Math.log10(step) + 1e-9));
        double lead = Math.rint(step / power);
        return lead < 2 ? 2 * power : lead < 5 ? 5 * power : 10 * power;
    }

    int count() {
        return Math.max(0, last - first + 1);
    }

    double at(int i) {
        return (first + i) * step;
    }

    double low() {
        return first * step;
    }

    double high() {
        return last * step;
    }

    double step() {
        return step;
    }

    /** A tick as text, with the decimals that its step needs. */
    String label(int i) {
        int decimals = 0;
        double power = 1;
        while (decimals < 4 && step * power < 1 - 1e-9) {
            power *= 10;
            decimals++;
        }
        return Numbers.fixed(at(i), decimals);
    }
}
