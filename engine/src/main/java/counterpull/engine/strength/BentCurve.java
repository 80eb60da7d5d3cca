package counterpull.engine.strength;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A curve bent by the person's own tests: held = given curve × exp(m(angle)), m the posterior mean of the log ratio
 * test / curve.
 *
 * <p>The log ratio is a Gaussian process, its covariance {@link BendAssumptions}, each test's noise on the diagonal;
 * the posterior is the textbook one, m = kᵀ (K + N)⁻¹ y and variance k(x,x) − kᵀ (K + N)⁻¹ k (Rasmussen and Williams
 * 2006, equations 2.25 and 2.26; from memory). No test: the given curve and its band. A test narrows the band, most
 * near its own angle, and widens it nowhere.
 *
 * <p>Ours differs: m never goes past the largest or the smallest of the tested log ratios and 0, because a smooth
 * process can overshoot a little between tests; and a test outside the given curve's angles extends the angles to
 * itself, since the person was measured there. Beyond its own angles the given curve is carried on level from its
 * end: the tail of its formula would call a person weak where nobody was measured. A test where the given curve is
 * below 15 % of its peak is refused: a ratio to a tail says nothing.
 */
public final class BentCurve implements StrengthCurve {
    private final StrengthCurve given;
    private final Spread spread;
    private final List<IsometricTest> tests;
    private final Cholesky cholesky;
    private final double[] at;
    private final double[] shapeSd;
    private final double[] weights;
    private final double lowest;
    private final double highest;
    private final AngleRange angles;
    private final double peak;

    private BentCurve(StrengthCurve given, BendAssumptions assumptions, List<IsometricTest> tests) {
        this.given = given;
        spread = new Spread(given, assumptions);
        this.tests = inOrder(tests);
        at = new double[tests.size()];
        shapeSd = new double[tests.size()];
        for (int i = 0; i < at.length; i++) {
            at[i] = this.tests.get(i).angle();
            shapeSd[i] = spread.shapeSd(at[i]);
        }
        cholesky = new Cholesky(covarianceOfTests());
        double[] logRatios = logRatios();
        weights = cholesky.solve(logRatios);
        lowest = extreme(logRatios, -1);
        highest = extreme(logRatios, 1);
        angles = reachedAngles();
        peak = Peak.of(this::held, angles);
    }

    /** A published curve bent by tests, with the curve's own assumptions; the order of tests does not matter. */
    public static BentCurve of(Prior given, List<IsometricTest> tests) {
        return new BentCurve(given, given.assumptions(), tests);
    }

    /** Any curve bent by tests, with stated assumptions. */
    public static BentCurve of(StrengthCurve given, BendAssumptions assumptions, List<IsometricTest> tests) {
        return new BentCurve(given, assumptions, tests);
    }

    /** A fixed order, so that the same tests give the same last digit. */
    private static List<IsometricTest> inOrder(List<IsometricTest> tests) {
        List<IsometricTest> ordered = new ArrayList<>(tests);
        ordered.sort(Comparator.comparingDouble(IsometricTest::angle)
                .thenComparingDouble(IsometricTest::torque)
                .thenComparingDouble(IsometricTest::relativeSd));
        return List.copyOf(ordered);
    }

    private double[][] covarianceOfTests() {
        double[][] matrix = new double[at.length][];
        for (int i = 0; i < at.length; i++) {
            matrix[i] = toTests(at[i]);
            // Rounding in a matrix of nearly equal rows is near 1e-17; 1e-12 keeps its root real and moves no torque by
            // 1e-6.
            matrix[i][i] += Math.max(1e-12, tests.get(i).logVariance());
        }
        return matrix;
    }

    private double[] logRatios() {
        double[] ratios = new double[at.length];
        for (int i = 0; i < at.length; i++) {
            ratios[i] = Math.log(tests.get(i).torque() / trusted(at[i]));
        }
        return ratios;
    }

    private double trusted(double angle) {
        double torque = spread.level(angle);
        double least = KNOWN_SHARE_OF_PEAK * given.peak();
        if (torque < least) {
            String sentence =
                    "a strength test at " + Math.round(Math.toDegrees(angle)) + "° lies where the curve it would bend"
                            + " is below 15 % of its peak and is no guide: test nearer to the middle of the range";
            throw new Refusal(
                    Fault.OUTSIDE_PUBLISHED_RANGE,
                    "published strength at the test's angle",
                    torque,
                    least,
                    "N·m",
                    sentence);
        }
        return torque;
    }

    private static double extreme(double[] logRatios, int sense) {
        double most = 0;
        for (double ratio : logRatios) {
            most = Math.max(most, sense * ratio);
        }
        return sense * most;
    }

    private AngleRange reachedAngles() {
        AngleRange range = given.angles();
        for (double angle : at) {
            range = range.reaching(angle);
        }
        return range;
    }

    @Override
    public double held(double angle) {
        return spread.level(angle) * Math.exp(bend(angle));
    }

    /** The posterior mean of the log ratio to the given curve at an angle (rad). */
    public double bend(double angle) {
        double here = spread.shapeSd(angle);
        double sum = 0;
        for (int i = 0; i < at.length; i++) {
            sum += weights[i] * spread.covariance(angle - at[i], here, shapeSd[i]);
        }
        return Math.max(lowest, Math.min(highest, sum));
    }

    @Override
    public double logCovariance(double angle, double other) {
        double[] here = cholesky.forward(toTests(angle));
        double[] there = cholesky.forward(toTests(other));
        double covariance = spread.covariance(angle, other);
        for (int i = 0; i < at.length; i++) {
            covariance -= here[i] * there[i];
        }
        return covariance;
    }

    private double[] toTests(double angle) {
        double here = spread.shapeSd(angle);
        double[] row = new double[at.length];
        for (int i = 0; i < at.length; i++) {
            row[i] = spread.covariance(angle - at[i], here, shapeSd[i]);
        }
        return row;
    }

    /** The curve before the tests. */
    public StrengthCurve given() {
        return given;
    }

    /** The tests, by angle. */
    public List<IsometricTest> tests() {
        return tests;
    }

    @Override
    public AngleRange angles() {
        return angles;
    }

    @Override
    public double peak() {
        return peak;
    }

    @Override
    public SpeedLaw speedLaw() {
        return given.speedLaw();
    }

    @Override
    public String source() {
        String count = tests.size() == 1 ? "one strength test" : tests.size() + " strength tests";
        return tests.isEmpty() ? given.source() : count + " of this person, between and beyond them: " + given.source();
    }
}
