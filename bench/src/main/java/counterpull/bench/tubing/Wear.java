package counterpull.bench.tubing;

import counterpull.bench.Estimate;
import counterpull.bench.Kind;
import counterpull.bench.Remark;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How a piece stands on a day.
 *
 * @param due what to do with it
 * @param reasons each with its numbers; empty where nothing is due
 * @param sinceLast share of force lost between its last two tests at the compared length; empty with fewer than two
 * @param sinceFirst share of force lost since its first test
 * @param longer share by which its natural length grew since its first test
 */
public record Wear(
        Due due,
        List<Remark> reasons,
        Optional<Estimate> sinceLast,
        Optional<Estimate> sinceFirst,
        Optional<Estimate> longer) {
    /** Published: latex tubing stretched to twice its length lost this much of its force after up to 3000 cycles (de Paula and others). */
    private static final double LEAST_LOST = 0.095;

    private static final double MOST_LOST = 0.155;
    private static final int CYCLES_PUBLISHED = 3000;

    /** What to do with a piece. */
    public enum Due {
        NOTHING("may be used"),
        TEST("due for a test"),
        BIN("due for the bin");

        private final String words;

        Due(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }

    public Wear {
        reasons = List.copyOf(reasons);
    }

    static Wear of(WearRecord record, LocalDate day, WearLimits limits) {
        List<WearTest> tests = record.tests();
        List<Remark> bin = new ArrayList<>();
        List<Remark> test = new ArrayList<>();
        record.damage().forEach(seen -> bin.add(Remark.doubts("damaged", "it shows damage: " + seen)));
        int n = tests.size();
        if (n == 0) {
            test.add(Remark.doubts("never-tested", "it was never tested"));
            return new Wear(
                    bin.isEmpty() ? Due.TEST : Due.BIN,
                    both(bin, test),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty());
        }
        Optional<Estimate> last = n < 2 ? Optional.empty() : lost(tests.get(n - 2), tests.get(n - 1));
        Optional<Estimate> first = n < 2 ? Optional.empty() : lost(tests.get(0), tests.get(n - 1));
        Optional<Estimate> longer = n < 2
                ? Optional.empty()
                : Optional.of(grown(tests.get(0).natural(), tests.get(n - 1).natural()));
        time(tests.get(n - 1).on(), day, limits, test);
        cycles(record.cycles(), limits, test);
        first.ifPresent(lost -> force(lost, limits, bin, test));
        longer.ifPresent(grown -> length(grown, limits, bin));
        Due due = !bin.isEmpty() ? Due.BIN : test.isEmpty() ? Due.NOTHING : Due.TEST;
        return new Wear(due, both(bin, test), last, first, longer);
    }

    private static List<Remark> both(List<Remark> one, List<Remark> other) {
        List<Remark> all = new ArrayList<>(one);
        all.addAll(other);
        return all;
    }

    private static void time(LocalDate last, LocalDate day, WearLimits limits, List<Remark> test) {
        long days = ChronoUnit.DAYS.between(last, day);
        if (days < 0) {
            test.add(Remark.doubts("tested-in-future", "its last test, " + last + ", lies after " + day));
        } else if (days > limits.days()) {
            test.add(Remark.doubts("long-ago", "its last test was ")
                    .then(days, Kind.COUNT)
                    .then(" days ago, on " + last + "; it is tested every ")
                    .then(limits.days(), Kind.COUNT)
                    .then(" days (our choice)"));
        }
    }

    private static void cycles(int cycles, WearLimits limits, List<Remark> test) {
        if (cycles <= limits.cycles()) {
            return;
        }
        Remark remark = Remark.doubts("many-cycles", "it was stretched ")
                .then(cycles, Kind.COUNT)
                .then(" times since its last test; it is tested every ")
                .then(limits.cycles(), Kind.COUNT)
                .then(" (our choice)");
        Optional<double[]> expected = expectedLoss(cycles);
        test.add(expected.map(share -> remark.then(", by then ")
                        .then(share[0], Kind.SHARE)
                        .then(" to ")
                        .then(share[1], Kind.SHARE)
                        .then(" of the force may be gone"))
                .orElse(remark));
    }

    /**
     * Share of the force that so many stretches to twice the length may take, lowest and highest. At 3000 cycles as published for latex
     * tubing (9.5 to 15.5 %, de Paula and others); fewer in proportion to the logarithm, since most is lost early (our assumption); more
     * than 3000 was not published: empty.
     */
    public static Optional<double[]> expectedLoss(int cycles) {
        if (cycles < 0 || cycles > CYCLES_PUBLISHED) {
            return Optional.empty();
        }
        double share = Math.log1p(cycles) / Math.log1p(CYCLES_PUBLISHED);
        return Optional.of(new double[] {LEAST_LOST * share, MOST_LOST * share});
    }

    private static void force(Estimate lost, WearLimits limits, List<Remark> bin, List<Remark> test) {
        if (lost.value() > limits.bin()) {
            bin.add(Remark.doubts("force-lost", "it lost ")
                    .then(lost.value(), Kind.SHARE)
                    .then(" of its first force; at ")
                    .then(limits.bin(), Kind.SHARE)
                    .then(" it goes (our choice)"));
        } else if (lost.value() > limits.warning()) {
            test.add(Remark.doubts("force-drifts", "it lost ")
                    .then(lost.value(), Kind.SHARE)
                    .then(" of its first force, more than the ")
                    .then(limits.warning(), Kind.SHARE)
                    .then(" at which it is watched (our choice)"));
        }
    }

    private static void length(Estimate grown, WearLimits limits, List<Remark> bin) {
        if (grown.value() > limits.set()) {
            bin.add(Remark.doubts("stays-longer", "its natural length grew by ")
                    .then(grown.value(), Kind.SHARE)
                    .then("; at ")
                    .then(limits.set(), Kind.SHARE)
                    .then(" it goes (our choice)"));
        }
    }

    /** Only where both were compared at one length. */
    private static Optional<Estimate> lost(WearTest before, WearTest after) {
        boolean comparable = Math.abs(before.length() - after.length()) < 1e-9
                && before.force().value() > 0;
        return comparable ? Optional.of(change(before.force(), after.force()).times(-1)) : Optional.empty();
    }

    private static Estimate grown(Estimate before, Estimate after) {
        return change(before, after);
    }

    private static Estimate change(Estimate before, Estimate after) {
        double ratio = after.value() / before.value();
        double half = Math.hypot(after.halfWidth(), ratio * before.halfWidth()) / before.value();
        double error = Math.hypot(after.standardError(), ratio * before.standardError()) / before.value();
        return new Estimate(ratio - 1, error, ratio - 1 - half, ratio - 1 + half, Estimate.Standing.FREE);
    }
}
