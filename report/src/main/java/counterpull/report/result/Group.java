package counterpull.report.result;

import counterpull.engine.profile.PressProfile;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** What belongs together in a result, in the order in which it is shown. */
public enum Group {
    POSTURE("joint angles and moment arms", PostureFields::of),
    FORCE("force along the rail and its parts", ForceFields::of),
    TORQUE("torque asked, strength and effort", TorqueFields::asked),
    PARTS("what each torque is made of", TorqueFields::parts),
    KNEECAP("kneecap joint", KneecapFields::of),
    PUSH("direction of the push", PushFields::of),
    RUBBER("rubber", RubberFields::of);

    private final String words;
    private final Function<PressProfile, List<Field>> fields;

    Group(String words, Function<PressProfile, List<Field>> fields) {
        this.words = words;
        this.fields = fields;
    }

    /** What it holds, in words. */
    public String words() {
        return words;
    }

    List<Field> fields(PressProfile profile) {
        return fields.apply(profile);
    }

    /** Every field of every group. */
    static List<Field> everything(PressProfile profile) {
        List<Field> all = new ArrayList<>();
        for (Group group : values()) {
            all.addAll(group.fields(profile));
        }
        return all;
    }
}
