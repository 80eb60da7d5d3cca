package counterpull.bench.tubing;

import counterpull.bench.Estimate;
import counterpull.bench.Kind;
import counterpull.bench.Remark;
import counterpull.bench.Steps;
import counterpull.bench.fit.Noise;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What the fitted curve says about the readings and what the person should know about the result. */
final class Afterwards {
    /** A gap that chance gives once in 15,000 (normal). */
    private static final double CLEAR = 4;

    /** Stress at twice the natural length: latex tubing at most 0.86 MPa by its specification (A-A-50247C); half and twice as much allowed. */
    private static final double SOFTEST = 0.1e6;

    private static final double HARDEST = 2e6;

    /** Strain crystallisation begins there in simple tension (Hiraiwa 2023, RSC Advances 13). */
    private static final double CRYSTALS = 5.2;

    private final TubingBench bench;
    private final Sample sample;
    private final TubingResult result;
    private final List<Remark> remarks = new ArrayList<>();

    private Afterwards(TubingBench bench, Sample sample, TubingResult result) {
        this.bench = bench;
        this.sample = sample;
        this.result = result;
    }

    static List<Remark> of(TubingBench bench, Sample sample, TubingResult result) {
        Afterwards after = new Afterwards(bench, sample, result);
        after.natural();
        after.repeats();
        after.scatter();
        after.bend();
        after.worstReading();
        after.stress();
        after.preparation();
        after.lost();
        after.reach();
        return after.remarks;
    }

    private void natural() {
        double tape = result.lengths().tape().value();
        double fitted = result.lengths().fitted().value();
        if (Math.abs(fitted - tape) > CLEAR * sample.naturalSd) {
            remarks.add(
                    Remark.doubts("natural-length-disagrees", "the pulls start from ")
                            .then(fitted, Kind.LENGTH)
                            .then(", the tape said ")
                            .then(tape, Kind.LENGTH)
                            .then(
                                    ": measure the natural length again, and see that the scale shows nothing when nothing pulls"));
        }
        if (bench.natural().uncertainty().isEmpty()
                && bench.instruments().tape().isEmpty()
                && !bench.natural().saysItself()) {
            boolean alike = bench.natural().readings().size() > 1;
            remarks.add(Remark.note("natural-length-once", "nothing says how sure the natural length is: ")
                    .then(TapeReadings.ASSUMED, Kind.LENGTH)
                    .then(
                            alike
                                    ? " are assumed for each reading, since they agree to the last digit; read a finer division, or state the tape's accuracy"
                                    : " are assumed for one reading; measure it three times"));
        }
    }

    private void repeats() {
        repeats("natural length", bench.natural());
        bench.after().ifPresent(after -> repeats("natural length after the test", after));
    }

    private void repeats(String what, TapeReadings read) {
        OptionalDouble tape = bench.instruments().tape();
        if (read.beyond(tape)) {
            remarks.add(Remark.doubts("repeats-apart", "the readings of the " + what + " scatter by ")
                    .then(read.scatter(), Kind.LENGTH)
                    .then(", much more than the stated ")
                    .then(tape.getAsDouble(), Kind.LENGTH)
                    .then(" of the tape: their scatter counts; measure it again"));
        }
    }

    private void scatter() {
        if (!(sample.noise instanceof Noise.Stated stated)) {
            steps();
            return;
        }
        double squares = 0;
        for (int i = 0; i < sample.size(); i++) {
            double each = result.law().residuals().get(i) / (sample.spreads[i] * stated.sd());
            squares += each * each;
        }
        double left = Math.max(1, sample.size() - result.law().score().numbers());
        if (squares > left + CLEAR * Math.sqrt(2 * left) + CLEAR) {
            remarks.add(Remark.doubts("scatter-above-stated", "the readings lie off the curve by ")
                    .then(result.law().rms() * bench.piece().strands(), Kind.FORCE)
                    .then(", much more than the stated ")
                    .then(stated.sd() * bench.piece().strands(), Kind.FORCE)
                    .then(" of the scale: the band is too narrow"));
        }
    }

    private void steps() {
        double[] forces = NamedPull.stretching(bench.pulls()).stream()
                .mapToDouble(NamedPull::force)
                .toArray();
        double left = Math.max(1, forces.length - result.law().score().numbers());
        double scatter = result.law().rms()
                * Math.sqrt(forces.length / left)
                * bench.piece().strands();
        Steps.coarse("pull", Kind.FORCE, forces, scatter).ifPresent(remarks::add);
    }

