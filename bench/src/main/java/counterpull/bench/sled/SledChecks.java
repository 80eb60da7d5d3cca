package counterpull.bench.sled;

import counterpull.bench.Estimate;
import counterpull.bench.Kind;
import counterpull.bench.Remark;
import counterpull.bench.Steps;
import counterpull.bench.fit.Noise;
import counterpull.engine.Constants;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a fitted sled says about its own readings: do gauge, plates and scale agree, is friction possible, does a pull stand apart. */
final class SledChecks {
    private static final double MUCH = 0.4;
    private static final double DISAGREES = 1.3;
    private static final double NEAR = 0.05;

    private final SledFound found;
    private final SledBench bench;
    private final List<Remark> remarks = new ArrayList<>();

    SledChecks(SledFound found) {
        this.found = found;
        bench = found.bench();
    }

    List<Remark> remarks() {
        found.loads().ifPresent(check -> {
            if (Math.abs(check.disagreement()) > DISAGREES) {
                remarks.add(disagreement(check));
            }
        });
        mass();
        friction();
        apart();
        scatter();
        breakaway();
        return remarks;
    }

    /** Which of plates, scale and gauge the slope points at, in words. */
    private Remark disagreement(LoadCheck check) {
        double ratio = check.found().value() / check.expected().value();
        UnitSlip nearest = null;
        double least = NEAR;
        for (UnitSlip slip : UnitSlip.values()) {
            double off = Math.abs(Math.log(Math.abs(ratio) / slip.ratio));
            if (ratio > 0 && off < least) {
                nearest = slip;
                least = off;
            }
        }
        return nearest == null ? suspect(check, ratio) : refused(nearest.code, check, nearest.why);
    }

    /** What makes all pulls, or all plates, so many times what they should be. */
    private enum UnitSlip {
        SCALE_IN_KILOGRAMS(1 / 9.80665, "scale-in-kilograms", "the scale's kilograms may have been written as newtons"),
        TENTH(0.1, "slip-in-all", "a decimal place slipped in all pulls or in all plates"),
        TENFOLD(10, "slip-in-all", TENTH.why),
        PLATES_IN_POUNDS(0.45359237, "plates-in-pounds", "the plates' pounds may have been written as kilograms"),
        PLATES_AS_POUNDS(2.2046226, "plates-in-pounds", "the plates' kilograms may have been written as pounds"),
        SCALE_IN_POUNDS(1 / 4.4482216, "scale-in-pounds", "the scale's pounds may have been written as newtons"),
        SCALE_AS_POUNDS(4.4482216, "scale-in-pounds", "the scale's newtons may have been written as pounds");

        private final double ratio;
        private final String code;
        private final String why;

        UnitSlip(double ratio, String code, String why) {
            this.ratio = ratio;
            this.code = code;
            this.why = why;
        }
    }

    private Remark refused(String code, LoadCheck check, String why) {
        return slope(Remark.refuses(code, ""), check).then(": " + why);
    }

    private Remark slope(Remark begun, LoadCheck check) {
        double first = bench.loads()[0];
        double last = bench.loads()[bench.loads().length - 1];
        return begun.then("between the pulls with ")
                .then(first, Kind.MASS)
                .then(" and those with ")
                .then(last, Kind.MASS)
                .then(" of plates the mean of up and down grew by ")
                .then(check.found().value() * (last - first), Kind.FORCE)
                .then(", and by gauge and plates it should by ")
                .then(check.expected().value() * (last - first), Kind.FORCE);
    }

    private Remark suspect(LoadCheck check, double ratio) {
        Remark said = slope(Remark.doubts("loads-disagree", ""), check);
        double sine = check.found().value() / Constants.STANDARD_GRAVITY;
        double width = 1.5 * check.found().halfWidth() / Constants.STANDARD_GRAVITY + 0.01;
        double theta = found.angle().value();
        double asPercent = Math.atan(Math.toDegrees(theta) / 100);
        if (Math.abs(sine - Math.cos(theta)) < width) {
            return said.then(": the gauge may have been read from the plumb line, and the rail stands at ")
                    .then(Math.PI / 2 - theta, Kind.ANGLE);
        }
        if (Math.abs(sine - Math.sin(asPercent)) < width) {
            return said.then(": the gauge may have been read in percent, and the rail stands at ")
                    .then(asPercent, Kind.ANGLE);
        }
        said = said.then(": either each plate weighs ")
                .then(ratio, Kind.SHARE)
                .then(" of what is written on it (weigh one), ");
        if (Math.abs(sine) <= 1) {
            said = said.then("or the rail stands at ")
                    .then(Math.asin(sine), Kind.ANGLE)
                    .then(" (lay the gauge again), ");
        }
        return said.then("or the scale reads wrong or pulled askew (hang a known weight on it; pull along the rail)");
    }

