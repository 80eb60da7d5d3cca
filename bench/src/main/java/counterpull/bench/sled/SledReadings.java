package counterpull.bench.sled;

import counterpull.bench.Kind;
import counterpull.bench.Remark;
import counterpull.bench.Way;
import counterpull.bench.fit.Noise;
import java.util.ArrayList;
import java.util.List;

/** What is wrong with a sled's readings before anything is fitted; every problem, each naming its reading. */
final class SledReadings {
    private static final double STEEPEST = Math.PI / 2;
    private static final double LEVEL = Math.toRadians(3);
    private static final double APART = Math.toRadians(4);
    private static final double ZERO = Math.toRadians(3);
    private static final double CLOSE = 5;
    /** A mean so many of its own standard deviations above another one is no chance; a sled that hardly rubs is not refused. */
    private static final double SURE = 3;

    private static final double MOST_FORCE = 2e4;
    private static final double MOST_PLATES = 1000;

    private final SledBench bench;
    private final List<Remark> remarks = new ArrayList<>();

    SledReadings(SledBench bench) {
        this.bench = bench;
    }

    List<Remark> remarks() {
        angles();
        plates();
        for (int i = 0; i < bench.pulls().size(); i++) {
            pull(i);
        }
        breakaways();
        if (remarks.stream().noneMatch(Remark::refuses)) {
            enough();
        }
        if (remarks.stream().noneMatch(Remark::refuses)) {
            new SledSlips(bench).remarks().forEach(remarks::add);
            upsAndDowns();
        }
        return remarks;
    }

    private void angles() {
        RailGauge gauge = bench.gauge();
        if (gauge.readings().isEmpty()) {
            remarks.add(Remark.refuses("no-angle", "no reading of the rail's angle: lay the gauge on the rail"));
            return;
        }
        for (int i = 0; i < gauge.readings().size(); i++) {
            angle(i, gauge.readings().get(i));
        }
        if (remarks.isEmpty()) {
            agreement(gauge);
        }
    }

    private void angle(int i, Inclination reading) {
        double mean = reading.mean();
        String name = "angle reading " + (i + 1);
        if (!Double.isFinite(mean)) {
            remarks.add(Remark.refuses("not-a-number", name + " is not a number"));
        } else if (Math.abs(mean) > STEEPEST || Math.abs(reading.laid()) > STEEPEST) {
            remarks.add(Remark.refuses("angle-past-upright", name + " is ")
                    .then(reading.laid(), Kind.ANGLE)
                    .then(", and no rail is steeper than ")
                    .then(STEEPEST, Kind.ANGLE)
                    .then(": a gauge that shows percent shows 100 at ")
                    .then(STEEPEST / 2, Kind.ANGLE));
        } else if (mean < LEVEL) {
            remarks.add(Remark.refuses("rail-level", name + " is ")
                    .then(mean, Kind.ANGLE)
                    .then(": below ")
                    .then(LEVEL, Kind.ANGLE)
                    .then(" pulls do not weigh a carriage; a rail's angle is read as positive"));
        }
    }

    private void agreement(RailGauge gauge) {
        double middle =
                median(gauge.counting().stream().mapToDouble(Inclination::mean).toArray());
        for (int i = 0; i < gauge.readings().size(); i++) {
            Inclination reading = gauge.readings().get(i);
            String name = "angle reading " + (i + 1);
            if (Math.abs(reading.mean() - middle) > APART) {
                remarks.add(Remark.doubts("angles-differ", name + ", ")
                        .then(reading.mean(), Kind.ANGLE)
                        .then(", lies ")
                        .then(Math.abs(reading.mean() - middle), Kind.ANGLE)
                        .then(" from the middle of the others: read it again"));
            }
            if (Math.abs(reading.zero()) > ZERO) {
                remarks.add(Remark.doubts("gauge-zero", name + " changed by ")
                        .then(2 * Math.abs(reading.zero()), Kind.ANGLE)
                        .then(" when the gauge was turned end for end: set its zero, or lay it on the same place"));
            }
        }
        if (!(gauge.budget().standardError() > 1e-6)) {
            remarks.add(Remark.refuses(
                    "angle-accuracy",
                    "angle reading 1 stands alone or is the same each time, and the gauge's accuracy is not stated: "
                            + "turn the gauge end for end and read again, or state its accuracy"));
        }
    }

    static double median(double[] values) {
        double[] sorted = values.clone();
        java.util.Arrays.sort(sorted);
        int n = sorted.length;
        return (sorted[(n - 1) / 2] + sorted[n / 2]) / 2;
    }

    private void plates() {
        double share = bench.riding().platesShare();
        if (!(share >= 0 && share <= 0.5)) {
            remarks.add(Remark.refuses("plates-uncertainty", "the plates' uncertainty is ")
                    .then(share, Kind.SHARE)
                    .then(": it is a share from 0 to ")
                    .then(0.5, Kind.SHARE));
        }
    }

    private void pull(int i) {
        Pull pull = bench.pulls().get(i);
        String name = name(i, pull);
        if (!Double.isFinite(pull.force()) || !Double.isFinite(pull.plates())) {
            remarks.add(Remark.refuses("not-a-number", name + " has something that is not a number"));
            return;
        }
        if (pull.force() <= 0 && pull.way() == Way.UP || pull.force() < 0) {
            remarks.add(
                    Remark.refuses("force-below-zero", name + " reads ")
                            .then(pull.force(), Kind.FORCE)
                            .then(
                                    ": a scale that pulls reads above zero; where the carriage does not come back by itself, leave that pull out"));
        } else if (pull.force() > MOST_FORCE) {
            remarks.add(Remark.refuses("force-too-large", name + " reads ")
                    .then(pull.force(), Kind.FORCE)
                    .then(", more than ")
                    .then(MOST_FORCE, Kind.FORCE)
                    .then(": check its unit"));
        }
        load(name, pull.plates());
    }

