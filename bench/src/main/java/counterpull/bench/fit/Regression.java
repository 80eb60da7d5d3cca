package counterpull.bench.fit;

import counterpull.engine.Require;
import java.util.Arrays;

/**
 * A curve to be laid through readings: minimise Σ ((measured − model)/(spread·σ))² + Σ ((parameter − known)/sd)², parameters inside their
 * limits. Immutable; each method gives a new one.
 *
 * <p>Intervals are those of the fit without limits (t where σ comes from scatter, normal where it is stated), cut off at the limits: they
 * keep their 95 % for every truth that is possible. Where scatter and outside knowledge meet, the degrees of freedom of each result are
 * combined as in the Guide to the expression of uncertainty in measurement (JCGM 100:2008, G.4.1, Welch–Satterthwaite). Source:
 * Gauss–Newton covariance (JᵀWJ)⁻¹σ², as in any handbook of regression; the treatment of limits is ours.
 */
public final class Regression {
    static final int ENOUGH = 1000;

    private final Model model;
    private final double[] measured;
    private final double[] spread;
    private final Noise noise;
    private final double[] start;
    private final double[] lowest;
    private final double[] known;
    private final double[] knownSd;
    private final double[] knownDegrees;
    private final int steps;

    private Regression(Model model, double[][] of, Noise noise, int steps) {
        this.model = model;
        this.steps = steps;
        this.noise = noise;
        measured = of[0];
        spread = of[1];
        start = of[2];
        lowest = of[3];
        known = of[4];
        knownSd = of[5];
        knownDegrees = of[6];
    }

    /**
     * Readings of equal weight, no limits, nothing known beforehand.
     *
     * @param model what a reading should be
     * @param measured the readings
     * @param start parameters to begin from, finite
     * @param noise how far a reading may lie from the truth
     */
    public static Regression of(Model model, double[] measured, double[] start, Noise noise) {
        for (double each : measured) {
            Require.finite(each, "reading", "");
        }
        for (double each : start) {
            Require.finite(each, "parameter to begin from", "");
        }
        return new Regression(
                model,
                new double[][] {
                    measured.clone(),
                    filled(measured.length, 1),
                    start.clone(),
                    filled(start.length, Double.NEGATIVE_INFINITY),
                    new double[start.length],
                    filled(start.length, Double.POSITIVE_INFINITY),
                    filled(start.length, Double.POSITIVE_INFINITY)
                },
                noise,
                ENOUGH);
    }

    private static double[] filled(int length, double value) {
        double[] array = new double[length];
        Arrays.fill(array, value);
        return array;
    }

    /** The same with each reading's standard deviation as a multiple of the noise, above 0. */
    public Regression spread(double[] multiples) {
        for (double each : multiples) {
            Require.positive(each, "relative spread of a reading", "");
        }
        return with(1, multiples.clone());
    }

    /** The same where a parameter cannot lie below a limit. */
    public Regression atLeast(int parameter, double limit) {
        return with(3, changed(lowest, parameter, limit));
    }

    /** The same where a parameter is known beforehand from another measurement, as normal. */
    public Regression known(int parameter, double value, double sd) {
        Require.positive(sd, "standard uncertainty of what is known", "");
        return with(4, changed(known, parameter, value)).with(5, changed(knownSd, parameter, sd));
    }

    /** The same where that standard uncertainty was itself estimated, with so many degrees of freedom. */
    public Regression known(int parameter, double value, double sd, double degreesOfFreedom) {
        Require.positive(Math.min(degreesOfFreedom, Double.MAX_VALUE), "degrees of freedom of what is known", "");
        return known(parameter, value, sd).with(6, changed(knownDegrees, parameter, degreesOfFreedom));
    }

    private static double[] changed(double[] array, int at, double value) {
        double[] copy = array.clone();
        copy[at] = value;
        return copy;
    }

    private Regression with(int which, double[] array) {
        double[][] of = {measured, spread, start, lowest, known, knownSd, knownDegrees};
        of[which] = array;
        return new Regression(model, of, noise, steps);
    }

    /**
     * The same, stopped at the best place found after so many steps, fewer than 1000: for trials and for readings left out. Unless this is
     * asked for, a fit that has not settled after 1000 steps is refused.
     */
    public Regression within(int mostSteps) {
        double[][] of = {measured, spread, start, lowest, known, knownSd, knownDegrees};
        return new Regression(model, of, noise, mostSteps);
    }

    /** How many readings there are. */
    public int readings() {
        return measured.length;
    }

    /** How many parameters there are. */
    public int parameters() {
        return start.length;
    }

    /** The fit; a {@link counterpull.engine.Refusal} where the readings cannot tell the parameters apart. */
    public Fit fit() {
        return new Solver(this).fit();
    }

    Noise noise() {
        return noise;
    }

    double[] start() {
        return start.clone();
    }

    double lowest(int parameter) {
        return lowest[parameter];
    }

    double known(int parameter) {
        return known[parameter];
    }

    double knownSd(int parameter) {
        return knownSd[parameter];
    }

    double knownDegrees(int parameter) {
        return knownDegrees[parameter];
    }

    int steps() {
        return steps;
    }

    /** Slopes of a reading's prediction over its spread; false where the model does not know them. */
    boolean slopes(double[] parameters, int reading, double[] into) {
        if (!model.slopes(parameters, reading, into)) {
            return false;
        }
        for (int k = 0; k < into.length; k++) {
            into[k] /= spread[reading];
        }
        return true;
    }

    /** (measured − model) / spread. */
    double residual(double[] parameters, int reading) {
        return (measured[reading] - model.at(parameters, reading)) / spread[reading];
    }
}
