package counterpull.engine.strength;

import counterpull.engine.body.Action;

/**
 * The angles between which the published curves are believed. The paper's own list of test angles was not at hand, so
 * these are ours, from memory of how such tests are done: on a dynamometer the hip is tested from a little behind the
 * body to about 110° of flexion, the knee from straight to about 110°, the ankle from 40° of plantarflexion to 20° of
 * dorsiflexion (Hussain and Frey-Law 2016 tested 30° to 10°; looked up). A leg press folds the hip to about 140°:
 * there the published strength counts as not known unless the person was tested there.
 */
final class SourceAngles {
    private SourceAngles() {}

    static AngleRange of(Action action) {
        return switch (action) {
            case HIP_EXTENSION, HIP_FLEXION -> degrees(-15, 110);
            case KNEE_EXTENSION, KNEE_FLEXION -> degrees(0, 110);
            case ANKLE_PLANTARFLEXION, ANKLE_DORSIFLEXION -> degrees(-40, 20);
            default -> throw Anderson2007.notPublished(action);
        };
    }

    private static AngleRange degrees(double low, double high) {
        return new AngleRange(Math.toRadians(low), Math.toRadians(high));
    }
}
