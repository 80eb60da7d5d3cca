package counterpull.bench.person;

import counterpull.bench.Student;

/**
 * Standard error of measurement, limits of agreement and minimal detectable change, in any one unit or as shares: half the width of the
 * 95 % limits of agreement of two measurements is 1.96 √2 standard errors, and so is the smallest change that is beyond them. Sources:
 * Weir 2005, J Strength Cond Res 19:231; de Vet 2006; from memory.
 */
public final class Detectable {
    /** 1.96 √2 = 2.7718. */
    public static final double FACTOR = Student.TWO_SIDED_95 * Math.sqrt(2);

    private Detectable() {}

    /** Minimal detectable change from a standard error of measurement. */
    public static double change(double standardError) {
        return FACTOR * standardError;
    }

    /** Standard error of measurement from half the width of the 95 % limits of agreement, or from a minimal detectable change. */
    public static double standardError(double halfWidth) {
        return halfWidth / FACTOR;
    }
}
