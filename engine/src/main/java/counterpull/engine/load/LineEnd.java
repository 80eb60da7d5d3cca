package counterpull.engine.load;

import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.PointTrack;
import java.util.List;

/** Where an elastic line ends: on something fixed, on the body, or on a part of a machine that the body moves. */
public sealed interface LineEnd permits FixedPoint, OnBody, OnLever, OnGuidedMass {
    /** What the floor calls it. */
    String name();

    /** Place to the side of the exercise's plane, m; both sides of it for a matched pair. */
    double lateral();

    /** Whether it moves with the limb at all. */
    boolean moves();

    /** Whether a pull to the side would twist a machine: then a single line must run in its middle plane. */
    boolean twists();

    /** Where it is over a range. */
    PointTrack track(ChainPath path);

    /** What a tug on it does to the body. */
    List<Pull> pulls(ChainPath path, Tug tug);
}
