package counterpull.bench.person;

/**
 * Where the scale held the limb.
 *
 * @param distance from the joint's axis to the middle of the pad or strap, along the limb, m
 * @param sd one standard deviation of that distance, m; see {@link #USUAL_SD}
 * @param offSquare angle between the pull and the line square to the limb, rad, without sign: the torque is force × distance × its
 *     cosine
 */
public record Pad(double distance, double sd, double offSquare) {
    /**
     * Standard uncertainty of a distance from a joint that was felt for through skin, m: one centimetre; our assumption. Two people
     * find a joint line 1 to 2 cm apart (from memory).
     */
    public static final double USUAL_SD = 0.01;

    /** Square to the limb, the distance taken with a tape. */
    public static Pad at(double distance) {
        return new Pad(distance, USUAL_SD, 0);
    }

    /** Newton-metres for each newton on the scale. */
    double arm() {
        return distance * Math.cos(offSquare);
    }

    /** Standard deviation of the arm over the arm. */
    double relativeSd() {
        return sd / distance;
    }
}
