package counterpull.bench.tubing;

import counterpull.bench.Estimate;

/** Shares of a force or of work, turned round. */
final class Shares {
    private Shares() {}

    /** 1 − share, not below 0: rubber gives back no more than was put in. */
    static Estimate lost(Estimate returned) {
        double lost = 1 - returned.value();
        return new Estimate(
                Math.max(0, lost),
                returned.standardError(),
                Math.max(0, 1 - returned.high()),
                Math.max(0, 1 - returned.low()),
                lost < 0 ? Estimate.Standing.AT_LIMIT : Estimate.Standing.FREE);
    }

    /** From how many times the force was before, to the share that it lost since: 1 − 1/s. */
    static Estimate fall(Estimate times) {
        double value = 1 - 1 / times.value();
        double error = times.standardError() / (times.value() * times.value());
        double low = times.low() > 0 ? 1 - 1 / times.low() : value - (times.value() - times.low());
        return new Estimate(value, error, low, 1 - 1 / times.high(), Estimate.Standing.FREE);
    }
}
