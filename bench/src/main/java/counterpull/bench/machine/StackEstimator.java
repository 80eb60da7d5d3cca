package counterpull.bench.machine;

import counterpull.bench.Budget;
import counterpull.bench.Estimate;
import counterpull.bench.fit.Fit;
import counterpull.bench.fit.Noise;
import counterpull.bench.fit.Quotient;
import counterpull.bench.fit.Regression;
import counterpull.engine.Constants;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Fits a stack's bench. */
final class StackEstimator {
    private static final double ADDED_SHARE = 0.002;
    /** A scale that weighs in steps of a tenth of a kilogram is off by as much as this to either side, kg, anywhere alike; ours. */
    private static final double WEIGHED = 0.05;

    private final StackBench bench;
    private final StackSums sums;

    StackEstimator(StackBench bench) {
        this.bench = bench;
        sums = new StackSums(bench);
    }

    StackFound found() {
        Optional<Ratio> byWay = bench.runs().isEmpty() ? Optional.empty() : Optional.of(byWay());
        Optional<Ratio> byMass = byMass();
        Optional<Ratio> ratio = byWay.isPresent() ? byWay : byMass;
        Optional<Estimate> moving = moving();
        List<PinFound> pins = new ArrayList<>();
        for (PinGroup group : sums.groups()) {
            if (group.added() == 0) {
                pins.add(pin(group, ratio, moving));
            }
        }
        pins.sort(Comparator.comparingDouble(PinFound::printed));
        return new StackFound(
                bench,
                ratio.map(Ratio::estimate),
                byWay.isPresent() ? byMass.map(Ratio::estimate) : Optional.empty(),
                notNegative(sums.friction()),
                pins,
                moving,
                constant(),
                sums.noise());
    }

    private static Estimate notNegative(Estimate free) {
        boolean below = free.value() < 0;
        return new Estimate(
                Math.max(0, free.value()),
                free.standardError(),
                Math.max(0, free.low()),
                Math.max(0, free.high()),
                below ? Estimate.Standing.AT_LIMIT : Estimate.Standing.FREE);
    }

    /** Σ way / Σ rise; way − R·rise of each run is its error alone. */
    private Ratio byWay() {
        int n = bench.runs().size();
        double way = 0;
        double rise = 0;
        for (LineRun run : bench.runs()) {
            way += run.way() / n;
            rise += run.rise() / n;
        }
        if (bench.tape() instanceof Noise.Stated tape) {
            double variance = tape.sd() * tape.sd() / n;
            return Ratio.byTape(
                    new Quotient(way, rise, variance, variance, 0).estimate(Double.POSITIVE_INFINITY),
                    Double.POSITIVE_INFINITY);
        }
        return Ratio.byTape(scattered(way, rise), n - 1.0);
    }

    /** Fieller with the scatter of way − R·rise itself, which at the true R is that of the tape whatever the rises were. */
    private Estimate scattered(double way, double rise) {
        int n = bench.runs().size();
        double r = way / rise;
        double ways = 0;
        double rises = 0;
        double both = 0;
        for (LineRun run : bench.runs()) {
            double offWay = run.way() - way;
            double offRise = run.rise() - rise;
            ways += offWay * offWay;
            rises += offRise * offRise;
            both += offWay * offRise;
        }
        double per = (n - 1.0) * n;
        double least = Math.pow(LEAST_TAPE, 2) / n;
        double about = Math.max(0, ways - 2 * r * both + r * r * rises) / per;
        if (about < least) {
            return new Quotient(way, rise, least, least, 0).estimate(Double.POSITIVE_INFINITY);
        }
        return new Quotient(way, rise, ways / per, rises / per, both / per).estimate(n - 1.0);
    }

    /** Runs that agree to the last digit are not believed further than half a millimetre. */
    private static final double LEAST_TAPE = 5e-4;

    /** Each added kilogram pulls g/R: the slope of the mean by added mass, pin by pin. */
    private Optional<Ratio> byMass() {
        double above = 0;
        double below = 0;
        double variance = 0;
        for (PinGroup group : sums.groups()) {
            double off = offMiddle(group);
            above += off * sums.mean(group);
            below += off * off;
            variance += off * off * group.shares() / 4;
        }
        if (!(below > 0)) {
            return Optional.empty();
        }
        double slope = above / below;
        double spread = below;
        double scatter = sums.noise() * Math.sqrt(variance) / below;
        Estimate per = Budget.of(slope)
                .with(scatter, sums.degreesOfFreedom())
                .with(ADDED_SHARE * slope)
                .estimate();
        if (!(per.low() > 0)) {
            return Optional.empty();
        }
        double g = Constants.STANDARD_GRAVITY;
        double r = g / slope;
        double change = r / slope;
        Estimate ratio =
                new Estimate(r, change * per.standardError(), g / per.high(), g / per.low(), Estimate.Standing.FREE);
        double square = sums.noise() * sums.noise() / 4;
        return Optional.of(new Ratio(
                ratio,
                change * scatter,
                sums.degreesOfFreedom(),
                ADDED_SHARE * r,
                group -> -change * offMiddle(group) / spread * square * group.shares()));
    }

