package counterpull.letgo;

/**
 * Where the energy of a fall went, J: what was gained and lost from letting go to the end. Everything adds up to nothing, up to
 * what the integration and the machine's formulas get wrong.
 *
 * @param kinetic gain of ½ M ẋ²
 * @param weight gain of the weights' energy; negative where they sank
 * @param rubber gain of what is stored in the rubber
 * @param friction lost to friction, zero or more
 * @param hysteresis lost in the rubber, zero or more
 * @param largest the largest kinetic energy on the way
 */
public record EnergyAccount(
        double kinetic, double weight, double rubber, double friction, double hysteresis, double largest) {
    /** The largest error that an answer may have: a thousandth of what was exchanged. */
    public static final double ALLOWED = 1e-3;

    /** What the account does not explain, J. */
    public double residual() {
        return kinetic + weight + rubber + friction + hysteresis;
    }

    /** The largest amount that changed its form, J. */
    public double exchanged() {
        double stored = Math.max(Math.abs(weight), Math.abs(rubber));
        double lost = Math.max(friction, hysteresis);
        return Math.max(Math.max(stored, lost), Math.max(largest, Math.abs(kinetic)));
    }

    /** What is not explained as a share of what was exchanged; 0 where nothing moved. */
    public double error() {
        double exchanged = exchanged();
        return exchanged == 0 ? 0 : Math.abs(residual()) / exchanged;
    }

    /** Whether it closes to {@link #ALLOWED}. */
    public boolean closes() {
        return error() <= ALLOWED;
    }
}
