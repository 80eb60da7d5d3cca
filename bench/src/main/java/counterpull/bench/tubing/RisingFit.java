package counterpull.bench.tubing;

import counterpull.bench.Estimate;
import counterpull.bench.fit.Noise;
import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import java.util.Arrays;
import java.util.function.ToDoubleFunction;

/**
 * A smooth curve through the readings: the two functions of the Mooney–Rivlin law and the straight line taken freely, plus a
 * deviation that is smooth (a random function of Matérn's kind of order 5/2 times the distance from natural length, so that
 * there is none there), plus the natural length's own error. How far it may wander is not one number but a row of them, each
 * weighed by how likely it makes the readings; so the band knows that the smoothing itself is uncertain.
 *
 * <p>Source: Rasmussen CE and Williams CKI 2006, Gaussian Processes for Machine Learning, sections 2.7 and 4.2 (from memory). The freely
 * taken functions and the averaging over strengths are ours.
 */
final class RisingFit implements CurveFit {
    private static final int FEWEST = 5;
    private static final int STRENGTHS = 9;
    private static final double WEAKEST = 0.5;
    private static final double STRONGEST = 3000;

    /** Over what share of the tested range a deviation of the stiffness stays alike. */
    private static final double REACH = 0.5;

    private static final int ROUNDS = 3;
    private static final int FUNCTIONS = 3;

    private final Sample sample;
    private final ClosedFit base;
    private final double[] strengths = new double[STRENGTHS];
    private final Smoothing[] each = new Smoothing[STRENGTHS];
    private final double[] weights = new double[STRENGTHS];
    private final double[] noises = new double[STRENGTHS];
    private double noise;

    RisingFit(Sample sample, ClosedFit base) {
        enough(sample);
        this.sample = sample;
        this.base = base;
        noise = sample.noise instanceof Noise.Stated stated ? stated.sd() : Math.max(base.noise(), floor());
        weigh();
    }

    private static void enough(Sample sample) {
        int least = FEWEST + (sample.stated() ? 0 : 1);
        if (sample.size() < least) {
            throw tooFew("readings", sample.size(), least);
        }
        int lengths = (int) Arrays.stream(sample.lengths).distinct().count();
        if (lengths <= FUNCTIONS) {
            throw tooFew("different lengths", lengths, FUNCTIONS + 1);
        }
    }

    private static Refusal tooFew(String what, int found, int least) {
        return new Refusal(
                Fault.OUTSIDE_LIMITS,
                what,
                found,
                least,
                "",
                "fewer than " + least + " " + what + " show no smoothness");
    }

    private double floor() {
        return 1e-6 * sample.forces[sample.size() - 1];
    }

    private void weigh() {
        double best = Double.NEGATIVE_INFINITY;
        for (int s = 0; s < STRENGTHS; s++) {
            strengths[s] = s == 0 ? 0 : WEAKEST * Math.pow(STRONGEST / WEAKEST, (s - 1.0) / (STRENGTHS - 2));
            // half of the weight beforehand on no deviation at all
            weights[s] = settle(s) + (s == 0 ? Math.log(STRENGTHS - 1) : 0);
            best = Math.max(best, weights[s]);
        }
        double sum = 0;
        for (int s = 0; s < STRENGTHS; s++) {
            weights[s] = Math.exp(weights[s] - best);
            sum += weights[s];
        }
        double square = 0;
        for (int s = 0; s < STRENGTHS; s++) {
            weights[s] /= sum;
            square += weights[s] * noises[s] * noises[s];
        }
        noise = Math.sqrt(square);
    }

    /** Finds the noise that goes with a strength; gives the log of how likely both make the readings. */
    private double settle(int s) {
        noises[s] = noise;
        if (sample.stated()) {
            each[s] = smoothing(s);
            return each[s].logEvidence(noise);
        }
        int free = sample.size() - FUNCTIONS;
        for (int round = 0; round < ROUNDS; round++) {
            each[s] = smoothing(s);
            noises[s] = Math.max(Math.sqrt(each[s].misfit / free), floor());
        }
        return each[s].logEvidenceOfScatter(free);
    }

    private Smoothing smoothing(int s) {
        int n = sample.size();
        double[][] covariance = new double[n][];
        double[][] functions = new double[n][];
        for (int i = 0; i < n; i++) {
            covariance[i] = withReadings(sample.lengths[i], s);
            covariance[i][i] += sample.spreads[i] * sample.spreads[i];
            functions[i] = functions(sample.lengths[i]);
        }
        return new Smoothing(covariance, functions, sample.forces);
    }

    private double[] functions(double length) {
        double stretch = length / sample.natural;
        double first = TwoConstantShape.first(stretch);
        return new double[] {first, first / stretch, stretch - 1};
    }

