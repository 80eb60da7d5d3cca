package counterpull.bench.tubing;

import counterpull.bench.Estimate;
import counterpull.bench.Kind;
import counterpull.bench.fit.Fit;
import counterpull.engine.elastic.ElasticLaw;
import counterpull.engine.elastic.Ogden;
import java.util.ArrayList;
import java.util.List;

/**
 * T = Σ hᵢ φ(αᵢ, λ)/φ(αᵢ, Λ), hᵢ &gt; 0; parameters h₁, α₁, h₂, α₂, … Each h is that term's own force at the stretch Λ of the longest
 * reading: μ itself, which can be 1e-8 beside an exponent of 10, is so tied to α that no fit settles.
 */
record OgdenShape(int terms, double reference) implements Shape {
    /** Exponents outside this are no rubber's; between them lie all published sets that we know (from memory). */
    static final double LOWEST = -6;

    static final double HIGHEST = 12;

    @Override
    public Family family() {
        return Family.values()[Family.OGDEN_1.ordinal() + terms - 1];
    }

    @Override
    public int parameters() {
        return 2 * terms;
    }

    /** Two terms or more through as few readings as they have numbers had too narrow bands: one more. */
    @Override
    public int fewest(boolean stated) {
        return terms == 1 ? stated ? 5 : 6 : parameters() + (stated ? 1 : 6);
    }

    /**
     * One exponent bends the likelihood: where readings are few and rough, intervals hold a little less than they say (92.5 % instead of 95 %).
     * Three terms meet their limits, and intervals that stretch to the value there hold a little more (97.3 %). Ours, from simulated benches.
     */
    @Override
    public double wider() {
        return terms == 1 ? 1.04 : terms == 3 ? 0.97 : 1;
    }

    @Override
    public int bent() {
        return terms == 1 ? 1 : -1;
    }

    /** Stiffness at rest of a term, μα, per force at the reference. */
    private double per(double alpha) {
        return 1 / OgdenTermShape.force(alpha, reference);
    }

    @Override
    public double force(double[] at, double stretch) {
        double sum = 0;
        for (int i = 0; i < terms; i++) {
            sum += at[2 * i] * per(at[2 * i + 1]) * OgdenTermShape.force(at[2 * i + 1], stretch);
        }
        return sum;
    }

    @Override
    public double rise(double[] at, double stretch) {
        double sum = 0;
        for (int i = 0; i < terms; i++) {
            sum += at[2 * i] * per(at[2 * i + 1]) * OgdenTermShape.rise(at[2 * i + 1], stretch);
        }
        return sum;
    }

    @Override
    public void slopes(double[] at, double stretch, double[] into) {
        for (int i = 0; i < terms; i++) {
            double alpha = at[2 * i + 1];
            double per = per(alpha);
            into[2 * i] = per * OgdenTermShape.force(alpha, stretch);
            double turned = OgdenTermShape.byAlpha(alpha, reference) * per * into[2 * i];
            into[2 * i + 1] = at[2 * i] * (per * OgdenTermShape.byAlpha(alpha, stretch) - turned);
        }
    }

    @Override
    public List<double[]> starts(Sample sample) {
        return OgdenStarts.of(sample, terms, reference);
    }

    @Override
    public boolean notNegative(int parameter) {
        return false;
    }

    @Override
    public ElasticLaw law(double[] at, double area) {
        double[] mu = new double[terms];
        double[] alpha = new double[terms];
        for (int i = 0; i < terms; i++) {
            alpha[i] = at[2 * i + 1];
            mu[i] = at[2 * i] * per(alpha[i]) / alpha[i] / area;
        }
        return new Ogden(area, mu, alpha);
    }

    @Override
    public List<Constant> constants(ClosedFit fit, Area area) {
        List<Constant> constants = new ArrayList<>();
        for (int i = 0; i < terms; i++) {
            int g = 2 * i;
            String number = terms == 1 ? "" : String.valueOf((char) ('₁' + i));
            Estimate mu = fit.constant(at -> at[g] * per(at[g + 1]) / at[g + 1]);
            constants.add(Shape.constant("μ" + number, mu, area));
            constants.add(new Constant("α" + number, fit.constant(at -> at[g + 1]), Kind.NUMBER));
        }
        return constants;
    }

    @Override
    public String misfit(Fit fit) {
        double[] at = fit.parameters();
        for (int i = 0; i < terms; i++) {
            if (!(at[2 * i] > 0)) {
                return terms == 1 ? "the force does not rise with length" : "fewer terms serve these readings as well";
            }
            if (!(at[2 * i + 1] >= LOWEST && at[2 * i + 1] <= HIGHEST) || at[2 * i + 1] == 0) {
                return "an exponent runs off past what rubber does";
            }
        }
        return "";
    }
}
