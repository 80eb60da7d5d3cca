package counterpull.bench.tubing;

import counterpull.bench.Estimate;
import counterpull.bench.fit.Fit;
import counterpull.engine.elastic.ElasticLaw;
import java.util.List;

/**
 * A family of closed laws to be fitted, of one strand: force N from stretch λ and a few numbers. The formula is continued below λ = 1, so
 * that an uncertain natural length has a slope there. Constants are forces (the law's own times the cross-section).
 */
sealed interface Shape permits LinearShape, TwoConstantShape, OgdenShape {
    Family family();

    int parameters();

    double force(double[] at, double stretch);

    /** How many times as wide its intervals must be as the usual formula makes them, to hold what they say. */
    default double wider() {
        return 1;
    }

    /**
     * Readings that it takes: as many as its own numbers where the scale's noise is stated; where it must be seen in the scatter two more,
     * since the natural length is a number too.
     */
    default int fewest(boolean stated) {
        return parameters() + (stated ? 0 : 2);
    }

    /** A parameter by which the force bends so much that its likelihood is laid out place by place; −1 for none. */
    default int bent() {
        return -1;
    }

    /** dT/dλ. */
    double rise(double[] at, double stretch);

    /** dT/d(each parameter). */
    void slopes(double[] at, double stretch, double[] into);

    /** Where to begin, best first; at least one. */
    List<double[]> starts(Sample sample);

    /** Whether a parameter cannot be negative. */
    boolean notNegative(int parameter);

    /** The engine's law for an area, m². */
    ElasticLaw law(double[] at, double area);

    /** The law's own constants: forces divided by the area. */
    List<Constant> constants(ClosedFit fit, Area area);

    /** One term's share that is nothing, or an exponent that runs off; empty where the law can be used. */
    default String misfit(Fit fit) {
        return "";
    }

    /** A force or a stress. */
    static Constant constant(String symbol, Estimate newtons, Area area) {
        return new Constant(symbol, newtons.times(1 / area.squareMetres()), area.kind());
    }
}
