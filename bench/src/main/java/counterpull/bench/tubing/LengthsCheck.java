package counterpull.bench.tubing;

import counterpull.bench.Kind;
import counterpull.bench.Remark;
import java.util.ArrayList;
import java.util.List;

/** Lengths that cannot belong to this piece: shorter than natural, too far, or in another unit. */
final class LengthsCheck {
    /** Published tubing could be stretched to eight times its length (Braz J Phys Ther 2019, 23:41). */
    static final double FARTHEST = 8;

    private static final double SLACK = 0.99;
    private static final double[] UNITS = {10, 100, 2.54};
    private static final String[] MIXED = {
        "centimetres and millimetres mixed, or a decimal slip",
        "metres and centimetres mixed",
        "inches and centimetres mixed"
    };

    private final double natural;
    private final List<NamedPull> pulls;
    private final List<Remark> remarks = new ArrayList<>();

    private LengthsCheck(TubingBench bench) {
        natural = bench.natural().mean();
        pulls = NamedPull.all(bench.pulls());
    }

    static List<Remark> of(TubingBench bench) {
        LengthsCheck check = new LengthsCheck(bench);
        check.whole(bench);
        return check.remarks;
    }

    private void whole(TubingBench bench) {
        long wrong = pulls.stream().filter(pull -> !possible(pull.length())).count();
        double factor = wrong == pulls.size() ? common() : 0;
        if (factor > 0) {
            remarks.add(Remark.refuses(
                            "length-unit", "every length, from " + pulls.get(0).name() + " at ")
                    .then(pulls.get(0).length(), Kind.LENGTH)
                    .then(" on, is off by about ")
                    .then(factor, Kind.NUMBER)
                    .then(" beside the natural length of ")
                    .then(natural, Kind.LENGTH)
                    .then(": were they noted in different units?"));
            return;
        }
        pulls.forEach(this::one);
        List<NamedPull> up = NamedPull.stretching(bench.pulls());
        double first = up.get(0).length();
        if (remarks.isEmpty() && up.stream().allMatch(pull -> Math.abs(pull.length() - first) < 1e-9)) {
            remarks.add(Remark.refuses(
                            "all-the-same-length",
                            "all " + up.size() + " pulls, " + up.get(0).name() + " to "
                                    + up.get(up.size() - 1).name() + ", are at ")
                    .then(first, Kind.LENGTH)
                    .then(": a curve needs different lengths"));
        }
    }

    private boolean possible(double length) {
        return length >= SLACK * natural && length <= FARTHEST * natural;
    }

    /** The factor that would put every length right; 0 without one. */
    private double common() {
        for (double unit : UNITS) {
            if (pulls.stream().allMatch(pull -> possible(pull.length() * unit))) {
                return unit;
            }
            if (pulls.stream().allMatch(pull -> possible(pull.length() / unit))) {
                return 1 / unit;
            }
        }
        return 0;
    }

    private void one(NamedPull pull) {
        if (possible(pull.length())) {
            return;
        }
        Remark remark = pull.length() < natural
                ? Remark.refuses("shorter-than-natural", pull.name() + " at ")
                        .then(pull.length(), Kind.LENGTH)
                        .then(" is shorter than the natural length of ")
                : Remark.refuses("farther-than-rubber", pull.name() + " at ")
                        .then(pull.length(), Kind.LENGTH)
                        .then(" is more than eight times the natural length of ");
        remarks.add(remark.then(natural, Kind.LENGTH).then(suggestion(pull.length())));
    }

    private String suggestion(double length) {
        for (int i = 0; i < UNITS.length; i++) {
            double right = length < natural ? length * UNITS[i] : length / UNITS[i];
            if (right >= natural && right <= FARTHEST * natural / 2) {
                return ": " + MIXED[i] + "?";
            }
        }
        return length < natural ? ", where rubber hangs slack" : ", farther than tubing goes";
    }
}
