package counterpull.engine.motion;

import counterpull.engine.body.Joint;
import java.util.List;

/**
 * What the joints of one limb do at every position of a range: their anatomical angles (rad) and how fast they turn in each
 * phase (rad/s). Read-only.
 */
public sealed interface LimbPath permits LegPath, ChainPath {
    /** The joints that are computed, proximal first. */
    List<Joint> joints();

    /** How many positions there are, bottom first. */
    int positions();

    /**
     * Anatomical angle of a joint at position i, rad; of a chain counted within half a turn of the {@linkplain
     * counterpull.engine.body.PossibleAngles#middle middle} of what the joint can do, of a press's leg in (−π, π].
     */
    double angle(Joint joint, int i);

    /** How fast the joint turns in the sense of its named action, rad/s: positive while that action shortens. */
    double actionSpeed(Joint joint, Phase phase, int i);

    /** Anatomical angle of a joint at every position, rad. */
    default double[] angles(Joint joint) {
        double[] all = new double[positions()];
        for (int i = 0; i < all.length; i++) {
            all[i] = angle(joint, i);
        }
        return all;
    }
}
