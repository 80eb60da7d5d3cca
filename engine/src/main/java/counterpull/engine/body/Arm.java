package counterpull.engine.body;

/**
 * One arm: upper arm from shoulder to elbow, forearm with hand from elbow; the forearm's length ends at the wrist.
 *
 * @param upperArm starts at the shoulder
 * @param forearm forearm and hand as one, starts at the elbow
 */
public record Arm(Segment upperArm, Segment forearm) {}
