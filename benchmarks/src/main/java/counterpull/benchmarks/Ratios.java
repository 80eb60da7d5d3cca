package counterpull.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.Options;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/** Runs all benchmarks in one go and prints the ratios that the design asks for, each beside its bar. */
public final class Ratios {
    private static final int ROUNDS = 3;
    private static final String ZERO = "0 (JMH's own rounding apart)";
    private final List<RunResult> results;

    private Ratios(List<RunResult> results) {
        this.results = results;
    }

    /** No arguments. Rounds follow one another, so that no contestant has the whole of a bad moment. */
    public static void main(String[] arguments) throws RunnerException {
        List<RunResult> results = new ArrayList<>();
        for (int round = 0; round < ROUNDS; round++) {
            results.addAll(new Runner(options()).run());
        }
        new Ratios(results).print();
    }

    private static Options options() {
        return new OptionsBuilder()
                .include("counterpull.benchmarks")
                .forks(1)
                .warmupIterations(6)
                .warmupTime(TimeValue.milliseconds(400))
                .measurementIterations(8)
                .measurementTime(TimeValue.milliseconds(300))
                .addProfiler(GCProfiler.class)
                .build();
    }

    private void print() {
        System.out.println();
        row("engine / hand-written loop", time("engine") / time("handWritten"), "at most 2.5");
        row("engine / multibody library", time("engine") / time("library"), "at most 0.1");
        row("bytes allocated per evaluation", bytes("engine"), ZERO);
        row("six segments, engine / library", time("sixByEngine") / time("sixByLibrary"), "at most 0.1");
        row("bytes allocated, six segments", bytes("sixByEngine"), ZERO);
        row("profile / its evaluations alone", time("wholeProfile") / time("evaluationsAlone"), "at most 4");
        row("ms for 20 readings of rubber", time("fitChoiceAndBand"), "at most 50");
        row("kilobytes allocated per profile", bytes("wholeProfile") / 1000, "no bar");
        row("one draw / whole profile", time("hundredDraws") / 100 / time("wholeProfile"), "no bar");
        row("10,000 draws on two threads, s", time("tenThousandDraws") / 1e6, "at most 1");
    }

    private static void row(String what, double value, String bar) {
        System.out.printf("%-36s %8.3f   bar: %s%n", what, value, bar);
    }

    /** The quickest iteration of all rounds: whatever else the machine does disturbs that one least. */
    private double time(String method) {
        return least(method, result -> result.getPrimaryResult().getStatistics().getMin());
    }

    private double bytes(String method) {
        return least(method, Ratios::bytes);
    }

    private static double bytes(RunResult result) {
        for (String name : result.getSecondaryResults().keySet()) {
            if (name.endsWith("gc.alloc.rate.norm")) {
                return result.getSecondaryResults().get(name).getScore();
            }
        }
        return Double.NaN;
    }

    private double least(String method, ToDoubleFunction<RunResult> number) {
        return results.stream()
                .filter(result -> result.getParams().getBenchmark().endsWith("." + method))
                .mapToDouble(number)
                .min()
                .orElseThrow();
    }
}
