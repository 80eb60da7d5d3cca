package counterpull.engine.strength;

/**
 * The standard normal distribution, to about 14 digits everywhere, its far tails included.
 *
 * <p>Within 2 of the middle by the series P(x) = ½ + Z(x)(x + x³/3 + x⁵/15 + …), beyond by the continued fraction
 * Q(x) = Z(x)/(x + 1/(x + 2/(x + …))) (Abramowitz and Stegun 1964, 26.2.11 and 26.2.14; from memory). A ratio of two
 * tails is taken from the fraction and never by dividing one small number by another.
 */
final class StandardNormal {
    private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);
    /** From here on the fraction is used; its terms are then enough for every digit. */
    private static final double TAIL = 2;

    private static final int TERMS = 100;

    private StandardNormal() {}

    /** Share of the distribution below x. */
    static double below(double x) {
        if (x > TAIL) {
            return 1 - below(-x);
        }
        return x < -TAIL ? density(x) / (beyond(-x) - x) : 0.5 + middle(x);
    }

    /** Density at x over the share above x: near 0 far below the middle, a little above x far above it. */
    static double hazard(double x) {
        return x > TAIL ? x + beyond(x) : density(x) / below(-x);
    }

    /** Mean distance above x of what lies above x: {@link #hazard} − x, above 0, without the loss of digits. */
    static double beyond(double x) {
        if (x <= TAIL) {
            return hazard(x) - x;
        }
        double fraction = x;
        for (int i = TERMS; i >= 2; i--) {
            fraction = x + i / fraction;
        }
        return 1 / fraction;
    }

    private static double density(double x) {
        return Math.exp(-x * x / 2) / ROOT_TWO_PI;
    }

    /** Share between 0 and x, negative below 0. */
    private static double middle(double x) {
        double term = x;
        double sum = x;
        for (int i = 3; Math.abs(term) > 1e-17 * Math.abs(sum); i += 2) {
            term *= x * x / i;
            sum += term;
        }
        return sum * density(x);
    }
}