    /** A line that no bent law could be weighed against. */
    private void bend() {
        boolean alone = result.laws().stream().noneMatch(each -> each.family() != Family.LINEAR && each.usable());
        if (result.chosen() == Family.LINEAR && alone) {
            remarks.add(
                    Remark.doubts("bend-not-seen", "so few as ")
                            .then(sample.size(), Kind.COUNT)
                            .then(
                                    " readings do not show the bend of its curve: a straight line stands in, rubber pulls more than that at short"
                                            + " lengths, by half and more, and the band does not hold it; read two lengths more"));
        }
    }

    private void worstReading() {
        List<Double> left = result.law().residuals();
        if (left.size() < 5) {
            return;
        }
        int worst = 0;
        for (int i = 1; i < left.size(); i++) {
            worst = Math.abs(left.get(i)) > Math.abs(left.get(worst)) ? i : worst;
        }
        double squares = 0;
        for (int i = 0; i < left.size(); i++) {
            squares += i == worst ? 0 : left.get(i) * left.get(i);
        }
        double others = Math.sqrt(
                squares / Math.max(1, left.size() - 1 - result.law().constants().size()));
        NamedPull pull = NamedPull.rising(NamedPull.stretching(bench.pulls())).get(worst);
        boolean large = Math.abs(left.get(worst)) > 0.02 * sample.forces[sample.size() - 1];
        if (large && Math.abs(left.get(worst)) > 2 * CLEAR * others) {
            remarks.add(Remark.doubts("off-the-curve", pull.name() + " at ")
                    .then(pull.length(), Kind.LENGTH)
                    .then(" lies ")
                    .then(left.get(worst) * bench.piece().strands(), Kind.FORCE)
                    .then(" off the curve of the others: take it again"));
        }
    }

    private void stress() {
        if (bench.piece().section().isEmpty()) {
            return;
        }
        double area = bench.piece().section().get().area();
        double last = sample.last();
        double natural = result.lengths().fitted().value();
        double young = result.rubber().law().slope(1) / area;
        double force = sample.forces[sample.size() - 1];
        // the slope from natural length to the last reading, as if the rubber were neo-Hookean
        double stretch = last / natural;
        double shear = force / area / (stretch - 1 / (stretch * stretch));
        double at2 = shear * 1.75;
        if (at2 < SOFTEST || at2 > HARDEST) {
            NamedPull pull =
                    NamedPull.rising(NamedPull.stretching(bench.pulls())).get(sample.size() - 1);
            remarks.add(Remark.doubts("stress-not-rubber", pull.name() + " (")
                    .then(pull.length(), Kind.LENGTH)
                    .then(", ")
                    .then(pull.force(), Kind.FORCE)
                    .then(") means about ")
                    .then(at2, Kind.STRESS)
                    .then(" at twice the natural length, and tubing has ")
                    .then(SOFTEST, Kind.STRESS)
                    .then(" to ")
                    .then(HARDEST, Kind.STRESS)
                    .then(": is the size across right, and the unit of every force? (slope at rest ")
                    .then(young, Kind.STRESS)
                    .then(")"));
        }
    }

    private void preparation() {
        if (bench.piece().preparation() == Preparation.CYCLED) {
            return;
        }
        String first = bench.piece().preparation() == Preparation.FIRST_STRETCH
                ? "this was the first stretch of the piece"
                : "nobody noted whether the piece was stretched before";
        remarks.add(Remark.doubts(
                "first-stretch",
                first
                        + ": rubber pulls harder the first time, most of it lost by the second; stretch it three to five times"
                        + " as far as it will be used, then read again, and keep only the later readings"));
    }

    private void lost() {
        result.loss().ifPresent(loss -> {
            if (loss.share().standing() == Estimate.Standing.AT_LIMIT
                    && loss.share().high() == 0) {
                remarks.add(Remark.doubts(
                        "no-loss", "letting go pulls as hard as stretching or harder: are the two ways swapped?"));
            } else if (loss.share().value() > 0.5) {
                remarks.add(Remark.doubts("loss-too-large", "the piece keeps ")
                        .then(loss.share().value(), Kind.SHARE)
                        .then(" of the work: more than rubber does; was the scale at rest for each pull?"));
            }
        });
        result.lengths().set().ifPresent(set -> {
            if (set.high() < 0) {
                remarks.add(Remark.doubts("set-negative", "the piece seems shorter after the test by ")
                        .then(-set.value(), Kind.SHARE)
                        .then(": measure both again"));
            }
        });
    }

    private void reach() {
        double stretch = sample.last() / result.lengths().fitted().value();
        if (stretch > CRYSTALS) {
            remarks.add(Remark.note("crystals", "the longest pull is ")
                    .then(stretch, Kind.NUMBER)
                    .then(" times the natural length: past ")
                    .then(CRYSTALS, Kind.NUMBER)
                    .then(" natural rubber crystallises, loses much more and takes a set"));
        }
    }
}
