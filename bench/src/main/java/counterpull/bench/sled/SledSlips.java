package counterpull.bench.sled;

import counterpull.bench.Kind;
import counterpull.bench.Remark;
import counterpull.bench.Slip;
import counterpull.engine.Constants;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds a pull that is ten times, or so many pounds, what all the others say: each is compared with a fit of the others. */
final class SledSlips {
    /** Beside a slip the other pulls lie this close to their own fit, as a share. */
    private static final double OTHERS = 0.15;

    private static final int ENOUGH = 4;

    private final SledBench bench;
    private final double perKilogram;

    SledSlips(SledBench bench) {
        this.bench = bench;
        perKilogram = Constants.STANDARD_GRAVITY * Math.sin(bench.gauge().mean());
    }

    List<Remark> remarks() {
        List<Remark> remarks = new ArrayList<>();
        if (bench.pulls().size() < ENOUGH || fits(-1)) {
            return remarks;
        }
        for (int i = 0; i < bench.pulls().size(); i++) {
            double expected = expected(i, i);
            double read = bench.pulls().get(i).force();
            Optional<Slip> slip = expected > 0 ? Slip.of(read, expected) : Optional.empty();
            if (slip.isPresent() && fits(i)) {
                remarks.add(Remark.refuses(
                                "slip", SledReadings.name(i, bench.pulls().get(i)) + " reads ")
                        .then(read, Kind.FORCE)
                        .then(", " + slip.get().times() + " the ")
                        .then(expected, Kind.FORCE)
                        .then(" that the other pulls say: " + slip.get().words()));
            }
        }
        return remarks;
    }

    private boolean fits(int without) {
        for (int i = 0; i < bench.pulls().size(); i++) {
            double expected = expected(i, without);
            if (i != without && !(Math.abs(bench.pulls().get(i).force() - expected) < OTHERS * expected)) {
                return false;
            }
        }
        return true;
    }

    /** Weight of the carriage along the rail plus its plates by the gauge, ± one friction, from all pulls but one. */
    private double expected(int of, int without) {
        double n = 0;
        double senses = 0;
        double sum = 0;
        double signed = 0;
        for (int i = 0; i < bench.pulls().size(); i++) {
            if (i != without) {
                Pull pull = bench.pulls().get(i);
                double own = pull.force() - pull.plates() * perKilogram;
                n++;
                senses += pull.way().sense();
                sum += own;
                signed += pull.way().sense() * own;
            }
        }
        double determinant = n * n - senses * senses;
        double friction = determinant > 0 ? (n * signed - senses * sum) / determinant : 0;
        double weight = (sum - senses * friction) / n;
        Pull pull = bench.pulls().get(of);
        return weight + pull.plates() * perKilogram + pull.way().sense() * friction;
    }
}
