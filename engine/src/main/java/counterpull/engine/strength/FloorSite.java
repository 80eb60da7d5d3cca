package counterpull.engine.strength;

/**
 * A normal reading that says of the log ratio at one angle what a floor says there, given what all else says.
 *
 * <p>A floor y with the variance n of its reading weighs a value f below it by exp(−(y − f)²/2n), as a test that was
 * reached would, and every value above it by 1: there it has nothing to say. With all else saying N(μ, v), mean and
 * variance of N(μ, v) × weight are matched (Minka 2001, expectation propagation; Rasmussen and Williams 2006, section
 * 3.6; from memory). The moments of this weight are our own, its two halves being truncated normals. With z = (μ −
 * y)/√v, ρ² = n/(v + n), h the hazard of the standard normal, e(x) = h(x) − x, the share below the floor r = ρ/(ρ +
 * h(ρz)/h(−z)) and t = e(ρz) r/ρ they are
 *
 * <pre>  mean = μ + (1 − ρ²) t √v      variance = v (1 − (1 − ρ²)((1 − ρ²) t (t + z) + r))</pre>
 *
 * @param mean of the reading, a log ratio above what all else says
 * @param variance of the reading, the floor's own or more: a floor never says more than a test that was reached
 */
record FloorSite(double mean, double variance) {
    /** The variance of a reading that says nothing: against it every spread that is allowed is lost in rounding. */
    private static final double NOTHING = 1e18;

    /** What is known more surely than this, 3e-8 of a log ratio, no floor can change. */
    private static final double SURE = 1e-15;

    /** A reading that says nothing. */
    static FloorSite silent(double mean) {
        return new FloorSite(mean, NOTHING);
    }

    /** The reading in place of a floor (a log ratio) with its noise (a variance), where all else says N(mean, variance). */
    static FloorSite of(double floor, double noise, double mean, double variance) {
        double v = Math.max(SURE, variance);
        double sd = Math.sqrt(v);
        double z = (mean - floor) / sd;
        double share = v / (v + noise);
        double rho = Math.sqrt(noise / (v + noise));
        double hazard = StandardNormal.hazard(rho * z);
        double beyond = StandardNormal.beyond(rho * z);
        double odds = hazard / StandardNormal.hazard(-z);
        double below = rho / (rho + odds);
        double above = 1 / (1 + rho / odds);
        double step = beyond * below / rho;
        // t + z, without the difference of two large numbers far below the floor
        double stepped = hazard * below / rho + z * above;
        double known = share * (share * step * stepped + below);
        double to = mean + sd / (share * stepped + rho / beyond);
        double spread = v * (1 - known) / known;
        return new FloorSite(to, Math.max(noise, Math.min(NOTHING, spread)));
    }

    /** How far this reading and another part, in their effect where all else says N(mean, variance). */
    double differs(FloorSite other, double mean, double variance) {
        double v = Math.max(SURE, variance);
        double weight = v / (v + this.variance);
        double otherWeight = v / (v + other.variance);
        double apart = weight * (this.mean - mean) - otherWeight * (other.mean - mean);
        return Math.max(Math.abs(apart) / Math.sqrt(v), Math.abs(weight - otherWeight));
    }
}
