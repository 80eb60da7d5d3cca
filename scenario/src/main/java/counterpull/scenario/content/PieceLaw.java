package counterpull.scenario.content;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.elastic.BenchCurve;
import counterpull.engine.elastic.BenchReading;
import counterpull.engine.elastic.ElasticLaw;
import counterpull.engine.elastic.LinearLaw;
import counterpull.engine.elastic.MooneyRivlin;
import counterpull.engine.elastic.Ogden;
import counterpull.engine.elastic.OgdenTerm;
import java.util.List;
import java.util.Optional;

/** How a piece pulls, as a file describes it. */
public sealed interface PieceLaw {

    /** The engine's law for a piece of that natural length, m, and size. */
    ElasticLaw law(double naturalLength, Optional<Size> size);

    /**
     * In proportion.
     *
     * @param stiffness of the whole piece, N/m
     */
    record Linear(double stiffness) implements PieceLaw {
        @Override
        public ElasticLaw law(double naturalLength, Optional<Size> size) {
            return LinearLaw.ofStiffness(stiffness, naturalLength);
        }
    }

    /**
     * Two constants.
     *
     * @param c1 Pa
     * @param c2 Pa
     */
    record TwoConstants(double c1, double c2) implements PieceLaw {
        @Override
        public ElasticLaw law(double naturalLength, Optional<Size> size) {
            return new MooneyRivlin(area(size), c1, c2);
        }
    }

    /**
     * Ogden's terms.
     *
     * @param terms at least one
     */
    record Terms(List<OgdenTerm> terms) implements PieceLaw {
        public Terms {
            terms = List.copyOf(terms);
        }

        @Override
        public ElasticLaw law(double naturalLength, Optional<Size> size) {
            return new Ogden(area(size), terms);
        }
    }

    /**
     * Readings while it was lengthened.
     *
     * @param readings rising in length
     */
    record Bench(List<BenchReading> readings) implements PieceLaw {
        public Bench {
            readings = List.copyOf(readings);
        }

        @Override
        public ElasticLaw law(double naturalLength, Optional<Size> size) {
            return new BenchCurve(naturalLength, readings);
        }
    }

    private static double area(Optional<Size> size) {
        return size.map(Size::area)
                .orElseThrow(() -> new Refusal(
                        Fault.MUST_BE_POSITIVE,
                        "cross-section",
                        Double.NaN,
                        Double.NaN,
                        "",
                        "this law needs the piece's size: bore and wall of a tube, or width and thickness of a strip"));
    }
}
