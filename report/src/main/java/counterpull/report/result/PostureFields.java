package counterpull.report.result;

import counterpull.engine.body.Joint;
import counterpull.engine.profile.PressProfile;
import counterpull.report.table.Measure;
import java.util.ArrayList;
import java.util.List;

/** Joint angles and moment arms. */
final class PostureFields {
    private PostureFields() {}

    static List<Field> of(PressProfile profile) {
        List<Field> fields = new ArrayList<>();
        for (Joint joint : Joint.LEG) {
            fields.add(angle(joint));
        }
        for (Joint joint : Joint.LEG) {
            fields.add(Field.number(
                    joint.words() + "_moment_arm",
                    joint.words() + " moment arm",
                    Measure.LENGTH,
                    "distance from the " + joint.words() + " to the line of the contact force, without sign",
                    spot -> spot.pressLeg().momentArm(joint, spot.phase(), spot.position())));
        }
        return fields;
    }

    private static Field angle(Joint joint) {
        String bend = joint == Joint.ANKLE ? "dorsiflexion" : "flexion";
        return Field.number(
                joint.words() + "_" + bend,
                joint.words() + " " + bend,
                Measure.ANGLE,
                "anatomical angle: " + joint.words() + " " + bend,
                spot -> spot.leg().angle(joint, spot.position()));
    }
}
