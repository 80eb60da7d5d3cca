package counterpull.engine.uncertainty;

import counterpull.engine.Require;
import counterpull.engine.body.Joint;
import counterpull.engine.motion.JointRanges;
import counterpull.engine.planar.Angles;
import counterpull.engine.strength.CurveDraws;
import counterpull.engine.strength.StrengthCurve;
import counterpull.engine.strength.Tester;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Which reading would shrink the uncertainty of the largest effort most.
 *
 * <p>To first order the logarithm of the largest effort is Σ slope·z over what is not known. A test of log strength v(x) at angle x with
 * noise variance n takes cov(effort, v(x))²/(var v(x) + n) from its variance, cov = Σ slope_k ℓ_k(x), whatever the test shows: at a
 * hardest place s limited by that action this is k(s, x)²/(k(x, x) + n) (Rasmussen and Williams 2006, equation 2.26; from memory). A second,
 * independent reading as good as the first halves a variance.
 */
public final class NextReadings {
    private static final double STEP = Angles.radians(5);
    private static final double LEAST_GAIN = 0.005;
    /** A test that takes nearly as much and is nearer to the hardest place is the plainer one to ask for. */
    private static final double AS_GOOD = 0.98;

    private static final double TOUCH = 1e-9;

    private final Contributions contributions;
    private final Tester tester;
    private final Limits limits;

    private NextReadings(Contributions contributions, Tester tester, Limits limits) {
        this.contributions = contributions;
        this.tester = tester;
        this.limits = limits;
    }

    /** The limits of a limb's joints that a test has to keep. */
    public interface Limits {
        /** Between which angles a test of a contribution may be taken, rad; infinite where not stated. */
        Require.Limits of(Again.Test test);
    }

    /**
     * The readings worth taking, the best first; one for each input.
     *
     * @param doubts whose joints' own limits a test keeps
     * @param contributions what contributes now
     * @param tester what strength would be tested with
     */
    public static <T extends Trial<T>> List<NextReading> of(
            Doubts<T> doubts, Contributions contributions, Tester tester) {
        return new NextReadings(contributions, tester, test -> limits(doubts.nominal(), test)).ranked();
    }

    private static <T extends Trial<T>> Require.Limits limits(T trial, Again.Test test) {
        for (int k = 0; k < trial.limits().size(); k++) {
            if (trial.person().limbs().get(k).side() == test.side()) {
                return limits(trial.limits().get(k), test);
            }
        }
        throw new IllegalArgumentException("no " + test.side().words() + " limb takes part");
    }

    private static Require.Limits limits(JointRanges ranges, Again.Test test) {
        for (Joint joint : Joint.values()) {
            if (joint.action() == test.action() || joint.opposite() == test.action()) {
                return ranges.of(joint);
            }
        }
        throw new IllegalArgumentException("no joint does " + test.action().words());
    }

    private List<NextReading> ranked() {
        List<NextReading> found = new ArrayList<>();
        double before = contributions.total();
        for (Contribution one : contributions.ranked()) {
            Gain gain = gain(one);
            double left = before * before - gain.variance;
            NextReading reading = new NextReading(gain.what, before, Math.sqrt(Math.max(0, left)));
            if (gain.variance > LEAST_GAIN * before * before) {
                found.add(reading);
            }
        }
        found.sort(Comparator.comparingDouble(NextReading::after));
        return found;
    }

    private record Gain(NextReading.What what, double variance) {}

    private Gain gain(Contribution one) {
        if (one.again() instanceof Again.Test test) {
            return best(one, test);
        }
        if (one.again() instanceof Again.Reading reading) {
            double left = reading.remaining() * reading.remaining();
            return new Gain(new NextReading.Measure(reading.words()), one.variance() * (1 - left));
        }
        return new Gain(new NextReading.Measure(""), 0);
    }

    private Gain best(Contribution one, Again.Test test) {
        StrengthCurve curve = test.draws().given();
        Require.Limits own = limits.of(test);
        double low = Math.max(curve.angles().low(), own.low());
        double high = Math.min(curve.angles().high(), own.high());
        double most = 0;
        for (int step = first(low); step * STEP <= high + TOUCH; step++) {
            most = Math.max(most, gain(one, test, step * STEP));
        }
        double at = Double.NaN;
        double hardest = contributions.hardest().angle();
        for (int step = first(low); step * STEP <= high + TOUCH; step++) {
            double angle = step * STEP;
            boolean good = gain(one, test, angle) >= AS_GOOD * most;
            at = good && !(Math.abs(angle - hardest) >= Math.abs(at - hardest)) ? angle : at;
        }
        double gain = Double.isNaN(at) ? 0 : gain(one, test, at);
        return new Gain(new NextReading.Test(test.side(), test.action(), at), gain);
    }

    private static int first(double low) {
        return (int) Math.ceil(low / STEP - TOUCH);
    }

    /** What a test at an angle (rad) takes from the variance. */
    private double gain(Contribution one, Again.Test test, double angle) {
        if (!test.draws().given().known(angle, 0)) {
            return 0;
        }
        CurveDraws draws = test.draws();
        double together = 0;
        double alone = 0;
        for (int k = 0; k < draws.dimensions(); k++) {
            double column = draws.column(k, angle);
            together += one.slopes().get(k) * column;
            alone += column * column;
        }
        double noise = tester.relativeSd(test.action());
        return together * together / (alone + Math.log(1 + noise * noise));
    }
}
