package counterpull.bench.tubing;

import counterpull.bench.Student;
import counterpull.bench.fit.Noise;
import java.util.List;
import java.util.OptionalDouble;

/** Turns a bench's pulls into samples of one strand, in order of rising length. */
final class Samples {
    private final TubingBench bench;
    private final double natural;
    private final double naturalSd;

    Samples(TubingBench bench) {
        this.bench = bench;
        OptionalDouble tape = bench.instruments().tape();
        natural = bench.natural().mean();
        double freedom = bench.natural().degreesOfFreedom(tape);
        // a scatter judged from few repeats is itself unsure: widened so that the 95 % interval keeps its width
        double widened = Student.twoSided95(freedom) / Student.TWO_SIDED_95;
        naturalSd = Math.max(1e-6 * natural, widened * bench.natural().standardError(tape));
    }

    Sample of(List<NamedPull> pulls) {
        List<NamedPull> rising = NamedPull.rising(pulls);
        int n = rising.size();
        double strands = bench.piece().strands();
        double[][] readings = new double[3][n];
        for (int i = 0; i < n; i++) {
            readings[0][i] = rising.get(i).length();
            readings[1][i] = rising.get(i).force() / strands;
            readings[2][i] = 1;
        }
        OptionalDouble scale = bench.instruments().scale();
        Noise noise = scale.isPresent() ? new Noise.Stated(scale.getAsDouble() / strands) : new Noise.FromScatter();
        if (scale.isPresent() && bench.instruments().tape().isPresent()) {
            addTape(readings, bench.instruments().tape().getAsDouble() / (scale.getAsDouble() / strands));
        }
        return new Sample(readings, natural, naturalSd, noise);
    }

    /** A wrong length is a wrong force by the slope there, taken from the readings around. */
    private void addTape(double[][] readings, double tapeOverScale) {
        int n = readings[0].length;
        for (int i = 0; i < n; i++) {
            int low = Math.max(-1, i - 1);
            int high = Math.min(n - 1, i + 1);
            double from = low < 0 ? natural : readings[0][low];
            double force = low < 0 ? 0 : readings[1][low];
            double length = readings[0][high] - from;
            double slope = length > 1e-9 ? Math.max(0, readings[1][high] - force) / length : 0;
            readings[2][i] = Math.hypot(1, slope * tapeOverScale);
        }
    }
}
