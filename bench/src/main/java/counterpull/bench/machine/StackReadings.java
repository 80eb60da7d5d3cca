package counterpull.bench.machine;

import counterpull.bench.Kind;
import counterpull.bench.Remark;
import counterpull.bench.Slip;
import counterpull.bench.Way;
import counterpull.bench.fit.Noise;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is wrong with a stack's readings before anything is fitted; each problem names its reading. */
final class StackReadings {
    private static final double LONGEST = 10;
    private static final double LEAST_RATIO = 0.01;
    private static final double MOST_RATIO = 20;
    private static final double OTHERS = 0.25;
    private static final double TOLERANCE = 0.01;

    private final StackBench bench;
    private final List<Remark> remarks = new ArrayList<>();

    StackReadings(StackBench bench) {
        this.bench = bench;
    }

    List<Remark> remarks() {
        for (int i = 0; i < bench.runs().size(); i++) {
            run(i);
        }
        for (int i = 0; i < bench.pulls().size(); i++) {
            pull(i);
        }
        alone();
        for (int i = 0; i < bench.moving().size(); i++) {
            double mass = bench.moving().get(i);
            if (!(mass >= 0 && mass <= 200)) {
                remarks.add(Remark.refuses(
                                "moving-mass-impossible", "weighing " + (i + 1) + " of what moves with the line is ")
                        .then(mass, Kind.MASS)
                        .then(": from 0 to 200 kg can be"));
            }
        }
        if (remarks.isEmpty()) {
            enough();
        }
        if (remarks.isEmpty()) {
            ratios();
            slips();
            upsAndDowns();
        }
        return remarks;
    }

    private void run(int i) {
        LineRun run = bench.runs().get(i);
        String name = "run " + (i + 1);
        if (!Double.isFinite(run.way()) || !Double.isFinite(run.rise())) {
            remarks.add(Remark.refuses("not-a-number", name + " has something that is not a number"));
        } else if (run.rise() <= 0 || run.way() <= 0) {
            remarks.add(Remark.refuses("rise-below-zero", name + " has a way of ")
                    .then(run.way(), Kind.LENGTH)
                    .then(" and a rise of ")
                    .then(run.rise(), Kind.LENGTH)
                    .then(": both are above 0; the tape may have been read from its other end"));
        } else if (run.way() > LONGEST || run.rise() > LONGEST) {
            remarks.add(Remark.refuses("way-too-long", name + " has a way of ")
                    .then(run.way(), Kind.LENGTH)
                    .then(" and a rise of ")
                    .then(run.rise(), Kind.LENGTH)
                    .then(": no more than ")
                    .then(LONGEST, Kind.LENGTH)
                    .then(" can be, check their unit"));
        }
    }

    static String name(int i, StackPull pull) {
        return "pull " + (i + 1) + " (" + pull.way().words() + ")";
    }

    private void pull(int i) {
        StackPull pull = bench.pulls().get(i);
        String name = name(i, pull);
        if (!Double.isFinite(pull.force()) || !Double.isFinite(pull.printed()) || !Double.isFinite(pull.added())) {
            remarks.add(Remark.refuses("not-a-number", name + " has something that is not a number"));
        } else if (pull.force() <= 0 && pull.way() == Way.UP || pull.force() < 0) {
            remarks.add(Remark.refuses("force-below-zero", name + " reads ")
                    .then(pull.force(), Kind.FORCE)
                    .then(": a scale at the handle reads above zero"));
        } else if (pull.printed() <= 0 || pull.printed() > 1000 || pull.added() < 0 || pull.added() > 200) {
            remarks.add(Remark.refuses("pin-impossible", name + " is at a pin of ")
                    .then(pull.printed(), Kind.MASS)
                    .then(" with ")
                    .then(pull.added(), Kind.MASS)
                    .then(" on top: a pin has more than 0 and up to 1000 kg, and up to 200 kg lie on it"));
        }
    }

    private void alone() {
        long ups = bench.alone().stream().filter(each -> each.way() == Way.UP).count();
        long downs = bench.alone().size() - ups;
        if ((ups == 0) != (downs == 0)) {
            remarks.add(Remark.refuses("alone-one-way", "what handle or carriage read alone was read ")
                    .then(ups, Kind.COUNT)
                    .then(" times up and ")
                    .then(downs, Kind.COUNT)
                    .then(" times down: both ways are needed to take it off"));
        }
        for (int i = 0; i < bench.alone().size(); i++) {
            if (!(bench.alone().get(i).force() >= 0)) {
                remarks.add(Remark.refuses("force-below-zero", "reading " + (i + 1) + " of the handle alone is ")
                        .then(bench.alone().get(i).force(), Kind.FORCE)
                        .then(": it is 0 or more"));
            }
        }
    }