    private double along(double length) {
        return Math.max(0, (length - sample.natural) / (sample.last() - sample.natural));
    }

    private double shift(double length) {
        double[] at = base.fit.parameters();
        double stretch = length / sample.natural;
        return -base.shape.rise(at, stretch) * stretch / sample.natural;
    }

    private double prior(double one, double other, int s) {
        double u = along(one);
        double v = along(other);
        double far = Math.sqrt(5) * Math.abs(u - v) / REACH;
        double alike = Math.exp(-far) * (1 + far + far * far / 3);
        double unsure = sample.naturalSd / noises[s];
        return strengths[s] * strengths[s] * u * v * alike + unsure * unsure * shift(one) * shift(other);
    }

    private double[] withReadings(double length, int s) {
        double[] row = new double[sample.size()];
        for (int i = 0; i < row.length; i++) {
            row[i] = prior(length, sample.lengths[i], s);
        }
        return row;
    }

    private double value(int s, double length) {
        return each[s].value(functions(length), withReadings(length, s));
    }

    double mean(double length) {
        double sum = 0;
        for (int s = 0; s < STRENGTHS; s++) {
            sum += weights[s] * value(s, length);
        }
        return sum;
    }

    /** Where the curve starts: the tape's length moved by what the pull says. */
    @Override
    public Estimate natural() {
        double slope = -shift(sample.natural);
        double move = mean(sample.natural) / slope;
        double error = Math.sqrt(Math.max(0, covariance(new double[] {sample.natural})[0][0])) / slope;
        return Estimate.student(sample.natural - move, error, degreesOfFreedom());
    }

    @Override
    public Estimate force(double length) {
        double error = Math.sqrt(Math.max(0, covariance(new double[] {length})[0][0]));
        return Forces.notNegative(Estimate.student(mean(length), error, degreesOfFreedom()));
    }

    private double[][] covariance(double[] lengths) {
        int n = lengths.length;
        double[][] sum = new double[n][n];
        for (int s = 0; s < STRENGTHS; s++) {
            double[][][] places = new double[n][][];
            double[] off = new double[n];
            for (int i = 0; i < n; i++) {
                places[i] = new double[][] {functions(lengths[i]), withReadings(lengths[i], s)};
                off[i] = each[s].value(places[i][0], places[i][1]) - mean(lengths[i]);
            }
            for (int i = 0; i < n; i++) {
                for (int k = 0; k <= i; k++) {
                    double prior = prior(lengths[i], lengths[k], s);
                    double inside = noises[s] * noises[s] * each[s].covariance(prior, places[i], places[k]);
                    sum[i][k] += weights[s] * (inside + off[i] * off[k]);
                    sum[k][i] = sum[i][k];
                }
            }
        }
        return sum;
    }

    @Override
    public Estimate of(double[] lengths, ToDoubleFunction<double[]> forces) {
        double[] at = new double[lengths.length];
        for (int i = 0; i < at.length; i++) {
            at[i] = mean(lengths[i]);
        }
        double value = forces.applyAsDouble(at);
        double[] slope = new double[at.length];
        double step = 1e-4 * Math.max(noise, floor());
        for (int i = 0; i < at.length; i++) {
            double middle = at[i];
            at[i] = middle + step;
            double above = forces.applyAsDouble(at);
            at[i] = middle - step;
            slope[i] = (above - forces.applyAsDouble(at)) / (2 * step);
            at[i] = middle;
        }
        double variance = 0;
        double[][] covariance = covariance(lengths);
        for (int i = 0; i < at.length; i++) {
            for (int k = 0; k < at.length; k++) {
                variance += slope[i] * covariance[i][k] * slope[k];
            }
        }
        return Estimate.student(value, Math.sqrt(Math.max(0, variance)), degreesOfFreedom());
    }

    @Override
    public double noise() {
        return noise;
    }

    @Override
    public double degreesOfFreedom() {
        return sample.stated() ? Double.POSITIVE_INFINITY : sample.size() - FUNCTIONS;
    }

    double numbers() {
        double sum = 0;
        for (int s = 0; s < STRENGTHS; s++) {
            sum += weights[s] * each[s].numbers(sample.spreads);
        }
        return sum;
    }

    double naturalGap() {
        double gap = (natural().value() - sample.natural) / sample.naturalSd;
        return gap * gap;
    }

    /** Each reading as the others foretell it, root of the mean square, N. */
    double crossValidation() {
        double squares = 0;
        double precision = 0;
        for (int i = 0; i < sample.size(); i++) {
            double left = 0;
            for (int s = 0; s < STRENGTHS; s++) {
                left += weights[s] * each[s].leftOut(i);
            }
            double weight = 1 / (sample.spreads[i] * sample.spreads[i]);
            squares += weight * left * left;
            precision += weight;
        }
        return Math.sqrt(squares / precision);
    }
}
