package counterpull.bench.tubing;

import counterpull.bench.Kind;
import counterpull.bench.fit.Fit;
import counterpull.engine.elastic.ElasticLaw;
import counterpull.engine.elastic.LinearLaw;
import java.util.List;

/** T = K (λ − 1). */
record LinearShape() implements Shape {
    @Override
    public Family family() {
        return Family.LINEAR;
    }

    @Override
    public int parameters() {
        return 1;
    }

    @Override
    public double force(double[] at, double stretch) {
        return at[0] * (stretch - 1);
    }

    @Override
    public double rise(double[] at, double stretch) {
        return at[0];
    }

    @Override
    public void slopes(double[] at, double stretch, double[] into) {
        into[0] = stretch - 1;
    }

    @Override
    public List<double[]> starts(Sample sample) {
        return List.of(sample.straightIn(1, (stretch, into) -> into[0] = stretch - 1));
    }

    @Override
    public boolean notNegative(int parameter) {
        return false;
    }

    @Override
    public ElasticLaw law(double[] at, double area) {
        return new LinearLaw(at[0]);
    }

    @Override
    public List<Constant> constants(ClosedFit fit, Area area) {
        return List.of(new Constant("K", fit.constant(0), Kind.FORCE));
    }

    @Override
    public String misfit(Fit fit) {
        return fit.parameters()[0] > 0 ? "" : "the force does not rise with length";
    }
}
