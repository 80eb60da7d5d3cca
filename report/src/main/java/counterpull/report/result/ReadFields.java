package counterpull.report.result;

import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;
import counterpull.engine.load.Part;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.LimbProfile;
import counterpull.engine.profile.Limiting;
import counterpull.engine.profile.Profile;
import counterpull.report.table.Measure;
import java.util.ArrayList;
import java.util.List;

/**
 * Torques for the eye: each joint in the sense of the action that the exercise asks most of it, so that a leg curl reads as so much knee
 * flexion and not as less than no knee extension. What machines read keeps the joint's own sense ({@link TorqueFields}).
 */
final class ReadFields {
    private final Profile profile;

    ReadFields(Profile profile) {
        this.profile = profile;
    }

    /** Asked, had and effort of each joint, and which is hardest. */
    List<Field> asked() {
        List<Field> fields = new ArrayList<>();
        for (Joint joint : profile.joints()) {
            fields.add(torque(joint));
            fields.add(strength(joint));
            fields.add(effort(joint));
        }
        fields.add(Field.words(
                "hardest",
                "hardest",
                "what the joint with the largest known effort is asked for, over all limbs and joints",
                spot -> TorqueFields.limiting(spot).map(this::words).orElse("")));
        return fields;
    }

    /** Torque and effort of each joint alone. */
    List<Field> briefly() {
        List<Field> fields = new ArrayList<>();
        for (Joint joint : profile.joints()) {
            fields.add(torque(joint));
            fields.add(effort(joint));
        }
        return fields;
    }

    /** What each torque is made of. */
    List<Field> parts() {
        List<Field> fields = new ArrayList<>();
        for (Joint joint : profile.joints()) {
            for (Part part : Part.values()) {
                fields.add(part(joint, part));
            }
        }
        return fields;
    }

    private String words(Limiting found) {
        return (profile.limbs().size() > 1 ? found.side().words() + " " : "")
                + found.action().words();
    }

    private Field torque(Joint joint) {
        String action = action(joint).words();
        double sense = sense(joint);
        return Field.number(
                key(joint) + "_asked",
                action + " asked",
                Measure.TORQUE,
                "torque asked of this limb as " + action + "; negative asks for the opposite action",
                spot -> sense * spot.leg().torque(joint, spot.phase(), spot.position()));
    }

    private static Field strength(Joint joint) {
        return Field.number(
                TorqueFields.key(joint) + "_has",
                "has",
                Measure.TORQUE,
                "what this limb has, at that angle and speed, of the action that is asked for",
                spot -> spot.leg().had(joint, spot.phase(), spot.position()));
    }

    private static Field effort(Joint joint) {
        return Field.number(
                TorqueFields.key(joint) + "_effort",
                joint.words() + " effort",
                Measure.EFFORT,
                "torque asked over what this limb has of that action",
                spot -> spot.leg().effort(joint, spot.phase(), spot.position()));
    }

    private Field part(Joint joint, Part part) {
        String action = action(joint).words();
        double sense = sense(joint);
        return Field.number(
                key(joint) + "_" + part.name().toLowerCase(java.util.Locale.ROOT),
                action + ": " + part.words(),
                Measure.TORQUE,
                "part of the torque of " + action + " that comes from " + part.words(),
                spot -> sense * TorqueFields.sum(spot, joint, part));
    }

    private String key(Joint joint) {
        return action(joint).words().replace(' ', '_');
    }

    private Action action(Joint joint) {
        return sense(joint) > 0 ? joint.action() : joint.opposite();
    }

    /** 1 where the joint's named action is asked most anywhere, −1 where its opposite is. */
    private double sense(Joint joint) {
        double most = 0;
        for (LimbProfile limb : profile.limbs()) {
            for (Phase phase : Phase.values()) {
                for (int i = 0; i < profile.positions(); i++) {
                    double torque = limb.torque(joint, phase, i);
                    most = Math.abs(torque) > Math.abs(most) ? torque : most;
                }
            }
        }
        return most < 0 ? -1 : 1;
    }
}
