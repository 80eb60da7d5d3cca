package counterpull.engine.elastic;

import java.util.List;
import java.util.stream.Stream;

/** Rubbers for tests: invented, apart from the two laws of worked example I. */
final class Rubbers {
    static final double AREA = 6e-5;
    static final MooneyRivlin MOONEY_RIVLIN = new MooneyRivlin(AREA, 1.2e5, 0.8e5);
    static final Ogden OGDEN = new Ogden(AREA, new double[] {4e5, 2e3}, new double[] {1.3, 5});
    static final LinearLaw LINEAR = LinearLaw.ofStiffness(150, 0.60);
    static final BenchCurve BENCH = new BenchCurve(0.60, loading());

    private Rubbers() {}

    static List<BenchReading> loading() {
        return List.of(
                new BenchReading(0.70, 11.0),
                new BenchReading(0.85, 19.5),
                new BenchReading(1.00, 26.0),
                new BenchReading(1.25, 35.0),
                new BenchReading(1.50, 46.0));
    }

    static List<BenchReading> unloading() {
        return List.of(
                new BenchReading(0.70, 9.4),
                new BenchReading(0.85, 17.4),
                new BenchReading(1.00, 23.5),
                new BenchReading(1.25, 32.6));
    }

    static Stream<ElasticLaw> laws() {
        return Stream.of(
                LINEAR,
                MOONEY_RIVLIN,
                new MooneyRivlin(AREA, 1e5, 0),
                new MooneyRivlin(AREA, 0, 1e5),
                OGDEN,
                new Ogden(AREA, new double[] {4e5, 2e3, -1e4}, new double[] {1.3, 5, -2}),
                BENCH);
    }

    static Rubber of(ElasticLaw law, Unloading unloading) {
        return new Rubber("test", 0.60, law, unloading, 1.50, 0.05, 0);
    }

    static Rubber of(ElasticLaw law) {
        return of(law, new LossFraction(0.1));
    }
}
