package counterpull.bench.machine;

import counterpull.bench.Estimate;
import counterpull.bench.Kind;
import counterpull.bench.Remark;
import counterpull.bench.Steps;
import counterpull.bench.fit.Noise;
import java.util.ArrayList;
import java.util.List;

/** What a fitted lever says about its own readings. */
final class LeverChecks {
    private static final double CLEAR = 4;

    private final LeverFound found;
    private final List<Remark> remarks = new ArrayList<>();

    LeverChecks(LeverFound found) {
        this.found = found;
    }

    List<Remark> remarks() {
        if (found.moment().value() < CLEAR * found.moment().standardError()) {
            remarks.add(
                    Remark.doubts("lever-balanced", "the lever's own moment, ")
                            .then(found.moment().value(), Kind.TORQUE)
                            .then(
                                    ", hardly stands out of the scatter: it is all but balanced, and where its centre of mass lies is not known"));
        }
        if (found.friction().standing() == Estimate.Standing.AT_LIMIT) {
            remarks.add(Remark.doubts(
                            "friction-at-zero",
                            "the readings point to friction below zero, which cannot be: it is taken as 0, and lies below ")
                    .then(found.friction().high(), Kind.TORQUE));
        }
        remarks.add(
                Remark.note(
                                "mass-not-known",
                                "slow readings show the lever's mass times the distance of its centre of mass, ")
                        .then(found.moment().value(), Kind.TORQUE)
                        .then(
                                " of weight, and neither of them apart, nor its inertia: weigh the lever where it can be taken off"));
        found.horn().ifPresent(this::horn);
        LeverBench bench = found.bench();
        if (bench.scale() instanceof Noise.FromScatter) {
            double[] sizes =
                    bench.readings().stream().mapToDouble(LeverReading::size).toArray();
            Kind kind = bench.hold().byForce() ? Kind.FORCE : Kind.TORQUE;
            Steps.coarse("reading", kind, sizes, found.fit().noise()).ifPresent(remarks::add);
        }
        return remarks;
    }

    private void horn(LeverFound.HornFound horn) {
        found.bench().horn().ifPresent(tape -> {
            double apart = Math.abs(horn.radius().value() - tape.radius());
            double allowed = Math.hypot(1.3 * horn.radius().halfWidth(), 2 * tape.sd());
            if (apart > allowed) {
                double ratio = horn.radius().value() / tape.radius();
                remarks.add(said(horn, tape, ratio));
            }
        });
    }

    private static Remark said(LeverFound.HornFound horn, HornTape tape, double ratio) {
        Remark said = Remark.doubts("horn-disagrees", "by the readings with plates the horn is ")
                .then(horn.radius().value(), Kind.LENGTH)
                .then(" from the pivot, by the tape ")
                .then(tape.radius(), Kind.LENGTH);
        if (Math.abs(ratio / 0.45359237 - 1) < 0.06) {
            return said.then(": the plates' pounds may have been written as kilograms");
        }
        if (Math.abs(ratio * 9.80665 - 1) < 0.06 || Math.abs(ratio * 10 - 1) < 0.06) {
            return said.then(": the scale's kilograms may have been written as newtons");
        }
        return said.then(": measure the horn and the scale's arm again, and weigh a plate");
    }
}
