package counterpull.bench.tubing;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.bench.fit.Noise;
import counterpull.engine.elastic.Ogden;
import counterpull.engine.elastic.OgdenTerm;
import counterpull.engine.validation.Published;
import counterpull.engine.validation.ReferenceFile;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The fits on Treloar's table of natural rubber, and Ogden's constants found again on their own curve. */
class TreloarFitsValidationTest {
    private static final double KGF_PER_CM2 = 98066.5;
    private static final double MPA = 1e6;
    private static final String SOURCE =
            "Treloar 1944, Trans Faraday Soc 40:59–70, looked up; least squares computed apart" + " from this code";
    private static final Area STRESS = Area.of(java.util.Optional.empty());

    /** Stress in MPa as the force of a strand; natural length 1 m, known as well as can be. */
    private static Sample sample(double longest) {
        ReferenceFile table = ReferenceFile.read("treloar1944.tsv");
        int n = 0;
        while (n < table.size() && table.number(n, "stretch") <= longest) {
            n++;
        }
        double[][] readings = new double[3][n];
        for (int i = 0; i < n; i++) {
            readings[0][i] = table.number(i, "stretch");
            readings[1][i] = table.number(i, "stress") * KGF_PER_CM2 / MPA;
            readings[2][i] = 1;
        }
        return new Sample(readings, 1, 1e-7, new Noise.FromScatter());
    }

    private static Candidate law(double longest, Family family) {
        return Tried.all(sample(longest), STRESS).stream()
                .map(Tried::candidate)
                .filter(each -> each.family() == family)
                .findFirst()
                .orElseThrow();
    }

    /** The least squares of the table, also where it has too few rows for intervals that hold what they say. */
    private static Candidate leastSquares(double longest, Family family) {
        Candidate tried = law(longest, family);
        if (family != Family.OGDEN_2 || tried.refused().isEmpty()) {
            return tried;
        }
        Sample sample = sample(longest);
        return Tried.fitted(new OgdenShape(2, sample.last()), sample, STRESS, 0.005)
                .candidate();
    }

    @ParameterizedTest
    @CsvSource({
        "2.5, LINEAR, .530405, 0, 0, 0, .074079, -35.24",
        "2.5, MOONEY_RIVLIN, .104301, .103819, 0, 0, .008850, -63.64",
        "2.5, OGDEN_1, -.242724, -4.316688, 0, 0, .008568, -64.16",
        "2.5, OGDEN_2, 1.246303, .670031, 3.01858e-4, 7.854754, .002243, -57.60",
        "4.05, LINEAR, .433747, 0, 0, 0, .095772, -46.11",
        "4.05, MOONEY_RIVLIN, .141320, .033910, 0, 0, .023394, -73.19",
        "4.05, OGDEN_1, -.241712, -4.319734, 0, 0, .008505, -95.45",
        "4.05, OGDEN_2, -.297298, -2.362350, .072323, 2.766392, .005228, -93.58",
        "9, OGDEN_1, .0154624, 3.901219, 0, 0, .330675, -45.92",
        "9, OGDEN_2, -.2065148, -4.619066, 1.702506e-8, 10.393114, .066616, -116.69"
    })
    void leastSquaresOfTheTable(
            double longest, Family family, double a, double b, double c, double d, double rms, double aicc) {
        Candidate law = leastSquares(longest, family);
        assertThat(law.refused()).isEmpty();
        double[] published = {a, b, c, d};
        String where = " of " + family.words() + ", stretch to " + longest;
        for (int i = 0; i < law.constants().size(); i++) {
            Constant constant = law.constants().get(i);
            row(constant.symbol() + where, "", published[i], constant.estimate().value())
                    .withinRelative(2e-5, "printed to six digits, flat at the optimum");
        }
        row("rms" + where, "MPa", rms, law.rms()).within(0.6e-6, "printed to six decimals");
        row("AICc" + where, "", aicc, law.score().aicc().orElseThrow()).within(0.02, "printed to two decimals");
    }

    /** Fitted freely, the whole table asks for a negative constant: it is held at 0 and says so. */
    @Test
    void theWholeTableHoldsAConstantAtItsLimit() {
        Candidate law = law(9, Family.MOONEY_RIVLIN);
        assertThat(law.constants().get(1).estimate().value()).isZero();
        assertThat(law.constants().get(1).estimate().standing())
                .isEqualTo(counterpull.bench.Estimate.Standing.AT_LIMIT);
    }

    /** An exponent without bounds runs off to 141.7 on this table: the third term is refused with a reason, not printed. */
    @Test
    void aThirdTermThatTheTableDoesNotHoldIsRefused() {
        assertThat(law(4.05, Family.OGDEN_3).refused()).isNotEmpty();
        assertThat(law(9, Family.OGDEN_3).refused()).isNotEmpty();
    }

    /** Not from the table, to which Ogden fitted three kinds of deformation at once, but from the curve that his constants draw. */
    @Test
    void ogdensOwnConstantsOnTheirOwnCurve() {
        double[] mu = {0.63, 0.0012, -0.01};
        double[] alpha = {1.3, 5, -2};
        Ogden own = new Ogden(1, mu, alpha);
        double[][] readings = new double[3][30];
        for (int i = 0; i < 30; i++) {
            readings[0][i] = 1.05 + i * 6.55 / 29;
            readings[1][i] = own.tension(readings[0][i]);
            readings[2][i] = 1;
        }
        Sample sample = new Sample(readings, 1, 1e-9, new Noise.Stated(1e-4));
        Shape shape = new OgdenShape(3, sample.last());
        ClosedFit fit = ClosedFit.of(shape, sample, 1e-4);
        List<OgdenTerm> found = ((Ogden) shape.law(fit.fit.parameters(), 1)).terms();
        Integer[] order = {0, 1, 2};
        Arrays.sort(
                order,
                (i, k) -> Double.compare(
                        Math.abs(found.get(k).mu()), Math.abs(found.get(i).mu())));
        double[] sizes = {0.63, -0.01, 0.0012};
        double[] exponents = {1.3, -2, 5};
        for (int i = 0; i < 3; i++) {
            Published.of("Ogden's constants on their own curve, μ of the term α = " + exponents[i], "MPa")
                    .source("Ogden 1972, Proc R Soc A 326:565–584; from memory")
                    .value(sizes[i])
                    .ours(found.get(order[i]).mu())
                    .withinRelative(0.005, "published to two digits");
            Published.of("Ogden's constants on their own curve, α", "")
                    .section("Treloar fits, exponent " + (i + 1))
                    .source("Ogden 1972, Proc R Soc A 326:565–584; from memory")
                    .value(exponents[i])
                    .ours(found.get(order[i]).alpha())
                    .withinRelative(0.005, "published to two digits");
        }
    }

    private static Published row(String what, String unit, double published, double ours) {
        return Published.of(what, unit).source(SOURCE).value(published).ours(ours);
    }
}
