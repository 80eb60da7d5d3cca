package counterpull.benchmarks;

import counterpull.bench.tubing.CrossSection;
import counterpull.bench.tubing.Instruments;
import counterpull.bench.tubing.Piece;
import counterpull.bench.tubing.Preparation;
import counterpull.bench.tubing.Pull;
import counterpull.bench.tubing.Pulls;
import counterpull.bench.tubing.TapeReadings;
import counterpull.bench.tubing.TubingBench;
import counterpull.bench.tubing.TubingResult;
import counterpull.engine.elastic.Ogden;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** A bench of twenty readings of rubber: every law fitted, one chosen, its band at 41 lengths, loss from twenty more; in ms. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class TubingBenchmark {
    /** Noise stated, or judged from the scatter. */
    @Param({"true", "false"})
    public boolean stated;

    private TubingBench bench;

    /** Draws the readings once: Ogden's rubber to three times its length, 0.3 N of noise. */
    @Setup
    public void setUp() {
        Random chance = new Random(1);
        Ogden truth = new Ogden(50e-6, new double[] {0.63e6, 0.0012e6, -0.01e6}, new double[] {1.3, 5, -2});
        List<Pull> up = new ArrayList<>();
        List<Pull> down = new ArrayList<>();
        for (int i = 1; i <= 20; i++) {
            double stretch = 1 + 0.1 * i;
            double force = truth.tension(stretch);
            up.add(new Pull(0.45 * stretch, force + 0.3 * chance.nextGaussian()));
            down.add(new Pull(0.45 * stretch, Math.max(0, 0.9 * force + 0.3 * chance.nextGaussian())));
        }
        Piece piece = new Piece("T1", Optional.of(new CrossSection.Tube(0.006, 0.002)), 1, Preparation.CYCLED);
        bench = new TubingBench(
                piece,
                new TapeReadings(List.of(0.45), OptionalDouble.of(0.001)),
                new Pulls(up, down, List.of()),
                stated ? Instruments.scale(0.3) : Instruments.NOT_STATED,
                Optional.empty());
    }

    /** From readings to answer and band. */
    @Benchmark
    public double fitChoiceAndBand() {
        TubingResult result = bench.answer().result().orElseThrow();
        double sum = result.loss().orElseThrow().share().value();
        for (var point : result.band().points()) {
            sum += point.force().halfWidth();
        }
        return sum;
    }
}
