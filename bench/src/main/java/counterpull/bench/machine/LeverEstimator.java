package counterpull.bench.machine;

import counterpull.bench.Budget;
import counterpull.bench.Estimate;
import counterpull.bench.fit.Fit;
import counterpull.bench.fit.Noise;
import counterpull.bench.fit.Regression;
import counterpull.engine.Constants;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** Fits a lever's bench. Parameters: K cos β, K sin β, friction, and for each kilogram on the horn the same two, all over the arm. */
final class LeverEstimator {
    private static final int COS = 0;
    private static final int SIN = 1;
    private static final int FRICTION = 2;
    private static final int HORN_COS = 3;
    private static final int HORN_SIN = 4;

    /** Readings that agree to the last digit are not believed further than this share of the largest. */
    private static final double LEAST = 1e-4;

    private final LeverBench bench;

    LeverEstimator(LeverBench bench) {
        this.bench = bench;
    }

    static double model(LeverBench bench, double[] p, LeverReading reading) {
        double cos = Math.cos(reading.angle());
        double sin = Math.sin(reading.angle());
        double weight = p[COS] * cos - p[SIN] * sin;
        if (p.length > HORN_COS) {
            weight += reading.plates() * (p[HORN_COS] * cos - p[HORN_SIN] * sin);
        }
        return bench.hold().lifts().sense() * weight + reading.way().sense() * p[FRICTION];
    }

    LeverFound found() {
        Fit fit = regression(bench.scale()).fit();
        double largest = bench.readings().stream()
                .mapToDouble(LeverReading::size)
                .map(Math::abs)
                .max()
                .orElse(1);
        if (fit.noise() < LEAST * largest) {
            fit = regression(new Noise.Stated(LEAST * largest)).fit();
        }
        double arm = bench.hold().arm();
        ToDoubleFunction<double[]> moment = p -> Math.hypot(p[COS], p[SIN]);
        ToDoubleFunction<double[]> offset = p -> Math.atan2(p[SIN], p[COS]);
        return new LeverFound(
                bench,
                levered(fit.estimate(moment), fit.degreesOfFreedom(moment), arm),
                fit.estimate(offset),
                friction(fit.estimate(FRICTION), fit.degreesOfFreedom(), arm),
                horn(fit),
                fit);
    }

    private Regression regression(Noise noise) {
        double[] size =
                bench.readings().stream().mapToDouble(LeverReading::size).toArray();
        double[] start = new double[bench.tellsHorn() ? HORN_SIN + 1 : FRICTION + 1];
        return Regression.of((p, i) -> model(bench, p, bench.readings().get(i)), size, start, noise)
                .atLeast(FRICTION, 0);
    }

    /** A force at the arm as a torque, with the arm's own uncertainty. */
    private Estimate levered(Estimate force, double degreesOfFreedom, double factor) {
        return Budget.of(force.value() * factor)
                .with(force.standardError() * factor, degreesOfFreedom)
                .with(Math.abs(force.value())
                        * factor
                        * bench.hold().armSd()
                        / bench.hold().arm())
                .estimate();
    }

    private Estimate friction(Estimate force, double degreesOfFreedom, double arm) {
        Estimate torque = levered(force, degreesOfFreedom, arm);
        double middle = (force.low() + force.high()) / 2 * arm;
        boolean atLimit = force.standing() == Estimate.Standing.AT_LIMIT;
        return atLimit || force.low() == 0
                ? force.times(arm)
                : new Estimate(
                        torque.value(),
                        torque.standardError(),
                        Math.max(0, middle - torque.halfWidth()),
                        middle + torque.halfWidth(),
                        force.standing());
    }

    private Optional<LeverFound.HornFound> horn(Fit fit) {
        if (!bench.tellsHorn()) {
            return Optional.empty();
        }
        ToDoubleFunction<double[]> pull = p -> Math.hypot(p[HORN_COS], p[HORN_SIN]);
        ToDoubleFunction<double[]> offset = p -> Math.atan2(p[HORN_SIN], p[HORN_COS]);
        double factor = bench.hold().arm() / Constants.STANDARD_GRAVITY;
        return Optional.of(new LeverFound.HornFound(
                levered(fit.estimate(pull), fit.degreesOfFreedom(pull), factor), fit.estimate(offset)));
    }
}
