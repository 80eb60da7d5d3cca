package counterpull.bench.machine;

import counterpull.bench.Kind;
import counterpull.bench.Remark;
import counterpull.bench.Slip;
import counterpull.bench.Way;
import counterpull.bench.fit.Fit;
import counterpull.bench.fit.Noise;
import counterpull.bench.fit.Regression;
import counterpull.engine.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is wrong with a lever's readings before anything is fitted; each problem names its reading. */
final class LeverReadings {
    private static final double TURN = 2 * Math.PI;
    private static final double APART = Math.toRadians(15);
    private static final double OTHERS = 0.2;
    private static final double LONGEST = 3;
    private static final double TOLERANCE = 0.02;

    private final LeverBench bench;
    private final Kind kind;
    private final List<Remark> remarks = new ArrayList<>();

    LeverReadings(LeverBench bench) {
        this.bench = bench;
        kind = bench.hold().byForce() ? Kind.FORCE : Kind.TORQUE;
    }

    List<Remark> remarks() {
        arm();
        for (int i = 0; i < bench.readings().size(); i++) {
            reading(i);
        }
        if (remarks.isEmpty()) {
            enough();
        }
        if (remarks.isEmpty()) {
            slips();
            upsAndDowns();
        }
        return remarks;
    }

    private void arm() {
        double arm = bench.hold().arm();
        if (!(arm > 0 && arm <= LONGEST)) {
            remarks.add(Remark.refuses("arm-impossible", "the scale pulls ")
                    .then(arm, Kind.LENGTH)
                    .then(" from the pivot: it is above 0 and no more than ")
                    .then(LONGEST, Kind.LENGTH));
        }
    }

    static Remark named(Remark begun, int i, LeverReading reading, Kind kind) {
        return begun.then("reading " + (i + 1) + ", " + reading.way().words() + " at ")
                .then(reading.angle(), Kind.ANGLE)
                .then(" with ")
                .then(reading.plates(), Kind.MASS)
                .then(", is ")
                .then(reading.size(), kind);
    }

    private void reading(int i) {
        LeverReading reading = bench.readings().get(i);
        if (!Double.isFinite(reading.size())
                || !Double.isFinite(reading.angle())
                || !Double.isFinite(reading.plates())) {
            remarks.add(Remark.refuses("not-a-number", "reading " + (i + 1) + " has something that is not a number"));
        } else if (Math.abs(reading.angle()) > TURN) {
            remarks.add(named(Remark.refuses("angle-impossible", ""), i, reading, kind)
                    .then(": an angle is within a whole turn; check its unit"));
        } else if (reading.plates() < 0 || reading.plates() > 500) {
            remarks.add(named(Remark.refuses("plates-impossible", ""), i, reading, kind)
                    .then(": from 0 to 500 kg of plates can be"));
        }
    }

    private void enough() {
        double[] angles =
                bench.readings().stream().mapToDouble(LeverReading::angle).toArray();
        double low = java.util.Arrays.stream(angles).min().orElse(0);
        double high = java.util.Arrays.stream(angles).max().orElse(0);
        if (high - low < APART) {
            remarks.add(Remark.refuses("angles-close", "up to reading ")
                    .then(angles.length, Kind.COUNT)
                    .then(" all angles lie within ")
                    .then(high - low, Kind.ANGLE)
                    .then(": where the centre of mass is shows only over ")
                    .then(APART, Kind.ANGLE)
                    .then(" or more"));
        }
        for (Way way : Way.values()) {
            if (bench.readings().stream().noneMatch(reading -> reading.way() == way)) {
                remarks.add(Remark.refuses(
                        "one-way-only",
                        "there is no reading on the way " + way.words()
                                + ": friction at the pivot shows in the difference of both ways alone"));
            }
        }
        int needed = (bench.tellsHorn() ? 5 : 3) + (bench.scale() instanceof Noise.Stated ? 0 : 1);
        if (angles.length < needed) {
            remarks.add(Remark.refuses("too-few-readings", "reading ")
                    .then(angles.length, Kind.COUNT)
                    .then(" is the last, and ")
                    .then(needed, Kind.COUNT)
                    .then(" are needed: read at more angles, or state the scale's accuracy"));
        }
    }

