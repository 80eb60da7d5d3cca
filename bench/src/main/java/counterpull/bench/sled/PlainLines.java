package counterpull.bench.sled;

import counterpull.bench.Estimate;
import counterpull.bench.fit.Fit;
import counterpull.bench.fit.Noise;
import counterpull.bench.fit.Regression;
import counterpull.engine.Refusal;
import java.util.Optional;

/** Straight lines through the pulls up and down that know nothing of gauge and plates: a + b m ± (c + d m). */
final class PlainLines {
    private final SledBench bench;
    private final Optional<Fit> fit;

    private PlainLines(SledBench bench, Optional<Fit> fit) {
        this.bench = bench;
        this.fit = fit;
    }

    static PlainLines of(SledBench bench) {
        boolean loads = bench.loads().length > 1;
        Regression regression = Regression.of(
                (p, i) -> {
                    Pull pull = bench.pulls().get(i);
                    double m = loads ? pull.plates() : 0;
                    double tilt = loads ? p[2] * m + p[3] * pull.way().sense() * m : 0;
                    return p[0] + pull.way().sense() * p[1] + tilt;
                },
                bench.forces(),
                loads ? new double[4] : new double[2],
                bench.scale());
        try {
            return new PlainLines(bench, Optional.of(regression.fit()));
        } catch (Refusal tooFew) {
            return new PlainLines(bench, Optional.empty());
        }
    }

    boolean tellsSlope() {
        return bench.loads().length > 1 && fit.isPresent();
    }

    /** b, N/kg. */
    Estimate perKilogram() {
        return fit.orElseThrow().estimate(2);
    }

    /** Scatter about the lines, or the scale's where it is stated, N; not a number below zero, infinite where it cannot be seen. */
    double noise() {
        return fit.map(Fit::noise).orElse(Double.POSITIVE_INFINITY);
    }

    double degreesOfFreedom() {
        return bench.scale() instanceof Noise.Stated
                ? Double.POSITIVE_INFINITY
                : fit.orElseThrow().degreesOfFreedom();
    }

    /** Scatter about the lines whatever was stated, N; empty where there are too few readings. */
    Optional<Double> scatter() {
        if (fit.isEmpty()) {
            return Optional.empty();
        }
        int left = bench.pulls().size() - (bench.loads().length > 1 ? 4 : 2);
        return left < 1 ? Optional.empty() : Optional.of(Math.sqrt(fit.get().sumOfSquares() / left));
    }
}
