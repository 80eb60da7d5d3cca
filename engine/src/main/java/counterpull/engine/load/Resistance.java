package counterpull.engine.load;

import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Motion;
import java.util.List;

/**
 * Something that weighs or pulls on a limb's chain: a place to act and a law, worked out for a whole range at a time. Any number of
 * them together; forces add.
 *
 * <p>Contract, held by a test for every member: for every movement, phase and position the power that the limb puts into it,
 * −Σ size · direction · velocity of the point (couples: times the segment's turning), equals d(stored + kinetic)/dt + lost of its
 * {@link Ledger}; held, it carries neither inertia nor friction.
 */
public sealed interface Resistance
        permits DeadWeight, Cable, MeasuredProfile, GuidedMass, HangingChain, Lever, CamStack, StretchLine {
    /** What it is, as a person says it. */
    String words();

    /**
     * What it does to one limb, for the whole load.
     *
     * @param path the limb over its range
     * @param gravity acceleration of gravity in the plane, m/s², downward; 0 in a horizontal plane
     */
    List<Pull> on(ChainPath path, double gravity);

    /**
     * Where the work goes.
     *
     * @param path the limb over its range
     * @param gravity acceleration of gravity in the plane, m/s²
     * @param plates kilograms of chosen plates
     */
    Ledger ledger(ChainPath path, double gravity, double plates);

    /** Masses that ride on the body itself, on which a balanced stand's lean depends. */
    default List<Motion.Carried> carried(double plates) {
        return List.of();
    }

    /** What about it is known only so far; the order stays when one is turned. */
    List<Knob> knobs();

    /** Whether the chosen plates go on it. */
    boolean takesPlates();
}
