package counterpull.bench.sled;

import counterpull.bench.Answer;
import counterpull.bench.Budget;
import counterpull.bench.Estimate;
import counterpull.bench.Kind;
import counterpull.bench.Remark;
import counterpull.bench.Way;
import counterpull.bench.fit.Fit;
import counterpull.bench.fit.Noise;
import counterpull.bench.fit.Regression;
import counterpull.engine.Constants;
import counterpull.engine.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Fits a sled's bench: the numbers, and whatever should be said about them. */
final class SledEstimator {
    /** Readings that agree to the last digit show the scale's resolution, not its error: this share of the mean pull is taken. */
    private static final double LEAST_NOISE = 1e-4;

    private static final double LEAST_SHARE = 1e-5;

    private final SledBench bench;
    private final SledModel model;
    private final Budget angle;

    SledEstimator(SledBench bench) {
        this.bench = bench;
        model = new SledModel(bench.riding().counterweight());
        angle = bench.gauge().readings().isEmpty()
                ? Budget.of(0)
                : bench.gauge().budget();
    }

    Answer<SledFound> answer() {
        List<Remark> remarks = new ArrayList<>(new SledReadings(bench).remarks());
        if (remarks.stream().anyMatch(Remark::refuses)) {
            return Answer.refused(remarks);
        }
        try {
            return checked(found(), remarks);
        } catch (Refusal refusal) {
            remarks.add(unsettled(refusal));
            return Answer.refused(remarks);
        }
    }

    /** Where no law fits, what the plates did is said beside what they should have done. */
    private Remark unsettled(Refusal refusal) {
        Optional<LoadCheck> check = loadCheck();
        if (check.isEmpty()) {
            return Remark.refuses(refusal.fault().code(), refusal.getMessage());
        }
        return Remark.refuses("plates-not-felt", "from pull 1 on, ten added kilograms change the pull by ")
                .then(10 * check.get().found().value(), Kind.FORCE)
                .then(", and by the gauge they should add ")
                .then(10 * check.get().expected().value(), Kind.FORCE)
                .then(": were the plates on that are written there, and is the rail's angle right?");
    }

    private static Answer<SledFound> checked(SledFound found, List<Remark> remarks) {
        remarks.addAll(new SledChecks(found).remarks());
        return remarks.stream().anyMatch(Remark::refuses) ? Answer.refused(remarks) : Answer.of(found, remarks);
    }

    private SledFound found() {
        Fit fit = fit(bench.loads().length > 1 && !bench.upright());
        SledLines lines = new SledLines(model, fit);
        return new SledFound(
                bench,
                angle.estimate(),
                fit.estimate(SledModel.MASS),
                friction(fit),
                breakaway(lines),
                loadCheck(),
                lines);
    }

    private SledFriction friction(Fit fit) {
        double[] loads = bench.loads();
        if (bench.upright()) {
            return new SledFriction.Apart(fit.estimate(SledModel.CONSTANT), Estimate.normal(0, 0));
        }
        return loads.length > 1
                ? new SledFriction.Apart(fit.estimate(SledModel.CONSTANT), fit.estimate(SledModel.COEFFICIENT))
                : new SledFriction.Together(fit.estimate(SledModel.CONSTANT), loads[0]);
    }

    private Fit fit(boolean apart) {
        double theta = bench.gauge().mean();
        double share = Math.max(LEAST_SHARE, bench.riding().platesShare());
        double[] start = apart ? new double[] {0, 0, theta, 1, 0} : new double[] {0, 0, theta, 1};
        start[SledModel.MASS] = massToBeginWith(theta);
        start[SledModel.CONSTANT] = Math.max(0, halfDifference());
        Regression regression = Regression.of(
                        (p, i) -> model.force(
                                p,
                                bench.pulls().get(i).way().sense(),
                                bench.pulls().get(i).plates()),
                        bench.forces(),
                        start,
                        noise())
                .known(SledModel.ANGLE, theta, angle.standardError(), angle.degreesOfFreedom())
                .known(SledModel.PLATES, 1, share)
                .atLeast(SledModel.CONSTANT, 0);
        return (apart ? regression.atLeast(SledModel.COEFFICIENT, 0) : regression).fit();
    }

    private double massToBeginWith(double theta) {
        double sum = 0;
        for (Pull pull : bench.pulls()) {
            sum += (pull.force() + model.balance(Math.sin(theta))) / (Constants.STANDARD_GRAVITY * Math.sin(theta))
                    - pull.plates();
        }
        return sum / bench.pulls().size();
    }

    private double halfDifference() {
        return (mean(Way.UP) - mean(Way.DOWN)) / 2;
    }

    private double mean(Way way) {
        return bench.pulls().stream()
                .filter(pull -> pull.way() == way)
                .mapToDouble(Pull::force)
                .average()
                .orElse(0);
    }

    /** Stated, or from scatter, or the finest that readings without any scatter can be believed. */
    private Noise noise() {
        return withoutScatter(bench) ? new Noise.Stated(least(bench)) : bench.scale();
    }

    private static double least(SledBench bench) {
        return LEAST_NOISE
                * bench.pulls().stream().mapToDouble(Pull::force).average().orElseThrow();
    }

    /** Whether the pulls agree to the last digit and nothing else says how sure they are. */
    static boolean withoutScatter(SledBench bench) {
        return bench.scale() instanceof Noise.FromScatter
                && PlainLines.of(bench).noise() < least(bench);
    }

    private Optional<Estimate> breakaway(SledLines lines) {
        List<Breakaway> readings = bench.breakaways();
        if (readings.isEmpty()) {
            return Optional.empty();
        }
        double sum = 0;
        double plates = 0;
        for (Breakaway each : readings) {
            sum += each.force() - lines.weight(each.plates()).value();
            plates += each.plates() / readings.size();
        }
        double mean = sum / readings.size();
        Estimate weight = lines.weight(plates);
        Budget budget = own(Budget.of(mean), mean, lines).with(weight.standardError(), lines.weightDegrees(plates));
        return Optional.of(budget.estimateFromFew());
    }

    /** The scatter of the breakaway readings themselves, or the scale's where there is one alone. */
    private Budget own(Budget budget, double mean, SledLines lines) {
        List<Breakaway> readings = bench.breakaways();
        int n = readings.size();
        if (n < 2) {
            return budget.with(lines.noise(), lines.noiseDegrees());
        }
        double squares = 0;
        for (Breakaway each : readings) {
            squares += Math.pow(each.force() - lines.weight(each.plates()).value() - mean, 2);
        }
        return budget.with(Math.sqrt(squares / (n - 1) / n), n - 1);
    }

    /** What an added kilogram adds, once freely by the pulls and once by gauge and plates. */
    private Optional<LoadCheck> loadCheck() {
        PlainLines lines = PlainLines.of(bench);
        if (!lines.tellsSlope() || lines.noise() == 0) {
            return Optional.empty();
        }
        double g = Constants.STANDARD_GRAVITY;
        double theta = bench.gauge().mean();
        Budget expected = Budget.of(g * Math.sin(theta))
                .with(g * Math.cos(theta) * angle.standardError(), angle.degreesOfFreedom())
                .with(g * Math.sin(theta) * bench.riding().platesShare());
        Estimate found = lines.perKilogram();
        Budget both = Budget.of(found.value() - g * Math.sin(theta))
                .with(expected.standardError(), expected.degreesOfFreedom())
                .with(found.standardError(), lines.degreesOfFreedom());
        Estimate difference = both.estimate();
        return Optional.of(new LoadCheck(
                found, expected.estimate(), difference.value() / Math.max(1e-12, difference.halfWidth())));
    }
}
