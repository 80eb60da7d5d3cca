package counterpull.bench.tubing;

import counterpull.bench.Estimate;
import counterpull.bench.fit.Fit;
import counterpull.bench.fit.Model;
import counterpull.bench.fit.Noise;
import counterpull.bench.fit.Regression;
import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** One closed law laid through a sample; the natural length is its last parameter, known beforehand by the tape. */
final class ClosedFit implements CurveFit {
    private static final int TRIAL_STEPS = 80;

    /** From the fit of all readings to that without one it is never far. */
    private static final int STEPS_WITHOUT_ONE = 15;

    /** Fits whose parameters differ by less than this share are one and the same. */
    private static final double SAME = 1e-3;

    private static final int NEAR = 7;
    private static final double NEAR_STEP = 0.45;
    private static final double FAR_STEP = 1.5;
    private static final double HELD = 1e-7;

    final Shape shape;
    final Sample sample;
    final Fit fit;
    private final List<Fit> rivals;
    private final int last;

    private ClosedFit(Shape shape, Sample sample, Fit fit, List<Fit> rivals) {
        this.shape = shape;
        this.sample = sample;
        this.fit = fit;
        this.rivals = rivals;
        last = shape.parameters();
    }

    /** The best fit from several places to begin; a refusal says why there is none. */
    static ClosedFit of(Shape shape, Sample sample, double noiseGuess) {
        List<double[]> starts = shape.starts(sample);
        if (starts.size() == 1) {
            return from(shape, sample, withNatural(starts.get(0), sample), List.of());
        }
        List<Fit> trials = trials(shape, sample, starts, noiseGuess);
        Fit best = trials.get(0);
        List<Fit> rivals = new ArrayList<>();
        for (Fit trial : trials) {
            boolean another = apart(trial, best) && rivals.stream().allMatch(rival -> apart(trial, rival));
            if (shape.misfit(trial).isEmpty() && another) {
                rivals.add(trial);
            }
        }
        ClosedFit found = from(shape, sample, best.parameters(), rivals);
        return shape.bent() < 0 ? found : found.laidOut();
    }

    /**
     * The bent parameter held at one place after another, the others fitted: an interval is then the union of what each place allows, which
     * is that of the profile likelihood and keeps its 95 % where slopes alone do not.
     */
    private ClosedFit laidOut() {
        int bent = shape.bent();
        List<Fit> places = new ArrayList<>();
        around(fit, places);
        rivals.forEach(rival -> around(rival, places));
        for (double far = OgdenShape.LOWEST; far <= OgdenShape.HIGHEST; far += FAR_STEP) {
            place(far, places);
        }
        places.sort(Comparator.comparingDouble(each -> each.parameters()[bent]));
        return new ClosedFit(shape, sample, fit, places);
    }

    /** Close together about each place where a fit settled: another of its kind can be as narrow as the best. */
    private void around(Fit settled, List<Fit> places) {
        double error = settled.estimate(shape.bent()).standardError();
        for (int k = -NEAR; k <= NEAR; k++) {
            place(settled.parameters()[shape.bent()] + k * NEAR_STEP * error, places);
        }
    }

    private void place(double value, List<Fit> places) {
        if (!(value >= OgdenShape.LOWEST && value <= OgdenShape.HIGHEST)) {
            return;
        }
        double[] start = fit.parameters();
        start[shape.bent()] = value;
        try {
            places.add(regression(shape, sample.as(new Noise.Stated(Math.max(noise(), 1e-12))), start)
                    .known(shape.bent(), value, HELD)
                    .within(STEPS_WITHOUT_ONE)
                    .fit());
        } catch (Refusal nothingThere) {
            return;
        }
    }

    private static boolean apart(Fit one, Fit other) {
        double[] a = one.parameters();
        double[] b = other.parameters();
        for (int i = 0; i < a.length; i++) {
            if (Math.abs(a[i] - b[i]) > SAME * (Math.abs(a[i]) + Math.abs(b[i]))) {
                return true;
            }
        }
        return false;
    }

    /** Best first; those that cannot be used last. */
    private static List<Fit> trials(Shape shape, Sample sample, List<double[]> starts, double noise) {
        List<Fit> found = new ArrayList<>();
        Refusal why = null;
        Sample known = sample.stated() ? sample : sample.as(new Noise.Stated(noise));
        for (double[] start : starts) {
            try {
                found.add(regression(shape, known, withNatural(start, sample))
                        .within(TRIAL_STEPS)
                        .fit());
            } catch (Refusal refused) {
                why = refused;
            }
        }
        if (found.isEmpty()) {
            throw why == null ? refusal("no exponents of the grid serve with a positive stiffness each") : why;
        }
        found.sort(Comparator.comparing((Fit fit) -> !shape.misfit(fit).isEmpty())
                .thenComparingDouble(fit -> deviance(fit, sample)));
        return found;
    }

    private static double deviance(Fit fit, Sample sample) {
        double[] at = fit.parameters();
        double gap = (at[at.length - 1] - sample.natural) / sample.naturalSd;
        return fit.sumOfSquares() + gap * gap * fit.noise() * fit.noise();
    }

    private static Refusal refusal(String why) {
        return new Refusal(Fault.OUTSIDE_LIMITS, "law", Double.NaN, Double.NaN, "", why);
    }

    private static double[] withNatural(double[] start, Sample sample) {
        double[] at = Arrays.copyOf(start, start.length + 1);
        at[start.length] = sample.natural;
        return at;
    }

