package counterpull.bench.tubing;

import counterpull.bench.Estimate;

/** Rubber cannot push. */
final class Forces {
    private Forces() {}

    static Estimate notNegative(Estimate force) {
        if (force.low() >= 0) {
            return force;
        }
        return new Estimate(
                Math.max(0, force.value()), force.standardError(), 0, Math.max(0, force.high()), force.standing());
    }
}
