package counterpull.engine.profile;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import java.util.List;

/** Where a value of a profile lies in the flat arrays: phase × position, and phase × position × joint. */
final class Grid {
    private static final int PHASES = Phase.values().length;
    private final int positions;
    private final List<Joint> joints;
    private final int stride;
    private final int[] index = new int[Joint.values().length];

    /** For so many positions and these joints, proximal first. */
    Grid(int positions, List<Joint> joints) {
        this.positions = positions;
        this.joints = joints;
        stride = joints.size();
        java.util.Arrays.fill(index, -1);
        for (int k = 0; k < stride; k++) {
            index[joints.get(k).ordinal()] = k;
        }
    }

    /** The grid of a press. */
    static Grid leg(int positions) {
        return new Grid(positions, Joint.LEG);
    }

    int positions() {
        return positions;
    }

    List<Joint> joints() {
        return joints;
    }

    int stride() {
        return stride;
    }

    int cells() {
        return PHASES * positions;
    }

    int cell(Phase phase, int position) {
        return phase.ordinal() * positions + position;
    }

    int jointCells() {
        return cells() * stride;
    }

    /** Place of a joint among the joints; −1 where it is not one of them. */
    int index(Joint joint) {
        return index[joint.ordinal()];
    }

    /** Refused for a joint that is not one of them: its cell would be another joint's. */
    int jointCell(Joint joint, Phase phase, int position) {
        int place = index[joint.ordinal()];
        if (place < 0) {
            throw new IllegalArgumentException("the " + joint.words() + " is not computed in this exercise");
        }
        return cell(phase, position) * stride + place;
    }
}
