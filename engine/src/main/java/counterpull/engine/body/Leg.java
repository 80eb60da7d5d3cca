package counterpull.engine.body;

/**
 * One leg: thigh from hip to knee, shank from knee to ankle, foot.
 *
 * @param thigh starts at the hip
 * @param shank starts at the knee
 * @param foot hangs on the ankle
 */
public record Leg(Segment thigh, Segment shank, Foot foot) {}
