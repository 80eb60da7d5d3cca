package counterpull.engine.profile;

import counterpull.engine.load.Amount;
import counterpull.engine.load.Part;

/**
 * One summand of every force and torque of a profile: a coefficient at each phase and position, times an amount.
 *
 * <p>A term acts either through the contact of foot and plate (its coefficient is contact force along <b>u</b>, N per unit
 * of the amount) or on the limb itself (its coefficient is joint torque, N·m). Read-only once made.
 */
public final class Term {
    private final Part part;
    private final String label;
    private final Amount amount;
    private final double[] contact;
    private final double[][] torque;

    private Term(Part part, String label, Amount amount, double[][] coefficients) {
        this.part = part;
        this.label = label;
        this.amount = amount;
        contact = coefficients.length == 1 ? coefficients[0] : null;
        torque = coefficients.length == 1 ? null : coefficients;
    }

    /** A term that acts through the contact: N per unit, by phase × position. */
    static Term contact(Part part, String label, Amount amount, double[] force) {
        return new Term(part, label, amount, new double[][] {force});
    }

    /** A term that acts on the limbs themselves: N·m per unit, by limb, then phase × position × joint. */
    static Term limbs(Part part, String label, double[][] torque) {
        // a one-limb term keeps an empty second row, so that the two kinds stay apart
        double[][] rows = torque.length == 1 ? new double[][] {torque[0], new double[0]} : torque;
        return new Term(part, label, Amount.ONE, rows);
    }

    /** What it comes from. */
    public Part part() {
        return part;
    }

    /** What it is, in words ("carriage 40 kg"). */
    public String label() {
        return label;
    }

    /** What its coefficient is multiplied by. */
    public Amount amount() {
        return amount;
    }

    /** Whether it acts through the contact of foot and plate. */
    public boolean throughContact() {
        return contact != null;
    }

    /** Contact force along <b>u</b> per unit, N; 0 for a term of the limb. */
    double contact(int cell) {
        return contact == null ? 0 : contact[cell];
    }

    /** Own torque of one limb per unit, N·m; 0 for a term that acts through the contact. */
    double torque(int limb, int cell) {
        return torque == null ? 0 : torque[limb][cell];
    }
}
