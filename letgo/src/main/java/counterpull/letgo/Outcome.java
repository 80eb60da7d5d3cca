package counterpull.letgo;

import java.util.Optional;

/**
 * What a machine did by itself after somebody let go.
 *
 * @param release where and how fast it was let go
 * @param ending how it ended
 * @param first the way it moved first; empty where it never moved
 * @param end when, where and how fast that was
 * @param way how far and how fast it got meanwhile
 * @param energy where the energy went
 */
public record Outcome(Release release, Ending ending, Optional<Sense> first, End end, Way way, EnergyAccount energy) {
    // a swing without loss comes back to where it began, give or take rounding
    private static final double HARDLY = 1e-6;

    /**
     * The last moment.
     *
     * @param time since letting go, s
     * @param place in the machine's coordinate, m or rad
     * @param speed m/s or rad/s, upward positive
     * @param kinetic energy of motion there, J: what a stop has to take up
     */
    public record End(double time, double place, double speed, double kinetic) {}

    /**
     * What lies between.
     *
     * @param highest the highest place it got to, m or rad
     * @param fastest the largest speed, m/s or rad/s, without sign
     * @param turns how often it stood still, to turn round or to rest
     */
    public record Way(double highest, double fastest, int turns) {}

    /** How far below the place of letting go it ended, m or rad; negative where above. */
    public double drop() {
        return release.place() - end.place();
    }

    /** How fast it was at the end, m/s or rad/s, without sign. */
    public double arrivalSpeed() {
        return Math.abs(end.speed());
    }

    /** Whether something pulled it up by itself: it was let go held or sinking, and got above that place. */
    public boolean pulledUp() {
        return release.speed() <= 0 && way.highest() > release.place() + HARDLY;
    }
}
