package counterpull.engine.load;

import counterpull.engine.motion.PointTrack;
import counterpull.engine.planar.Vec;
import java.util.List;

/**
 * A {@link Carrier} over a whole range. Its load is what something puts on it in the unit that goes with its one coordinate: N·m,
 * counter-clockwise on a lever; N along the rail, toward the top, on a carriage.
 */
public sealed interface CarrierPath permits LeverPath, RailRun {
    /** The track of a point that is fixed on the part, given in the part's own axes ({@link OnLever}, {@link OnGuidedMass}), m. */
    PointTrack track(Vec own);

    /** The load that a force (N, in plane axes) on such a point is, at position i. */
    double load(Vec own, Vec force, int i);

    /**
     * What a load on the part makes of the contact: the force on the body that keeps the power in balance.
     *
     * @param words what loads the part, as a person says it
     * @param load the load by phase × position, in the part's own unit per unit of each amount
     */
    List<Pull> pulls(String words, List<Share> load);
}
