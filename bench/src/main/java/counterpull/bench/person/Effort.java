package counterpull.bench.person;

/**
 * One effort against a scale.
 *
 * @param force what the scale showed at the most, or its mean over a second of plateau, N, as read
 * @param ended what ended it
 */
public record Effort(double force, Ended ended) {
    /** An effort that was as hard as the person could. */
    public static Effort reached(double force) {
        return new Effort(force, Ended.REACHED);
    }
}
