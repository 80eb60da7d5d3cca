package counterpull.bench.tubing;

import counterpull.bench.Kind;
import counterpull.bench.Remark;
import java.util.ArrayList;
import java.util.List;

/** All that can be said about readings before any curve: single numbers, then lengths, then forces, then both ways together. */
final class BenchCheck {
    private static final double REPEATS = 3;

    private final TubingBench bench;
    private final List<Remark> remarks = new ArrayList<>();

    private BenchCheck(TubingBench bench) {
        this.bench = bench;
    }

    static List<Remark> of(TubingBench bench) {
        List<Remark> numbers = NumbersCheck.of(bench);
        if (!numbers.isEmpty()) {
            return numbers;
        }
        BenchCheck check = new BenchCheck(bench);
        check.natural();
        if (!check.remarks.isEmpty()) {
            return check.remarks;
        }
        List<Remark> lengths = LengthsCheck.of(bench);
        check.remarks.addAll(lengths);
        if (lengths.isEmpty()) {
            check.remarks.addAll(ForcesCheck.of(bench));
        }
        if (check.remarks.stream().noneMatch(Remark::refuses)) {
            check.bothWays();
            check.order();
        }
        return check.remarks;
    }

    private void natural() {
        double mean = bench.natural().mean();
        for (int i = 0; i < bench.natural().readings().size(); i++) {
            double each = bench.natural().readings().get(i);
            double others = (mean * bench.natural().readings().size() - each)
                    / Math.max(1, bench.natural().readings().size() - 1);
            if (bench.natural().readings().size() > 1 && Math.abs(each - others) > 0.1 * others) {
                remarks.add(
                        Remark.refuses("natural-repeats-disagree", "reading " + (i + 1) + " of the natural length, ")
                                .then(each, Kind.LENGTH)
                                .then(", is more than a tenth away from the others' ")
                                .then(others, Kind.LENGTH));
                return;
            }
        }
        bench.after().ifPresent(after -> after(mean, after.mean()));
    }

    private void after(double before, double after) {
        if (after > 1.5 * before || after < 0.9 * before) {
            remarks.add(Remark.refuses("after-does-not-fit", "natural length after the test, ")
                    .then(after, Kind.LENGTH)
                    .then(", does not go with ")
                    .then(before, Kind.LENGTH)
                    .then(" before: another unit, or another piece?"));
        }
    }

    private void bothWays() {
        List<NamedPull> up = NamedPull.rising(NamedPull.stretching(bench.pulls()));
        NamedPull longest = up.get(up.size() - 1);
        double scale = bench.instruments().scale().orElse(0);
        for (NamedPull down : NamedPull.lettingGo(bench.pulls())) {
            if (down.length() > longest.length() + 1e-9) {
                remarks.add(Remark.doubts("letting-go-beyond", down.name() + " at ")
                        .then(down.length(), Kind.LENGTH)
                        .then(" is longer than the longest while stretching, ")
                        .then(longest.length(), Kind.LENGTH)
                        .then(": it is left out"));
                continue;
            }
            double put = between(up, down.length());
            if (down.force() > put + Math.max(REPEATS * Math.sqrt(2) * scale, 0.05 * put)) {
                remarks.add(
                        Remark.refuses("letting-go-above", down.name() + " at ")
                                .then(down.length(), Kind.LENGTH)
                                .then(" shows ")
                                .then(down.force(), Kind.FORCE)
                                .then(", more than the ")
                                .then(put, Kind.FORCE)
                                .then(
                                        " of stretching there: rubber gives back less than was put in; were the two ways swapped?"));
            }
        }
    }

    /** Force while stretching at a length, straight between neighbours, from none at natural length. */
    private double between(List<NamedPull> up, double length) {
        double from = bench.natural().mean();
        double force = 0;
        for (NamedPull pull : up) {
            if (pull.length() >= length) {
                double along = pull.length() > from ? (length - from) / (pull.length() - from) : 1;
                return Math.max(0, force + along * (pull.force() - force));
            }
            from = pull.length();
            force = pull.force();
        }
        return force;
    }

    private void order() {
        List<Pull> up = bench.pulls().stretching();
        for (int i = 1; i < up.size(); i++) {
            if (up.get(i).length() < up.get(i - 1).length() - 1e-9) {
                remarks.add(Remark.note("not-in-order", "pull " + (i + 1) + " at ")
                        .then(up.get(i).length(), Kind.LENGTH)
                        .then(" is shorter than the one before: sorted here; on the bench go one way,"
                                + " since a piece that was let go in between pulls less"));
                return;
            }
        }
    }
}
