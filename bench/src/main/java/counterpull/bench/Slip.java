package counterpull.bench;

import java.util.Optional;

/** A slip of the pen or of a unit that makes a number so many times what it should be. */
public enum Slip {
    TENFOLD(10, "ten times", "a decimal place may have slipped, or newtons were written where kilograms are meant"),
    TENTH(0.1, "a tenth of", "a decimal place may have slipped, or kilograms were written where newtons are meant"),
    KILOGRAMS_AS_NEWTONS(1 / 9.80665, "a tenth of", TENTH.words),
    NEWTONS_AS_KILOGRAMS(9.80665, "ten times", TENFOLD.words),
    HUNDREDFOLD(100, "a hundred times", "a decimal place may have slipped, or centimetres were taken for metres"),
    HUNDREDTH(0.01, "a hundredth of", "a decimal place may have slipped, or metres were taken for centimetres"),
    POUNDS_AS_KILOGRAMS(2.2046226, "2.2 times", "pounds may have been written as kilograms"),
    KILOGRAMS_AS_POUNDS(0.45359237, "0.45 times", "kilograms may have been written as pounds"),
    NEWTONS_AS_POUNDS(4.4482216, "4.4 times", "newtons may have been written as pounds"),
    POUNDS_AS_NEWTONS(1 / 4.4482216, "0.22 times", "pounds may have been written as newtons");

    /** How far from a slip's factor a ratio may lie and still be taken for it, as a share. */
    private static final double NEAR = 0.07;

    /** Natural logarithm of the least factor of a slip by ten. */
    private static final double AT_LEAST = 2;

    private final double factor;
    private final String times;
    private final String words;

    Slip(double factor, String times, String words) {
        this.factor = factor;
        this.times = times;
        this.words = words;
    }

    /** The slip that a number looks like, where it should be about so much; empty where it looks like none. */
    public static Optional<Slip> of(double written, double expected) {
        return of(written, expected, NEAR, 0);
    }

    /**
     * A slip by ten or more, where it is only roughly known what the number should be.
     *
     * @param written what stands there, above 0
     * @param expected what should, above 0
     * @param near how far the ratio may lie from a slip's, as a natural logarithm, below 1
     */
    public static Optional<Slip> ofTen(double written, double expected, double near) {
        return of(written, expected, near, AT_LEAST);
    }

    private static Optional<Slip> of(double written, double expected, double near, double atLeast) {
        Slip nearest = null;
        double least = near;
        for (Slip slip : values()) {
            if (Math.abs(Math.log(slip.factor)) < atLeast) {
                continue;
            }
            double off = Math.abs(Math.log(written / expected / slip.factor));
            if (off < least) {
                nearest = slip;
                least = off;
            }
        }
        return Optional.ofNullable(nearest);
    }

    /** What the number is of what it should be: "ten times". */
    public String times() {
        return times;
    }

    /** What may have happened, in words without a full stop. */
    public String words() {
        return words;
    }
}
