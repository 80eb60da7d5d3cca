package counterpull.engine.profile;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;

/**
 * Where a value of a profile lies in the flat arrays: phase × position, and phase × position × joint.
 *
 * @param positions how many positions
 */
record Grid(int positions) {
    private static final int PHASES = Phase.values().length;
    private static final int JOINTS = Joint.LEG.size();

    int cells() {
        return PHASES * positions;
    }

    int cell(Phase phase, int position) {
        return phase.ordinal() * positions + position;
    }

    int jointCells() {
        return cells() * JOINTS;
    }

    int jointCell(Joint joint, Phase phase, int position) {
        return cell(phase, position) * JOINTS + joint.ordinal();
    }
}
