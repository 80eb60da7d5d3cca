package counterpull.benchmarks;

import java.util.Collection;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.Options;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/** Runs all benchmarks in one go and prints the ratios that the design asks for, each beside its bar. */
public final class Ratios {
    private final Collection<RunResult> results;

    private Ratios(Collection<RunResult> results) {
        this.results = results;
    }

    /** No arguments. */
    public static void main(String[] arguments) throws RunnerException {
        Options options = new OptionsBuilder()
                .include("counterpull.benchmarks")
                .forks(1)
                .warmupIterations(8)
                .warmupTime(TimeValue.milliseconds(500))
                .measurementIterations(20)
                .measurementTime(TimeValue.milliseconds(300))
                .addProfiler(GCProfiler.class)
                .build();
        new Ratios(new Runner(options).run()).print();
    }

    private void print() {
        System.out.println();
        row("engine / hand-written loop", time("engine") / time("handWritten"), "at most 2.5");
        row("engine / multibody library", time("engine") / time("library"), "at most 0.1");
        row("bytes allocated per evaluation", bytes("engine"), "0 (JMH's own rounding apart)");
        row("profile / its evaluations alone", time("wholeProfile") / time("evaluationsAlone"), "at most 4");
        row("kilobytes allocated per profile", bytes("wholeProfile") / 1000, "no bar");
    }

    private static void row(String what, double value, String bar) {
        System.out.printf("%-36s %8.3f   bar: %s%n", what, value, bar);
    }

    /** The quickest iteration: whatever else the machine does disturbs that one least. */
    private double time(String method) {
        return find(method).getPrimaryResult().getStatistics().getMin();
    }

    private double bytes(String method) {
        for (var each : find(method).getSecondaryResults().entrySet()) {
            if (each.getKey().endsWith("gc.alloc.rate.norm")) {
                Result<?> result = each.getValue();
                return result.getScore();
            }
        }
        return Double.NaN;
    }

    private RunResult find(String method) {
        for (RunResult result : results) {
            if (result.getParams().getBenchmark().endsWith("." + method)) {
                return result;
            }
        }
        throw new IllegalStateException("no benchmark " + method);
    }
}