    private void enough() {
        StackSums sums = new StackSums(bench);
        if (sums.groups().isEmpty()) {
            int ups = (int)
                    bench.pulls().stream().filter(pull -> pull.way() == Way.UP).count();
            remarks.add(Remark.refuses("one-way-only", "there are ")
                    .then(ups, Kind.COUNT)
                    .then(" pulls up and ")
                    .then(bench.pulls().size() - ups, Kind.COUNT)
                    .then(" down, and at no pin both: friction shows in their difference alone"));
        }
        if (bench.runs().size() == 1 && bench.tape() instanceof Noise.FromScatter) {
            remarks.add(Remark.refuses(
                    "tape-accuracy",
                    "run 1 stands alone and the tape's accuracy is not stated: measure three runs, or state it"));
        }
    }

    private void ratios() {
        int n = bench.runs().size();
        double[] ratio = bench.runs().stream()
                .mapToDouble(run -> run.way() / run.rise())
                .sorted()
                .toArray();
        double middle = n == 0 ? 1 : (ratio[(n - 1) / 2] + ratio[n / 2]) / 2;
        for (int i = 0; i < n; i++) {
            LineRun run = bench.runs().get(i);
            double own = run.way() / run.rise();
            if (own < LEAST_RATIO || own > MOST_RATIO) {
                remarks.add(Remark.refuses("ratio-impossible", "run " + (i + 1) + " gives a ratio of ")
                        .then(own, Kind.NUMBER)
                        .then(": from 0.01 to 20 can be; way and rise may be in different units"));
            } else if (n > 2 && Math.abs(own / middle - 1) > OTHERS) {
                remarks.add(Remark.refuses("runs-differ", "run " + (i + 1) + " gives a ratio of ")
                        .then(own, Kind.NUMBER)
                        .then(", and the others about ")
                        .then(middle, Kind.NUMBER)
                        .then(": measure it again" + inches(own / middle)));
            }
        }
        if (n > 0 && middle < 0.9 && middle >= LEAST_RATIO) {
            remarks.add(
                    Remark.doubts("rise-above-way", "by run 1 the stack rises further than the handle moves (ratio ")
                            .then(middle, Kind.NUMBER)
                            .then("): most machines have 1 or 2; way and rise may be exchanged"));
        }
    }

    private static String inches(double factor) {
        boolean mixed = Math.abs(Math.abs(Math.log(factor)) - Math.log(2.54)) < 0.08;
        return mixed ? "; centimetres and inches may have been mixed" : "";
    }

    /** Pull for each printed kilogram at the same way, of all other pulls in their median. */
    private void slips() {
        for (int i = 0; i < bench.pulls().size(); i++) {
            int reading = i;
            StackPull pull = bench.pulls().get(i);
            Optional<Double> per = perKilogram(i);
            double expected = per.orElse(0.0) * (pull.printed() + pull.added());
            if (expected > 0 && pull.force() > 0) {
                Optional<Slip> slip = Slip.ofTen(pull.force(), expected, 0.45);
                slip.ifPresent(found -> remarks.add(Remark.refuses("slip", name(reading, pull) + " reads ")
                        .then(pull.force(), Kind.FORCE)
                        .then(", about " + found.times() + " the ")
                        .then(expected, Kind.FORCE)
                        .then(" that the other pulls say: " + found.words())));
            }
        }
    }

    private Optional<Double> perKilogram(int without) {
        double[] per = java.util.stream.IntStream.range(0, bench.pulls().size())
                .filter(k -> k != without)
                .mapToObj(bench.pulls()::get)
                .mapToDouble(pull -> pull.force() / (pull.printed() + pull.added()))
                .sorted()
                .toArray();
        return per.length < 2 ? Optional.empty() : Optional.of((per[(per.length - 1) / 2] + per[per.length / 2]) / 2);
    }

    private void upsAndDowns() {
        StackSums sums = new StackSums(bench);
        for (PinGroup group : sums.groups()) {
            double tolerance = Math.max(sums.scatter(), TOLERANCE * group.meanUp() / 3);
            if (group.meanDown() - group.meanUp() > 3 * tolerance * Math.sqrt(group.shares())) {
                int worst = worst(group);
                remarks.add(Remark.refuses(
                                "down-above-up", name(worst, bench.pulls().get(worst)) + " at the pin of ")
                        .then(group.printed(), Kind.MASS)
                        .then(" reads ")
                        .then(bench.pulls().get(worst).force(), Kind.FORCE)
                        .then(", above the pulls up there, ")
                        .then(group.meanUp(), Kind.FORCE)
                        .then(": friction would be below zero; up and down may be exchanged"));
            }
        }
    }

    private int worst(PinGroup group) {
        int worst = -1;
        for (int i = 0; i < bench.pulls().size(); i++) {
            StackPull pull = bench.pulls().get(i);
            boolean here = pull.way() == Way.DOWN && pull.printed() == group.printed() && pull.added() == group.added();
            if (here && (worst < 0 || pull.force() > bench.pulls().get(worst).force())) {
                worst = i;
            }
        }
        return worst;
    }
}