    private void load(String name, double plates) {
        if (plates < 0 || plates > MOST_PLATES) {
            remarks.add(Remark.refuses("plates-impossible", name + " has ")
                    .then(plates, Kind.MASS)
                    .then(" of plates: from ")
                    .then(0, Kind.MASS)
                    .then(" to ")
                    .then(MOST_PLATES, Kind.MASS)
                    .then(" can be read"));
        }
    }

    static String name(int i, Pull pull) {
        return "pull " + (i + 1) + " (" + pull.way().words() + ")";
    }

    private void breakaways() {
        for (int i = 0; i < bench.breakaways().size(); i++) {
            Breakaway each = bench.breakaways().get(i);
            String name = "breakaway reading " + (i + 1);
            if (!(each.force() > 0) || !Double.isFinite(each.force())) {
                remarks.add(Remark.refuses("force-below-zero", name + " reads ")
                        .then(each.force(), Kind.FORCE)
                        .then(": it is above zero"));
            }
            load(name, each.plates());
        }
    }

    private void enough() {
        int ups = count(Way.UP);
        int downs = count(Way.DOWN);
        if (ups == 0 || downs == 0) {
            remarks.add(Remark.refuses("one-way-only", "there are ")
                    .then(ups, Kind.COUNT)
                    .then(" pulls up and ")
                    .then(downs, Kind.COUNT)
                    .then(" down: friction shows in their difference alone, take one each way or more"));
            return;
        }
        int needed = needed();
        if (bench.pulls().size() < needed) {
            remarks.add(Remark.refuses("too-few-pulls", "pull ")
                    .then(bench.pulls().size(), Kind.COUNT)
                    .then(" is the last, and ")
                    .then(needed, Kind.COUNT)
                    .then(" are needed: take each pull three times, or state the scale's accuracy"));
        }
        if (bench.upright()) {
            remarks.add(Remark.note("rail-upright", "the rail stands at ")
                    .then(bench.gauge().mean(), Kind.ANGLE)
                    .then(": plates hardly press on it, so friction is said as one number for every load"));
        } else {
            loads();
        }
    }

    /** Carriage and friction, its part that grows with load, and, as scatter has to show beside what gauge and plates leave open, two more. */
    private int needed() {
        boolean loads = bench.loads().length > 1;
        int unknown = loads && !bench.upright() ? 3 : 2;
        int scatter = loads ? 2 : 1;
        return bench.scale() instanceof Noise.Stated ? unknown : unknown + scatter;
    }

    private void loads() {
        double[] loads = bench.loads();
        double between = loads[loads.length - 1] - loads[0];
        if (loads.length == 1) {
            remarks.add(Remark.doubts("one-load", "all pulls were read with ")
                    .then(loads[0], Kind.MASS)
                    .then(
                            " of plates: friction is known at that load alone, and cannot be split into its constant part and what grows with"
                                    + " load; pull again with 50 kg more or so"));
        } else if (between < CLOSE) {
            remarks.add(Remark.doubts("loads-close", "the loads differ by ")
                    .then(between, Kind.MASS)
                    .then(" alone: friction that grows with load is hardly seen; pull again with 50 kg more or so"));
        }
    }

    private int count(Way way) {
        return (int) bench.pulls().stream().filter(pull -> pull.way() == way).count();
    }

    /** At each load, down may lie above up by no more than the readings scatter. */
    private void upsAndDowns() {
        double scatter = tolerance();
        for (double load : bench.loads()) {
            double[] up = forces(Way.UP, load);
            double[] down = forces(Way.DOWN, load);
            if (up.length == 0 || down.length == 0) {
                continue;
            }
            int worst = worstDown(load);
            double most = bench.pulls().get(worst).force()
                    - java.util.Arrays.stream(up).max().orElseThrow();
            double above = mean(down) - mean(up);
            double allowed = SURE * scatter * Math.sqrt(1.0 / up.length + 1.0 / down.length);
            if (above > allowed || most > 6 * scatter) {
                remarks.add(Remark.refuses(
                                "down-above-up", name(worst, bench.pulls().get(worst)) + " reads ")
                        .then(bench.pulls().get(worst).force(), Kind.FORCE)
                        .then(", above the pulls up with the same ")
                        .then(load, Kind.MASS)
                        .then(" of plates, ")
                        .then(mean(up), Kind.FORCE)
                        .then(": friction would be below zero; up and down may be exchanged"));
            }
        }
    }

    private int worstDown(double load) {
        int worst = -1;
        for (int i = 0; i < bench.pulls().size(); i++) {
            Pull pull = bench.pulls().get(i);
            boolean here = pull.way() == Way.DOWN && pull.plates() == load;
            if (here && (worst < 0 || pull.force() > bench.pulls().get(worst).force())) {
                worst = i;
            }
        }
        return worst;
    }

    private double tolerance() {
        if (bench.scale() instanceof Noise.Stated stated) {
            return stated.sd();
        }
        double about = 0.01 * mean(bench.forces());
        double scatter = new PullGroups(bench).scatter();
        return scatter > 0
                ? Math.max(about / 2, scatter)
                : Math.max(about, PlainLines.of(bench).scatter().orElse(0.0));
    }

    private double[] forces(Way way, double load) {
        return bench.pulls().stream()
                .filter(pull -> pull.way() == way && pull.plates() == load)
                .mapToDouble(Pull::force)
                .toArray();
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value / values.length;
        }
        return sum;
    }
}
