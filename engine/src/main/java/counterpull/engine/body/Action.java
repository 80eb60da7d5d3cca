package counterpull.engine.body;

import java.util.List;

/** What muscles do at a joint; each has its own strength curve. */
public enum Action {
    HIP_EXTENSION("hip extension"),
    HIP_FLEXION("hip flexion"),
    KNEE_EXTENSION("knee extension"),
    KNEE_FLEXION("knee flexion"),
    ANKLE_PLANTARFLEXION("ankle plantarflexion"),
    ANKLE_DORSIFLEXION("ankle dorsiflexion"),
    HIP_ABDUCTION("hip abduction"),
    HIP_ADDUCTION("hip adduction"),
    SHOULDER_FLEXION("shoulder flexion"),
    SHOULDER_EXTENSION("shoulder extension"),
    SHOULDER_ABDUCTION("shoulder abduction"),
    SHOULDER_ADDUCTION("shoulder adduction"),
    SHOULDER_EXTERNAL_ROTATION("shoulder external rotation"),
    SHOULDER_INTERNAL_ROTATION("shoulder internal rotation"),
    ELBOW_FLEXION("elbow flexion"),
    ELBOW_EXTENSION("elbow extension");

    /** What a leg does in the sagittal plane, proximal first: the actions of a press. */
    public static final List<Action> LEG =
            List.of(HIP_EXTENSION, HIP_FLEXION, KNEE_EXTENSION, KNEE_FLEXION, ANKLE_PLANTARFLEXION, ANKLE_DORSIFLEXION);

    private final String words;

    Action(String words) {
        this.words = words;
    }

    /** The action's name as a person says it. */
    public String words() {
        return words;
    }
}
