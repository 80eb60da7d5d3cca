package counterpull.bench.machine;

/**
 * How a lever was read.
 *
 * @param lifts which way it turns while the limb lifts
 * @param arm from the pivot to where the scale pulls square to the lever, m; 1 where torque itself was read
 * @param armSd standard uncertainty of that, m; 0 where torque itself was read
 */
public record LeverHold(Turn lifts, double arm, double armSd) {
    /** Which way a lever turns, as seen with the person facing right. */
    public enum Turn {
        COUNTERCLOCKWISE("counter-clockwise", 1),
        CLOCKWISE("clockwise", -1);

        private final String words;
        private final int sense;

        Turn(String words, int sense) {
            this.words = words;
            this.sense = sense;
        }

        /** How a file says it. */
        public String words() {
            return words;
        }

        /** +1 counter-clockwise. */
        public int sense() {
            return sense;
        }
    }

    /** A torque wrench, or a scale that shows torque. */
    public static LeverHold torque(Turn lifts) {
        return new LeverHold(lifts, 1, 0);
    }

    /** Whether forces were read and an arm was measured. */
    public boolean byForce() {
        return armSd > 0 || arm != 1;
    }
}
