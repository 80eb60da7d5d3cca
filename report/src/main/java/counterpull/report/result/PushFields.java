package counterpull.report.result;

import counterpull.engine.body.Joint;
import counterpull.engine.profile.PressProfile;
import counterpull.report.table.Measure;
import java.util.ArrayList;
import java.util.List;

/** Which way the limb pushes, and what turning the push would do. */
final class PushFields {
    private PushFields() {}

    static List<Field> of(PressProfile profile) {
        List<Field> fields = new ArrayList<>();
        fields.add(Field.number(
                "push_angle",
                "push angle",
                Measure.ANGLE,
                "angle of the push from the rail, positive toward head and toes",
                spot -> spot.pressLeg().pushAngle(spot.phase(), spot.position())));
        for (Joint joint : Joint.LEG) {
            fields.add(Field.number(
                    joint.words() + "_torque_per_push_angle",
                    joint.words() + " per degree of push",
                    Measure.TORQUE_PER_ANGLE,
                    "how the " + joint.words() + " torque changes as the push turns toward head and toes",
                    spot -> spot.pressLeg().torquePerPushAngle(joint, spot.phase(), spot.position())));
        }
        return fields;
    }
}