    private static ClosedFit from(Shape shape, Sample sample, double[] begin, List<Fit> rivals) {
        Fit fit = regression(shape, sample, begin).fit();
        String misfit = shape.misfit(fit);
        if (!misfit.isEmpty()) {
            throw refusal(misfit);
        }
        return new ClosedFit(shape, sample, fit, rivals);
    }

    private static Regression regression(Shape shape, Sample sample, double[] begin) {
        Regression regression = Regression.of(new Pulling(shape, sample), sample.forces, begin, sample.noise)
                .spread(sample.spreads)
                .known(shape.parameters(), sample.natural, sample.naturalSd);
        for (int k = 0; k < shape.parameters(); k++) {
            regression = shape.notNegative(k) ? regression.atLeast(k, 0) : regression;
        }
        return regression;
    }

    private record Pulling(Shape shape, Sample sample) implements Model {
        @Override
        public double at(double[] at, int reading) {
            return shape.force(at, sample.lengths[reading] / at[shape.parameters()]);
        }

        @Override
        public boolean slopes(double[] at, int reading, double[] into) {
            double natural = at[shape.parameters()];
            double stretch = sample.lengths[reading] / natural;
            shape.slopes(at, stretch, into);
            into[shape.parameters()] = -shape.rise(at, stretch) * stretch / natural;
            return true;
        }
    }

    @Override
    public Estimate natural() {
        return constant(at -> at[last]);
    }

    /** One of the law's parameters, inside its limit. */
    Estimate constant(int parameter) {
        Estimate free = constant(at -> at[parameter]);
        return shape.notNegative(parameter)
                ? new Estimate(
                        free.value(),
                        free.standardError(),
                        Math.max(0, free.low()),
                        Math.max(0, free.high()),
                        fit.estimate(parameter).standing())
                : free;
    }

    private Fit fit() {
        return fit;
    }

    /** How much worse another fit serves, in variances of the noise. */
    private double worse(Fit rival) {
        return Math.max(0, (deviance(rival, sample) - deviance(fit, sample)) / (fit.noise() * fit.noise()));
    }

    /** A number that follows from the law's parameters, over every way of fitting that the readings allow. */
    Estimate constant(ToDoubleFunction<double[]> function) {
        Estimate own = fit.freely(function);
        double low = shape.bent() < 0 ? own.low() : own.value();
        double high = shape.bent() < 0 ? own.high() : own.value();
        double quantile = fit.quantile();
        // standard errors that make the half width: of what the tape knows fewer than of what few readings show
        double wide = own.standardError() > 0 ? own.halfWidth() / own.standardError() : quantile;
        Rival before = null;
        for (Fit fit : rivals) {
            Rival rival = new Rival(fit.freely(function), worse(fit));
            double width = wide * fit().noise() / fit.noise();
            low = Math.min(low, rival.low(quantile, width));
            high = Math.max(high, rival.high(quantile, width));
            if (before != null && shape.bent() >= 0) {
                double edge = before.edge(rival, quantile);
                low = Math.min(low, Double.isNaN(edge) ? low : edge);
                high = Math.max(high, Double.isNaN(edge) ? high : edge);
            }
            before = rival;
        }
        low = own.value() - shape.wider() * (own.value() - low);
        high = own.value() + shape.wider() * (high - own.value());
        double error = Math.max(own.standardError(), (high - low) / (2 * quantile));
        return new Estimate(own.value(), error, low, high, own.standing());
    }

    private double force(double[] at, double length) {
        return shape.force(at, length / at[last]);
    }

    /** Force at a length, N; below natural length less than none. */
    double at(double length) {
        return force(fit.parameters(), length);
    }

    @Override
    public Estimate force(double length) {
        return Forces.notNegative(constant(at -> force(at, length)));
    }

    @Override
    public Estimate of(double[] lengths, ToDoubleFunction<double[]> forces) {
        return constant(at -> {
            double[] each = new double[lengths.length];
            for (int i = 0; i < each.length; i++) {
                each[i] = force(at, lengths[i]);
            }
            return forces.applyAsDouble(each);
        });
    }

    @Override
    public double noise() {
        return fit.noise();
    }

    @Override
    public double degreesOfFreedom() {
        return fit.degreesOfFreedom();
    }

    /**
     * How many numbers the readings chose; of the natural length only the part that they and not the tape decided, by the slopes at the fit
     * for every law alike.
     */
    double numbers() {
        double share = fit.freely(at -> at[last]).standardError() / sample.naturalSd;
        return shape.parameters() + Math.max(0, 1 - share * share);
    }

    double naturalGap() {
        double gap = (fit.parameters()[last] - sample.natural) / sample.naturalSd;
        return gap * gap;
    }

    /** Each reading as the others foretell it, root of the mean square, N; NaN where the others alone cannot be fitted. */
    double crossValidation() {
        double sum = 0;
        double weights = 0;
        Sample known = sample.stated() ? sample : sample.as(new Noise.Stated(Math.max(noise(), 1e-9)));
        for (int i = 0; i < sample.size(); i++) {
            double left;
            try {
                Fit without = regression(shape, known.without(i), fit.parameters())
                        .within(STEPS_WITHOUT_ONE)
                        .fit();
                left = (sample.forces[i] - force(without.parameters(), sample.lengths[i])) / sample.spreads[i];
            } catch (Refusal refused) {
                return Double.NaN;
            }
            sum += left * left;
            weights += 1 / (sample.spreads[i] * sample.spreads[i]);
        }
        return Math.sqrt(sum / weights);
    }
}
