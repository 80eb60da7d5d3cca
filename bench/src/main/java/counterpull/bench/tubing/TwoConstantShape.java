package counterpull.bench.tubing;

import counterpull.bench.fit.Fit;
import counterpull.engine.elastic.ElasticLaw;
import counterpull.engine.elastic.MooneyRivlin;
import java.util.List;

/** T = 2 (λ − λ⁻²)(c₁ + c₂/λ), neither constant negative. */
record TwoConstantShape() implements Shape {
    @Override
    public Family family() {
        return Family.MOONEY_RIVLIN;
    }

    @Override
    public int parameters() {
        return 2;
    }

    static double first(double stretch) {
        return 2 * (stretch - 1 / (stretch * stretch));
    }

    @Override
    public double force(double[] at, double stretch) {
        return first(stretch) * (at[0] + at[1] / stretch);
    }

    @Override
    public double rise(double[] at, double stretch) {
        double cube = stretch * stretch * stretch;
        return at[0] * (2 + 4 / cube) + 6 * at[1] / (cube * stretch);
    }

    @Override
    public void slopes(double[] at, double stretch, double[] into) {
        into[0] = first(stretch);
        into[1] = into[0] / stretch;
    }

    @Override
    public List<double[]> starts(Sample sample) {
        return List.of(sample.straightIn(2, (stretch, into) -> slopes(into, stretch, into)));
    }

    @Override
    public boolean notNegative(int parameter) {
        return parameter < 2;
    }

    @Override
    public ElasticLaw law(double[] at, double area) {
        return new MooneyRivlin(area, at[0] / area, at[1] / area);
    }

    @Override
    public List<Constant> constants(ClosedFit fit, Area area) {
        return List.of(Shape.constant("C₁", fit.constant(0), area), Shape.constant("C₂", fit.constant(1), area));
    }

    @Override
    public String misfit(Fit fit) {
        double[] at = fit.parameters();
        return at[0] + at[1] > 0 ? "" : "the force does not rise with length";
    }
}