    private void mass() {
        if (!(found.mass().value() > 0)) {
            remarks.add(
                    Remark.refuses("carriage-below-zero", "the carriage would weigh ")
                            .then(found.mass().value(), Kind.MASS)
                            .then(
                                    ": the pulls are too small for the plates that were on; pull 1 or its plates are in the wrong unit"));
        } else if (found.mass().value() > 2000) {
            remarks.add(Remark.refuses("carriage-too-heavy", "the carriage would weigh ")
                    .then(found.mass().value(), Kind.MASS)
                    .then(": the pulls are too large, or the angle is wrong"));
        }
    }

    private void friction() {
        if (found.friction() instanceof SledFriction.Apart apart) {
            limit(apart.constant(), "the constant part of friction");
            limit(apart.coefficient(), "the part of friction that grows with load");
            if (apart.coefficient().value() > 1) {
                remarks.add(Remark.refuses("friction-too-large", "the friction coefficient would be ")
                        .then(apart.coefficient().value(), Kind.NUMBER)
                        .then(": above 1 nothing slides; check the pulls up with the most plates"));
            }
        } else if (found.friction() instanceof SledFriction.Together together) {
            limit(together.force(), "friction");
        }
        double load = bench.loads()[0];
        double weight = found.lines().weight(load).value();
        double friction = found.lines().pull(counterpull.bench.Way.UP, load).value() - weight;
        if (weight > 0 && friction > MUCH * weight) {
            remarks.add(Remark.doubts("friction-large", "with ")
                    .then(load, Kind.MASS)
                    .then(" of plates friction is ")
                    .then(friction, Kind.FORCE)
                    .then(" beside ")
                    .then(weight, Kind.FORCE)
                    .then(" of weight along the rail: a wheel may be stuck, or the pulls were jerky"));
        }
    }

    private void limit(Estimate part, String words) {
        if (part.standing() == Estimate.Standing.AT_LIMIT) {
            remarks.add(Remark.doubts(
                            "friction-at-zero",
                            "the pulls point to " + words
                                    + " below zero, which cannot be: it is taken as 0, and lies below ")
                    .then(
                            part.high(),
                            bench.loads().length > 1 && words.startsWith("the part") ? Kind.NUMBER : Kind.FORCE));
        }
    }

    /** Repeats are compared with the middle of their own kind, by a scatter that one bad reading does not hide in. */
    private void apart() {
        PullGroups groups = new PullGroups(bench);
        for (int i = 0; i < bench.pulls().size(); i++) {
            double off = groups.off(i);
            if (Math.abs(off) > groups.tolerance()) {
                remarks.add(Remark.doubts(
                                "stands-apart",
                                SledReadings.name(i, bench.pulls().get(i)) + " reads ")
                        .then(bench.pulls().get(i).force(), Kind.FORCE)
                        .then(", ")
                        .then(Math.abs(off), Kind.FORCE)
                        .then(off > 0 ? " above" : " below")
                        .then(" its fellows, which scatter by ")
                        .then(groups.scatter(), Kind.FORCE)
                        .then(": read it again"));
            }
        }
    }

    private void scatter() {
        if (bench.scale() instanceof Noise.FromScatter) {
            Steps.coarse("pull", Kind.FORCE, bench.forces(), found.lines().noise())
                    .ifPresent(remarks::add);
        }
        Optional<Double> scatter = PlainLines.of(bench).scatter();
        if (bench.scale() instanceof Noise.Stated stated && scatter.isPresent() && scatter.get() > 2.5 * stated.sd()) {
            remarks.add(Remark.doubts("scatter-above-stated", "the pulls scatter by ")
                    .then(scatter.get(), Kind.FORCE)
                    .then(", more than the ")
                    .then(stated.sd(), Kind.FORCE)
                    .then(" that was stated: pull more evenly, or leave the statement out so that the scatter counts"));
        }
    }

    private void breakaway() {
        for (int i = 0; i < bench.breakaways().size(); i++) {
            Breakaway each = bench.breakaways().get(i);
            double sliding =
                    found.lines().pull(counterpull.bench.Way.UP, each.plates()).low();
            if (each.force() < sliding) {
                remarks.add(Remark.doubts("breakaway-below-sliding", "breakaway reading " + (i + 1) + ", ")
                        .then(each.force(), Kind.FORCE)
                        .then(", lies below the ")
                        .then(
                                found.lines()
                                        .pull(counterpull.bench.Way.UP, each.plates())
                                        .value(),
                                Kind.FORCE)
                        .then(" that keeps it moving: it is the largest reading as it starts"));
            }
        }
    }
}
