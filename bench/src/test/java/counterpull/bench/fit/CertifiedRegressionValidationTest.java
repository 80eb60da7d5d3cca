package counterpull.bench.fit;

import counterpull.engine.validation.Published;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The regression against data sets whose answers are certified to eleven digits. */
class CertifiedRegressionValidationTest {
    private static final String NIST =
            "NIST Statistical Reference Datasets (StRD), doi 10.18434/T43G6C; looked up in public"
                    + " copies, some certified digits from memory and confirmed by refitting: each file says which";
    private static final Map<String, Curve> CURVES = Map.of(
            "Norris", (b, x) -> b[0] + b[1] * x,
            "Pontius", (b, x) -> b[0] + b[1] * x + b[2] * x * x,
            "NoInt1", (b, x) -> b[0] * x,
            "NoInt2", (b, x) -> b[0] * x,
            "Misra1a", (b, x) -> b[0] * (1 - Math.exp(-b[1] * x)),
            "BoxBOD", (b, x) -> b[0] * (1 - Math.exp(-b[1] * x)),
            "Chwirut2", (b, x) -> Math.exp(-b[0] * x) / (b[1] + b[2] * x),
            "MGH17", (b, x) -> b[0] + b[1] * Math.exp(-x * b[3]) + b[2] * Math.exp(-x * b[4]),
            "Rat43", (b, x) -> b[0] / Math.pow(1 + Math.exp(b[1] - b[2] * x), 1 / b[3]),
            "Thurber", CertifiedRegressionValidationTest::cubicOverCubic);

    private interface Curve {
        double at(double[] b, double x);
    }

    private static double cubicOverCubic(double[] b, double x) {
        double above = b[0] + x * (b[1] + x * (b[2] + x * b[3]));
        return above / (1 + x * (b[4] + x * (b[5] + x * b[6])));
    }

    @ParameterizedTest
    @CsvSource({"Norris", "Pontius", "NoInt1", "NoInt2"})
    void straightInTheirParameters(String name) {
        CertifiedFile file = CertifiedFile.read(name);
        double[] start = file.header("Certified estimates");
        for (int k = 0; k < start.length; k++) {
            start[k] *= 1 + 0.3 * (k + 1);
        }
        hold(file, start, "from 30 % and more away");
    }

    /** From NIST's own places to begin: 2 is near, 1 is far (those from which any least-squares step of this kind can go astray are left out). */
    @ParameterizedTest
    @CsvSource({
        "Misra1a, 1",
        "Misra1a, 2",
        "Chwirut2, 1",
        "Chwirut2, 2",
        "MGH17, 2",
        "BoxBOD, 2",
        "Rat43, 2",
        "Thurber, 1",
        "Thurber, 2"
    })
    void curvedInTheirParameters(String name, int start) {
        CertifiedFile file = CertifiedFile.read(name);
        hold(file, file.header("Start " + start), "from start " + start);
    }

    private static void hold(CertifiedFile file, double[] start, String from) {
        double[] x = file.column(1);
        Curve curve = CURVES.get(file.name);
        Fit fit = Regression.of((b, i) -> curve.at(b, x[i]), file.column(0), start, new Noise.FromScatter())
                .fit();
        double[] certified = file.header("Certified estimates");
        double[] deviations = file.header("Certified standard deviations of estimates");
        for (int k = 0; k < certified.length; k++) {
            String what = file.name + " " + from + ", b" + (k + 1);
            row(what, certified[k], fit.estimate(k).value())
                    .withinRelative(1e-6, "certified to 11 digits; slopes are taken by differences");
            row(what + ", standard deviation", deviations[k], fit.estimate(k).standardError())
                    .withinRelative(1e-5, "certified to 11 digits; slopes are taken by differences");
        }
        row(
                        file.name + " " + from + ", residual sum of squares",
                        file.header("Residual sum of squares")[0],
                        fit.sumOfSquares())
                .withinRelative(1e-8, "flat at the optimum");
    }

    /** With stated spreads the covariance is not scaled by the scatter. */
    @Test
    void aWeightedLineWithStatedSpreads() {
        CertifiedFile file = CertifiedFile.read("WeightedLine");
        double[] x = file.column(1);
        double[] spread = file.column(2);
        for (int i = 0; i < spread.length; i++) {
            spread[i] = 1 / Math.sqrt(spread[i]);
        }
        Fit fit = Regression.of((b, i) -> b[0] + b[1] * x[i], file.column(0), new double[] {1, 1}, new Noise.Stated(1))
                .spread(spread)
                .fit();
        weighted("c0", -106.6, fit.estimate(0).value());
        weighted("c1", 0.06, fit.estimate(1).value());
        weighted("variance of c0", 39602, Math.pow(fit.estimate(0).standardError(), 2));
        weighted("variance of c1", 0.01, Math.pow(fit.estimate(1).standardError(), 2));
        weighted("chi squared", 0.8, fit.sumOfSquares());
    }

    private static void weighted(String what, double published, double ours) {
        Published.of("line with known weights: " + what, "")
                .source("manual of a public numerical library, worked example of a weighted line; looked up")
                .value(published)
                .ours(ours)
                .withinRelative(1e-6, "exact in its digits");
    }

    private static Published row(String what, double published, double ours) {
        return Published.of(what, "").source(NIST).value(published).ours(ours);
    }
}
