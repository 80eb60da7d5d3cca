package counterpull.engine.load;

import counterpull.engine.motion.ChainPath;

/**
 * A part of a machine that moves one way only and that a limb moves through one contact: a lever by its
 * pad, a carriage by its grip. Whatever weighs or
 * pulls on it reaches the body through that contact, by the balance of power.
 */
public sealed interface Carrier permits LeverFrame, RailFrame {
    /** The machine's contact, as a person says it ("roller pad on the shank"). */
    String words();

    /** Whether both are the same part of the same machine, whatever its contact is called. */
    boolean isSame(Carrier other);

    /** How the limb carries it over a range; refused where the geometry has no answer. */
    CarrierPath over(ChainPath path);
}
