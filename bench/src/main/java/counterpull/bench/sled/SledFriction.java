package counterpull.bench.sled;

import counterpull.bench.Estimate;

/** What the pulls say about friction. */
public sealed interface SledFriction permits SledFriction.Apart, SledFriction.Together {
    /**
     * Pulls at two loads or more tell its two parts apart.
     *
     * @param constant f₀, N
     * @param coefficient μ
     */
    record Apart(Estimate constant, Estimate coefficient) implements SledFriction {}

    /**
     * Pulls at one load give its sum there and no more.
     *
     * @param force N
     * @param plates added plates at which it was read, kg
     */
    record Together(Estimate force, double plates) implements SledFriction {}
}
