package counterpull.engine.motion;

/**
 * A quantity that depends on the driving coordinate, with its first two derivatives by it.
 *
 * @param value the quantity
 * @param first its first derivative
 * @param second its second derivative
 */
record Jet(double value, double first, double second) {
    static Jet constant(double value) {
        return new Jet(value, 0, 0);
    }

    /** A straight line in the driving coordinate. */
    static Jet line(double start, double perUnit, double at) {
        return new Jet(start + perUnit * at, perUnit, 0);
    }

    Jet plus(Jet other) {
        return new Jet(value + other.value, first + other.first, second + other.second);
    }

    Jet times(double factor) {
        return new Jet(value * factor, first * factor, second * factor);
    }

    Jet minus(Jet other) {
        return plus(other.times(-1));
    }
}
