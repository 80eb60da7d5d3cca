package counterpull.engine.strength;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.strength.IsometricTest.Meaning;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A curve bent by the person's own tests: held = given curve × exp(m(angle)), m the posterior mean of the log ratio
 * test / curve.
 *
 * <p>The log ratio is a Gaussian process, its covariance {@link BendAssumptions}, each test's noise on the diagonal
 * (Rasmussen and Williams 2006, equations 2.25 and 2.26; from memory). No test: the given curve and its band. A test
 * that was reached narrows the band, most near its own angle, and widens it nowhere.
 *
 * <p>A test that was stopped ({@link IsometricTest.Meaning#AT_LEAST}) is a floor: a log ratio below it is as improbable
 * as it would be had the test been reached, one above it is weighed by 1. That is the most that can be said for each
 * log ratio when all that is known of the effort is that it was no greater: the likelihood of the reading, greatest over
 * the effort. So a floor raises the mean at its own angle or leaves it, pulls no harder than a test that was reached,
 * and does nothing far below what is believed. The band is nowhere wider than with the reached tests alone; but one
 * floor more among other floors, or a reached test among floors, can widen it a little, since it lifts belief off an
 * edge. The usual one-sided weight, the normal distribution's Φ((f − y)/sd), takes every effort below the greatest as
 * equally likely. People stop near their greatest, so readings that came out high by chance then pass for strength: with
 * several floors the band lies above the truth too often.
 *
 * <p>How near: one floor among any number of reached tests is exact. Several floors are matched one by one ({@link
 * FloorSites}): against numerical integration the mean is off by less than a twentieth of the band's standard deviation,
 * and that is too small by a few percent, by up to a quarter where several floors stand close together and far above what
 * else is believed. So a floor added among other floors can lower its own angle by a hundredth of that deviation.
 *
 * <p>Ours differs: m never goes past the largest or the smallest of the reached log ratios and 0, because a smooth
 * process can overshoot a little between tests (the price: where the given torque is a small share of its peak and sure
 * tests lie elsewhere, the 95 % band holds the truth some points less often; simulated, 89 % at 11° of knee flexion with
 * five tests of 5 %); floors raise the largest to what is believed at a floor's own angle,
 * counted as the mean without floors, as far as that bound, and what the floors add to it. A test that was reached
 * outside the given curve's angles extends the angles to itself, since the person was measured there; a floor does not,
 * since nobody knows what they have there. Beyond its own angles the given curve is carried on level from its end: the
 * tail of its formula would call a person weak where nobody was measured. A test where the given curve is below 15 % of
 * its peak is refused: a ratio to a tail says nothing.
 */
public final class BentCurve implements StrengthCurve {
    private final StrengthCurve given;
    private final Spread spread;
    private final List<IsometricTest> tests;
    private final Posterior posterior;
    private final double lowest;
    private final double highest;
    private final AngleRange angles;
    private final double peak;

    private BentCurve(StrengthCurve given, BendAssumptions assumptions, List<IsometricTest> tests) {
        this.given = given;
        spread = new Spread(given, assumptions);
        this.tests = inOrder(tests);
        List<LogReading> reached = readings(Meaning.REACHED);
        List<LogReading> floors = readings(Meaning.AT_LEAST);
        Posterior alone = new Posterior(spread, reached);
        posterior = floors.isEmpty() ? alone : withFloors(alone, reached, floors);
        lowest = extreme(reached, -1);
        highest = raised(extreme(reached, 1), alone, floors);
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
                .thenComparingDouble(IsometricTest::relativeSd)
                .thenComparing(IsometricTest::meaning));
        return List.copyOf(ordered);
    }

    private List<LogReading> readings(Meaning meaning) {
        List<LogReading> readings = new ArrayList<>();
        for (IsometricTest test : tests) {
            if (test.meaning() == meaning) {
                readings.add(LogReading.of(test, trusted(test.angle())));
            }
        }
        return readings;
    }

    private Posterior withFloors(Posterior alone, List<LogReading> reached, List<LogReading> floors) {
        List<LogReading> all = new ArrayList<>(reached);
        all.addAll(FloorSites.inPlaceOf(floors, alone));
        return new Posterior(spread, all);
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

    private static double extreme(List<LogReading> readings, int sense) {
        double most = 0;
        for (LogReading reading : readings) {
            most = Math.max(most, sense * reading.value());
        }
        return sense * most;
    }

    /** The upper bound, raised to what is believed at the angles of floors. */
    private double raised(double bound, Posterior alone, List<LogReading> floors) {
        double most = bound;
        for (LogReading floor : floors) {
            double before = alone.mean(floor.angle());
            double added = posterior.mean(floor.angle()) - before;
            most = Math.max(most, Math.min(bound, before) + added);
        }
        return most;
    }

    private AngleRange reachedAngles() {
        AngleRange range = given.angles();
        for (IsometricTest test : tests) {
            range = test.meaning() == Meaning.REACHED ? range.reaching(test.angle()) : range;
        }
        return range;
    }

    @Override
    public double held(double angle) {
        double level = spread.level(angle);
        return level * Math.exp(bounded(posterior.mean(angle, spread.shapeSdWhere(level))));
    }

    /** The posterior mean of the log ratio to the given curve at an angle (rad). */
    public double bend(double angle) {
        return bounded(posterior.mean(angle));
    }

    private double bounded(double mean) {
        return Math.max(lowest, Math.min(highest, mean));
    }

    @Override
    public double logCovariance(double angle, double other) {
        return posterior.covariance(angle, other);
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
        return tests.isEmpty()
                ? given.source()
                : count() + " of this person, between and beyond them: " + given.source();
    }

    private String count() {
        int floors = 0;
        for (IsometricTest test : tests) {
            floors += test.meaning() == Meaning.AT_LEAST ? 1 : 0;
        }
        int reached = tests.size() - floors;
        String tested = reached == 1 ? "one strength test" : reached + " strength tests";
        String stopped = floors == 1 ? "one floor (a test stopped early)" : floors + " floors (tests stopped early)";
        if (floors == 0) {
            return tested;
        }
        return reached == 0 ? stopped : tested + " and " + stopped;
    }
}
