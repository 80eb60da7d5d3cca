package counterpull.bench.sled;

import counterpull.engine.load.Counterweight;

/**
 * What is known of the machine before the pulls.
 *
 * @param platesShare standard uncertainty of all plates together, as a share of what is written: 0.001 weighed, 0.02 as printed
 * @param counterweight what balances part of the carriage, as weighed
 * @param plateEnd whether the foot plate is at the rail's upper or lower end, which gives the rail's angle its sign
 */
public record Riding(double platesShare, Counterweight counterweight, PlateEnd plateEnd) {
    /** Where the foot plate is. */
    public enum PlateEnd {
        /** The person pushes it up the rail. */
        UPPER(1),
        /** The plate stays below and the person's seat rides up. */
        LOWER(-1);

        private final int sign;

        PlateEnd(int sign) {
            this.sign = sign;
        }

        /** Sign of the rail's angle in the engine. */
        public int sign() {
            return sign;
        }
    }

    /** Plates as printed, to 2 % (common practice, no source), no counterweight, the plate up the rail. */
    public static Riding plain() {
        return new Riding(0.02, Counterweight.none(), PlateEnd.UPPER);
    }
}
