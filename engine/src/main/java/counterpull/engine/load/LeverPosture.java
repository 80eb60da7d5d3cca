package counterpull.engine.load;

/**
 * A lever where it meets a limb at one position.
 *
 * @param turn direction of the lever, pivot → pad, with its derivatives by x
 * @param along where the contact is on the limb, from the segment's joint, m
 * @param arm arm of the contact's force about the pivot, m
 */
record LeverPosture(LimbLine.Turn turn, double along, double arm) {}
