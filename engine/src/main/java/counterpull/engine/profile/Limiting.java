package counterpull.engine.profile;

import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;
import counterpull.engine.body.Side;

/**
 * The joint that limits at one position and phase: the one with the largest known effort among those looked at.
 *
 * @param joint which joint
 * @param side whose: the limb with the larger effort there
 * @param action what it is asked for
 * @param effort a pure number, 1 = all that this person has
 */
public record Limiting(Joint joint, Side side, Action action, double effort) {
    /** Efforts nearer than this are a tie; ties go to the proximal joint, then to the left limb. */
    static final double TIE = 1e-9;
}
