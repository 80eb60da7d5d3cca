package counterpull.bench.machine;

import counterpull.bench.Estimate;
import counterpull.bench.Way;
import counterpull.bench.fit.Noise;
import counterpull.bench.fit.Quotient;
import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import java.util.ArrayList;
import java.util.List;

/** Pulls of a stack by pin, what is read alone taken off, and their noise. */
final class StackSums {
    private final StackBench bench;
    private final List<PinGroup> groups = new ArrayList<>();
    private final double[] aloneUp;
    private final double[] aloneDown;

    StackSums(StackBench bench) {
        this.bench = bench;
        for (StackPull pull : bench.pulls()) {
            PinGroup group = PinGroup.of(bench.pulls(), pull.printed(), pull.added());
            boolean first = groups.stream()
                    .noneMatch(other -> other.printed() == group.printed() && other.added() == group.added());
            if (first && group.bothWays()) {
                groups.add(group);
            }
        }
        aloneUp = alone(Way.UP);
        aloneDown = alone(Way.DOWN);
    }

    private double[] alone(Way way) {
        return bench.alone().stream()
                .filter(each -> each.way() == way)
                .mapToDouble(Alone::force)
                .toArray();
    }

    List<PinGroup> groups() {
        return groups;
    }

    private boolean hasAlone() {
        return aloneUp.length > 0;
    }

    private double aloneShares() {
        return hasAlone() ? 1.0 / aloneUp.length + 1.0 / aloneDown.length : 0;
    }

    private double aloneTilt() {
        return hasAlone() ? 1.0 / aloneUp.length - 1.0 / aloneDown.length : 0;
    }

    private double offUp() {
        return hasAlone() ? SweepCurves.mean(aloneUp) : 0;
    }

    private double offDown() {
        return hasAlone() ? SweepCurves.mean(aloneDown) : 0;
    }

    /** (U + D)/2 of the stack itself, N. */
    double mean(PinGroup group) {
        return (group.meanUp() - offUp() + group.meanDown() - offDown()) / 2;
    }

    /** (U − D)/2 of the stack itself, N. */
    double half(PinGroup group) {
        return (group.meanUp() - offUp() - group.meanDown() + offDown()) / 2;
    }

    /** Standard uncertainty of that mean or half difference, N. */
    double unsure(PinGroup group) {
        return noise() * Math.sqrt(group.shares() + aloneShares()) / 2;
    }

    private double plainFriction() {
        double above = 0;
        double below = 0;
        for (PinGroup group : groups) {
            above += half(group);
            below += mean(group);
        }
        return above / below;
    }

    /** φ, Σ(U − D)/Σ(U + D). */
    Estimate friction() {
        double above = 0;
        double below = 0;
        double shares = 0;
        double tilt = 0;
        for (PinGroup group : groups) {
            above += 2 * half(group);
            below += 2 * mean(group);
            shares += group.shares();
            tilt += group.tilt();
        }
        double n = groups.size();
        double variance = noise() * noise();
        return new Quotient(
                        above,
                        below,
                        variance * (shares + n * n * aloneShares()),
                        variance * (shares + n * n * aloneShares()),
                        variance * (tilt + n * n * aloneTilt()))
                .estimate(degreesOfFreedom());
    }

    /** Repeats, and how the pins' friction scatters about one share. */
    double degreesOfFreedom() {
        if (bench.scale() instanceof Noise.Stated) {
            return Double.POSITIVE_INFINITY;
        }
        return repeats() + Math.max(0, groups.size() - 1);
    }

    private int repeats() {
        int repeats = hasAlone() ? aloneUp.length + aloneDown.length - 2 : 0;
        for (PinGroup group : groups) {
            repeats += group.repeats();
        }
        return repeats;
    }

    /** As stated, or as the repeats at each pin scatter; 0 where there are none. */
    double scatter() {
        if (bench.scale() instanceof Noise.Stated stated) {
            return stated.sd();
        }
        double sum = 0;
        int left = 0;
        for (PinGroup group : groups) {
            sum += group.squares();
            left += group.repeats();
        }
        return left > 0 ? Math.sqrt(sum / left) : 0;
    }

    double noise() {
        if (bench.scale() instanceof Noise.Stated stated) {
            return stated.sd();
        }
        double left = degreesOfFreedom();
        if (left < 1) {
            throw new Refusal(
                    Fault.OUTSIDE_LIMITS,
                    "pulls",
                    bench.pulls().size(),
                    bench.pulls().size() + 1.0,
                    "",
                    "there are too few pulls to see their own scatter: pull each way three times, or state the scale's accuracy");
        }
        return Math.max(LEAST * largest(), Math.sqrt(squares() / left));
    }

    /** Readings that agree to the last digit are not believed further than this share of the largest. */
    private static final double LEAST = 1e-4;

    private double largest() {
        return bench.pulls().stream().mapToDouble(StackPull::force).max().orElse(0);
    }

    private double squares() {
        double phi = plainFriction();
        double sum = 0;
        if (hasAlone()) {
            sum += SweepCurves.squares(aloneUp, offUp()) + SweepCurves.squares(aloneDown, offDown());
        }
        for (PinGroup group : groups) {
            double off = half(group) - phi * mean(group);
            sum += group.squares() + 4 * off * off / ((1 + phi * phi) * (group.shares() + aloneShares()));
        }
        return sum;
    }
}
