package counterpull.bench.machine;

import counterpull.bench.Estimate;
import counterpull.bench.Kind;
import counterpull.bench.Remark;
import counterpull.bench.Steps;
import counterpull.bench.fit.Noise;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a fitted stack says about its own readings. */
final class StackChecks {
    private static final double MUCH = 0.3;
    private static final double IMPOSSIBLE = 0.9;
    private static final double FAR = 0.15;

    private final StackFound found;
    private final List<Remark> remarks = new ArrayList<>();

    StackChecks(StackFound found) {
        this.found = found;
    }

    List<Remark> remarks() {
        friction();
        ratio();
        pins();
        found.constant().ifPresent(this::constant);
        steps();
        oneWay();
        return remarks;
    }

    private void steps() {
        StackBench bench = found.bench();
        if (bench.scale() instanceof Noise.FromScatter) {
            double[] forces =
                    bench.pulls().stream().mapToDouble(StackPull::force).toArray();
            Steps.coarse("pull", Kind.FORCE, forces, found.noise()).ifPresent(remarks::add);
        }
    }

    /** What was pulled one way alone is in nothing that was found. */
    private void oneWay() {
        List<StackPull> pulls = found.bench().pulls();
        for (int i = 0; i < pulls.size(); i++) {
            StackPull pull = pulls.get(i);
            if (!PinGroup.of(pulls, pull.printed(), pull.added()).bothWays()) {
                remarks.add(Remark.doubts("pin-one-way", StackReadings.name(i, pull) + " at the pin of ")
                        .then(pull.printed(), Kind.MASS)
                        .then(" is left out: there is no pull the other way there to lay beside it"));
            }
        }
    }

    private void friction() {
        double share = found.friction().value();
        if (share >= IMPOSSIBLE) {
            remarks.add(Remark.refuses("friction-too-large", "friction would take ")
                    .then(share, Kind.SHARE)
                    .then(" of the pull each way: at pull 1's pin the stack hangs or the line is caught"));
        } else if (share > MUCH) {
            remarks.add(
                    Remark.doubts("friction-large", "friction takes ")
                            .then(share, Kind.SHARE)
                            .then(
                                    " of the pull each way: a pulley may be stuck or a rod dry; look before anybody trains on it"));
        }
        if (found.friction().standing() == Estimate.Standing.AT_LIMIT) {
            remarks.add(Remark.doubts(
                            "friction-at-zero",
                            "the pulls point to friction below zero, which cannot be: it is taken as 0, and lies below ")
                    .then(found.friction().high(), Kind.SHARE));
        }
    }

    private void ratio() {
        if (found.ratio().isEmpty()) {
            remarks.add(
                    Remark.doubts(
                            "ratio-unknown",
                            "neither ways of handle and stack nor weighed mass laid on the stack are given: the pull at each pin is known, but not its mass,"
                                    + " nor what starting and stopping feels; measure how far the stack rises for a way of the handle"));
        }
        Optional<Estimate> other = found.ratioByMass();
        if (found.ratio().isPresent() && other.isPresent()) {
            Estimate one = found.ratio().get();
            double apart = Math.abs(one.value() - other.get().value());
            if (apart > Math.hypot(one.halfWidth(), other.get().halfWidth())) {
                remarks.add(Remark.doubts("ratios-disagree", "ways and rises give a ratio of ")
                        .then(one.value(), Kind.NUMBER)
                        .then(", mass laid on the stack gives ")
                        .then(other.get().value(), Kind.NUMBER)
                        .then(": measure run 1 again, and weigh what was laid on"));
            }
        }
    }

    private void pins() {
        double sum = 0;
        double printed = 0;
        for (PinFound pin : found.pins()) {
            sum += pin.mass().map(Estimate::value).orElse(0.0);
            printed += pin.printed();
        }
        double factor = sum / printed;
        if (found.ratio().isEmpty() || found.pins().isEmpty()) {
            return;
        }
        if (near(factor, 0.45359237)) {
            remarks.add(all("pins-in-pounds", factor, "the pins may be printed in pounds"));
        } else if (near(factor, 1 / 9.80665) || near(factor, 0.1)) {
            remarks.add(all("scale-in-kilograms", factor, "the scale's kilograms may have been written as newtons"));
        } else if (near(factor, 9.80665) || near(factor, 2.2046226)) {
            remarks.add(all("unit-slip", factor, "a unit slipped in all pulls or in all pins"));
        } else {
            each();
        }
    }

    private static boolean near(double ratio, double factor) {
        return Math.abs(ratio / factor - 1) < 0.06;
    }

    private Remark all(String code, double factor, String why) {
        return Remark.refuses(code, "from pull 1 on, the pins weigh ")
                .then(factor, Kind.SHARE)
                .then(" of what is printed on them: " + why);
    }

    private void each() {
        for (PinFound pin : found.pins()) {
            Estimate error = pin.error().orElseThrow();
            if (Math.abs(error.value()) > FAR * pin.printed() && !error.holds(0)) {
                remarks.add(
                        Remark.doubts("pin-far-off", "the pin printed ")
                                .then(pin.printed(), Kind.MASS)
                                .then(" weighs ")
                                .then(pin.mass().orElseThrow().value(), Kind.MASS)
                                .then(
                                        ": the line may hang on another ratio, the pin's number may be a mark and no mass, or its pulls slipped"));
            }
        }
    }

    private void constant(Estimate constant) {
        if (!constant.holds(0) && Math.abs(constant.value()) > 2) {
            remarks.add(
                    Remark.doubts("friction-not-a-share", "friction is not a share of the pull alone: ")
                            .then(constant.value(), Kind.FORCE)
                            .then(
                                    " would be left with nothing on the pin; the share said here is that of the pins that were read"));
        }
    }
}