    /** Mass added to a group less the mean of what was added at its pin, kg. */
    private double offMiddle(PinGroup group) {
        return group.added()
                - sums.groups().stream()
                        .filter(other -> other.printed() == group.printed())
                        .mapToDouble(PinGroup::added)
                        .average()
                        .orElse(0);
    }

    private double[] printed() {
        return sums.groups().stream()
                .mapToDouble(PinGroup::printed)
                .distinct()
                .sorted()
                .toArray();
    }

    private PinFound pin(PinGroup group, Optional<Ratio> ratio, Optional<Estimate> moving) {
        double pull = sums.mean(group);
        double unsure = sums.unsure(group);
        Estimate estimate = Estimate.student(pull, unsure, sums.degreesOfFreedom());
        if (ratio.isEmpty()) {
            return new PinFound(group.printed(), estimate, Optional.empty(), Optional.empty(), Optional.empty());
        }
        double r = ratio.get().value();
        double mass = ratio.get().mass(pull);
        Estimate found = product(group, ratio.get(), 1, mass).estimate();
        Estimate felt = product(group, ratio.get(), -1, mass / (r * r))
                .plus(moving.map(Estimate::value).orElse(0.0))
                .with(moving.map(Estimate::standardError).orElse(0.0))
                .estimate();
        return new PinFound(
                group.printed(),
                estimate,
                Optional.of(found),
                Optional.of(shifted(found, -group.printed())),
                Optional.of(felt));
    }

    /** Pull × R (power 1) or pull / R (power −1), with what both share. */
    private Budget product(PinGroup group, Ratio ratio, int power, double value) {
        double pull = sums.unsure(group) / sums.mean(group);
        double scatter = ratio.scatter() / ratio.value();
        Budget budget = Budget.of(value).with(value * ratio.stated() / ratio.value());
        if (!ratio.fromPulls()) {
            return budget.with(value * pull, sums.degreesOfFreedom()).with(value * scatter, ratio.degreesOfFreedom());
        }
        double shared = 2 * power * ratio.shared().applyAsDouble(group) / (sums.mean(group) * ratio.value());
        double relative = Math.sqrt(Math.max(0, pull * pull + scatter * scatter + shared));
        return budget.with(value * relative, sums.degreesOfFreedom());
    }

    private static Estimate shifted(Estimate estimate, double by) {
        return new Estimate(
                estimate.value() + by,
                estimate.standardError(),
                estimate.low() + by,
                estimate.high() + by,
                estimate.standing());
    }

    private Optional<Estimate> moving() {
        int n = bench.moving().size();
        if (n == 0) {
            return Optional.empty();
        }
        double[] weighed =
                bench.moving().stream().mapToDouble(Double::doubleValue).toArray();
        double mean = SweepCurves.mean(weighed);
        Budget budget = Budget.of(mean).with(WEIGHED / Math.sqrt(3));
        return Optional.of(
                n == 1
                        ? budget.estimate()
                        : budget.with(Math.sqrt(SweepCurves.squares(weighed, mean) / (n - 1) / n), n - 1)
                                .estimate());
    }

    /** A straight line of half difference by mean pull: what is left of friction at no load. */
    private Optional<Estimate> constant() {
        List<PinGroup> groups = sums.groups();
        if (printed().length < 3) {
            return Optional.empty();
        }
        double[] half = new double[groups.size()];
        double[] spread = new double[half.length];
        for (int i = 0; i < half.length; i++) {
            half[i] = sums.half(groups.get(i));
            spread[i] = Math.sqrt(groups.get(i).shares()) / 2;
        }
        Fit fit = Regression.of(
                        (p, i) -> p[0] + p[1] * sums.mean(groups.get(i)),
                        half,
                        new double[2],
                        new Noise.Stated(sums.noise()))
                .spread(spread)
                .fit();
        Estimate free = fit.estimate(0);
        return Optional.of(Estimate.student(free.value(), free.standardError(), sums.degreesOfFreedom()));
    }
}