    /** Each reading beside a fit of the others; a slip only where the others agree. */
    private void slips() {
        if (bench.readings().size() < (bench.tellsHorn() ? 7 : 5)) {
            return;
        }
        for (int i = 0; i < bench.readings().size(); i++) {
            LeverReading reading = bench.readings().get(i);
            Optional<Double> expected = expected(i);
            Optional<Slip> slip =
                    expected.filter(e -> e * reading.size() > 0).flatMap(e -> Slip.ofTen(reading.size() / e, 1, 0.4));
            if (slip.isPresent()) {
                remarks.add(named(Remark.refuses("slip", ""), i, reading, kind)
                        .then(", about " + slip.get().times() + " the ")
                        .then(expected.orElseThrow(), kind)
                        .then(" that the other readings say: " + slip.get().words()));
            }
        }
    }

    private Optional<Double> expected(int without) {
        List<LeverReading> others = new ArrayList<>(bench.readings());
        LeverReading left = others.remove(without);
        LeverBench less = new LeverBench(bench.name(), bench.hold(), others, bench.horn(), new Noise.Stated(1));
        try {
            Fit fit = Regression.of(
                            (p, i) -> LeverEstimator.model(less, p, others.get(i)),
                            others.stream().mapToDouble(LeverReading::size).toArray(),
                            new double[less.tellsHorn() ? 5 : 3],
                            new Noise.Stated(1))
                    .fit();
            double largest = others.stream()
                    .mapToDouble(each -> Math.abs(each.size()))
                    .max()
                    .orElse(1);
            for (int i = 0; i < others.size(); i++) {
                if (Math.abs(fit.residual(i)) > OTHERS * largest) {
                    return Optional.empty();
                }
            }
            double expected =
                    fit.estimate(p -> LeverEstimator.model(less, p, left)).value();
            return Math.abs(expected) > 0.1 * largest || Math.abs(left.size()) > 2 * largest
                    ? Optional.of(expected)
                    : Optional.empty();
        } catch (Refusal unseen) {
            return Optional.empty();
        }
    }

    /** As stated, or about a fit whose friction may be anything; 0 where there are too few readings. */
    private double scatter() {
        if (bench.scale() instanceof Noise.Stated stated) {
            return stated.sd();
        }
        try {
            return Regression.of(
                            (p, i) -> LeverEstimator.model(
                                    bench, p, bench.readings().get(i)),
                            bench.readings().stream()
                                    .mapToDouble(LeverReading::size)
                                    .toArray(),
                            new double[bench.tellsHorn() ? 5 : 3],
                            bench.scale())
                    .fit()
                    .noise();
        } catch (Refusal tooFew) {
            return 0;
        }
    }

    private void upsAndDowns() {
        double largest = bench.readings().stream()
                .mapToDouble(each -> Math.abs(each.size()))
                .max()
                .orElse(0);
        double tolerance = Math.max(TOLERANCE * largest, 2 * scatter());
        for (int i = 0; i < bench.readings().size(); i++) {
            LeverReading down = bench.readings().get(i);
            double[] up = bench.readings().stream()
                    .filter(each ->
                            each.way() == Way.UP && each.angle() == down.angle() && each.plates() == down.plates())
                    .mapToDouble(LeverReading::size)
                    .toArray();
            if (down.way() == Way.DOWN && up.length > 0 && down.size() - SweepCurves.mean(up) > 2 * tolerance) {
                remarks.add(named(Remark.refuses("down-above-up", ""), i, down, kind)
                        .then(", above the ")
                        .then(SweepCurves.mean(up), kind)
                        .then(" on the way up there: friction would be below zero; up and down may be exchanged"));
            }
        }
    }
}
