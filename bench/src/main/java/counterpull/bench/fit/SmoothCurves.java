package counterpull.bench.fit;

import counterpull.bench.Estimate;
import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import java.util.ArrayList;
import java.util.List;

/**
 * Smooth curves of which nobody knows the formula, through readings each of which shows a weighted sum of them (mean + half difference on
 * the way up, mean − half difference on the way down).
 *
 * <p>Model: each curve is a polynomial of low degree plus a Gaussian process with the covariance r²σ² exp(−(x − x′)²/2ℓ²);
 * readings have independent normal errors σ. The polynomials have no prior, σ is integrated out (or stated), and sizes r and
 * width ℓ are summed over a grid, each weighed by how likely it makes the readings. Intervals: t (normal where σ is stated) about the mean of
 * all of them. Source: Rasmussen & Williams 2006, Gaussian Processes for Machine Learning, equations 2.41–2.45 and 4.17, the grid as
 * in their 5.2 (from memory); ours: the grid, and one t for the mixture.
 */
public final class SmoothCurves {
    /** Sizes r as multiples of the noise of one reading. */
    private static final double[] SIZES = {0, 0.5, 1, 2, 4, 8, 16, 32, 64, 128, 256};

    /** Settings this much less likely than the best say nothing. */
    private static final double NEGLIGIBLE = -9;

    private final SmoothScale scale;
    private final double degreesOfFreedom;
    private final List<SmoothFit> fits = new ArrayList<>();
    private final double[] weight;
    private final boolean stated;

    /**
     * What was read at one place, in the mean of so many repeats.
     *
     * @param at position
     * @param weights what it shows of each curve
     * @param value mean of the repeats
     * @param times how many repeats, 1 or more
     */
    public record Sight(double at, double[] weights, double value, int times) {}

    private SmoothCurves(SmoothScale scale, double degreesOfFreedom, List<SmoothFit> all) {
        this.scale = scale;
        this.degreesOfFreedom = degreesOfFreedom;
        stated = degreesOfFreedom == Double.POSITIVE_INFINITY;
        double best = Double.NEGATIVE_INFINITY;
        for (SmoothFit fit : all) {
            best = Math.max(best, fit.likelihood());
        }
        double sum = 0;
        for (SmoothFit fit : all) {
            if (fit.likelihood() - best > NEGLIGIBLE) {
                fits.add(fit);
                sum += Math.exp(fit.likelihood() - best);
            }
        }
        weight = new double[fits.size()];
        for (int i = 0; i < weight.length; i++) {
            weight[i] = Math.exp(fits.get(i).likelihood() - best) / sum;
        }
    }

    /**
     * Curves through readings; refused where the readings are too few to see their own scatter and none is stated.
     *
     * @param sights what was read, repeats at one place already in their mean
     * @param expected what is expected before anything was read
     * @param repeats what the repeats scatter about their means
     * @param noise stated, or from the scatter
     */
    public static SmoothCurves of(List<Sight> sights, Expected expected, Repeats repeats, Noise noise) {
        Bend[] bends = expected.bends().toArray(new Bend[0]);
        int[] degrees = new int[bends.length];
        for (int i = 0; i < degrees.length; i++) {
            degrees[i] = bends[i].degree();
        }
        SmoothScale scale = SmoothScale.of(sights, degrees);
        int left = sights.size() - scale.fixed() + repeats.degreesOfFreedom();
        boolean stated = noise instanceof Noise.Stated;
        if (left < 1 && !stated || sights.size() < scale.fixed()) {
            throw new Refusal(
                    Fault.OUTSIDE_LIMITS,
                    "readings",
                    sights.size(),
                    scale.fixed() + 1.0,
                    "",
                    "there are too few readings for a curve with a band: read at more positions, or more often at each");
        }
        List<SmoothFit> all = new ArrayList<>();
        for (double width : expected.widths()) {
            sized(
                    all,
                    new SmoothSetting(new SmoothKernel(scale, width), new double[degrees.length], bends),
                    0,
                    repeats,
                    noise);
        }
        return new SmoothCurves(scale, stated ? Double.POSITIVE_INFINITY : left, all);
    }

    private static void sized(List<SmoothFit> all, SmoothSetting setting, int curve, Repeats repeats, Noise noise) {
        if (curve == setting.sizes().length) {
            all.add(SmoothFit.of(setting, repeats, noise));
            return;
        }
        for (double size : SIZES) {
            sized(all, setting.with(curve, size), curve + 1, repeats, noise);
        }
    }

    /**
     * What is expected of all curves before anything was read.
     *
     * @param bends of each curve
     * @param widths ℓ to be tried, as multiples of half the range of positions
     */
    public record Expected(List<Bend> bends, List<Double> widths) {
        public Expected {
            bends = List.copyOf(bends);
            widths = List.copyOf(widths);
        }
    }

    /**
     * What is expected of a curve before anything was read.
     *
     * @param degree of the polynomial that nothing is expected of, 0, 1 or 2
     * @param size how far it may well bend away from that polynomial, one standard deviation, in the readings' unit
     */
    public record Bend(int degree, double size) {}

    /**
     * How the repeats at each place scatter about their means.
     *
     * @param sumOfSquares Σ of their squared differences from their means
     * @param degreesOfFreedom readings less places
     */
    public record Repeats(double sumOfSquares, int degreesOfFreedom) {}

    /** A weighted sum of the curves at a position inside the readings, with its 95 % interval. */
    public Estimate value(double at, double... weights) {
        return estimate(new SmoothScale.Look(at, weights, 0));
    }

    /** The slope by position of a weighted sum of the curves. */
    public Estimate slope(double at, double... weights) {
        return estimate(new SmoothScale.Look(at, weights, 1));
    }

    private Estimate estimate(SmoothScale.Look look) {
        double mean = 0;
        double square = 0;
        double log = 0;
        double logSquare = 0;
        double[] row = scale.row(look);
        SmoothKernel kernel = null;
        double[] from = null;
        for (int i = 0; i < weight.length; i++) {
            if (fits.get(i).kernel() != kernel) {
                kernel = fits.get(i).kernel();
                from = kernel.from(look);
            }
            double[] seen = fits.get(i).look(look, row, from);
            double size = Math.log(Math.max(fits.get(i).variance(), 1e-300));
            mean += weight[i] * seen[0];
            square += weight[i] * (seen[1] + seen[0] * seen[0]);
            log += weight[i] * size;
            logSquare += weight[i] * size * size;
        }
        double sd = Math.sqrt(Math.max(0, square - mean * mean));
        double per = look.order() == 0 ? 1 : 1 / scale.half();
        return Estimate.student(mean, sd, degrees(Math.max(0, logSquare - log * log)))
                .times(per);
    }

    /** A noise that the settings do not agree on is known less well: 2/ν is about the variance of the
     * logarithm of σ². A part of it counts, for the settings' curves differ too (ours; held to 93 to 97 % by simulation). */
    private double degrees(double disagreement) {
        double inverse = 1 / degreesOfFreedom + (stated ? 0 : disagreement / 5);
        return inverse > 0 ? 1 / inverse : Double.POSITIVE_INFINITY;
    }

    /** One standard deviation of one reading. */
    public double noise() {
        double square = 0;
        for (int i = 0; i < weight.length; i++) {
            square += weight[i] * fits.get(i).variance();
        }
        return Math.sqrt(square);
    }
}
