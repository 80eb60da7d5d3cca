package counterpull.bench.repetitions;

/**
 * The standard normal distribution, to 15 digits (a small tail to eight of its own) and fast: rational functions of Hart 1968, algorithm 5666, and beyond 7 its continued
 * fraction; coefficients from memory, held to a library's error function by a test.
 */
final class Normal {
    private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);
    private static final double TAIL = 7.07106781186547;
    private static final double[] UPPER = {
        3.52624965998911e-2,
        0.700383064443688,
        6.37396220353165,
        33.912866078383,
        112.079291497871,
        221.213596169931,
        220.206867912376
    };
    private static final double[] LOWER = {
        8.83883476483184e-2,
        1.75566716318264,
        16.064177579207,
        86.7807322029461,
        296.564248779674,
        637.333633378831,
        793.826512519948,
        440.413735824752
    };

    private Normal() {}

    static double density(double z) {
        return Math.exp(-z * z / 2) / ROOT_TWO_PI;
    }

    static double below(double z) {
        double away = Math.abs(z);
        double bell = Math.exp(-z * z / 2);
        double beyond = away < TAIL
                ? bell * polynomial(UPPER, away) / polynomial(LOWER, away)
                : bell / (fraction(away) * ROOT_TWO_PI);
        return z > 0 ? 1 - beyond : beyond;
    }

    private static double polynomial(double[] coefficients, double x) {
        double sum = 0;
        for (double coefficient : coefficients) {
            sum = sum * x + coefficient;
        }
        return sum;
    }

    private static double fraction(double x) {
        double build = x;
        for (int i = 20; i >= 1; i--) {
            build = x + i / build;
        }
        return build;
    }
}
