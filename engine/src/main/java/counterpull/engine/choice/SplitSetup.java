package counterpull.engine.choice;

/**
 * Two sets that share a range: a heavy one over its strong upper part and a light one over the whole.
 *
 * @param whole the set over [0, 1]
 * @param upper the set over [c, 1], from a shallower stop
 * @param changeover c, as a fraction of the whole range's travel
 * @param shortfall √(mean over positions and moving phases of the smaller of the two sets' squared shortfalls)
 */
public record SplitSetup(Candidate whole, Candidate upper, double changeover, double shortfall) {
    /** Whether a person would call the two pairs different. */
    public boolean differsFrom(SplitSetup other) {
        return whole.differsFrom(other.whole) || upper.differsFrom(other.upper);
    }
}
