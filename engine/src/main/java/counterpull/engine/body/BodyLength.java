package counterpull.engine.body;

/** A length of the body that a computation needs and that a person can measure with a tape. */
public enum BodyLength {
    THIGH("thigh, hip to knee", DrillisContini1966.THIGH, 1),
    SHANK("shank, knee to ankle", DrillisContini1966.SHANK, 1),
    FOOT("foot, heel to toe", DrillisContini1966.FOOT_LENGTH, 1),
    ANKLE_HEIGHT("ankle above the sole", DrillisContini1966.ANKLE_HEIGHT, 1),
    ANKLE_FROM_HEEL("ankle in front of the heel", DrillisContini1966.FOOT_LENGTH, Foot.USUAL_ANKLE_FROM_HEEL),
    TRUNK("trunk, hip to shoulder", DrillisContini1966.HIP_TO_SHOULDER, 1),
    UPPER_ARM("upper arm, shoulder to elbow", DrillisContini1966.UPPER_ARM, 1),
    FOREARM("forearm, elbow to wrist", DrillisContini1966.FOREARM, 1);

    private final String words;
    private final DrillisContini1966 published;
    private final double share;

    BodyLength(String words, DrillisContini1966 published, double share) {
        this.words = words;
        this.published = published;
        this.share = share;
    }

    /** The length as a person says it. */
    public String words() {
        return words;
    }

    /**
     * The length of a person of that stature, m, from the published fractions. The ankle's place along the foot, a quarter
     * of the foot's length, is common practice without a source.
     */
    public double of(double stature) {
        return share * published.of(stature);
    }
}
