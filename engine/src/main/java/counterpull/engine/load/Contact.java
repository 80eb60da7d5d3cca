package counterpull.engine.load;

/**
 * How a lever touches a limb. The pad's surface lies on the centre line of the limb (the design's convention: half a limb's
 * thickness is left out); without friction on it, a contact that rolls along the limb pushes square to the limb, one that slides on
 * the lever pushes square to the lever.
 */
public sealed interface Contact permits RollerPad, Cuff {
    /** Index of the segment of the chain that it touches, the one at the fixed joint first. */
    int segment();

    /** Which way the contact can push. */
    Pull.Holds holds();

    /** +1 where a positive size of its force is against the lever's turning while the limb lifts, −1 where it is along with it. */
    int sense();

    /** The contact in words. */
    String words();

    /** Where the lever points for one posture of the limb, and how it goes on from there. */
    LeverPosture meet(LimbLine limb);

    /** The direction to which the contact's force is square, rad. */
    double squareTo(double limbDirection, double leverDirection);

    /** Whether the contact stays at one place of the limb. */
    boolean staysOnLimb();
}
