package counterpull.report.result;

import counterpull.engine.body.Joint;
import counterpull.engine.load.Part;
import counterpull.engine.profile.Limiting;
import counterpull.engine.profile.Profile;
import counterpull.engine.profile.Why;
import counterpull.report.table.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Torque asked of each joint, its parts, what the person has, and which joint limits. */
final class TorqueFields {
    private TorqueFields() {}

    static List<Field> asked(Profile profile) {
        List<Field> fields = new ArrayList<>();
        for (Joint joint : profile.joints()) {
            fields.add(torque(joint));
            fields.add(strength(joint));
            fields.add(band(joint));
            fields.add(effort(joint));
        }
        fields.add(Field.words(
                "limiting_action",
                "limits",
                "what the joint with the largest known effort is asked for, over all limbs and joints",
                spot -> limiting(spot).map(found -> found.action().words()).orElse("")));
        fields.add(Field.words(
                "limiting_side",
                "limiting side",
                "whose joint that is",
                spot -> limiting(spot).map(found -> found.side().words()).orElse("")));
        return fields;
    }

    static List<Field> parts(Profile profile) {
        List<Field> fields = new ArrayList<>();
        for (Joint joint : profile.joints()) {
            for (Part part : Part.values()) {
                fields.add(part(joint, part));
            }
        }
        return fields;
    }

    static Optional<Limiting> limiting(Spot spot) {
        return spot.profile().limiting(spot.profile().joints(), spot.phase(), spot.position());
    }

    /** How a joint's columns begin. */
    static String key(Joint joint) {
        return joint.words().replace(' ', '_');
    }

    private static Field torque(Joint joint) {
        return Field.number(
                key(joint) + "_torque",
                joint.words() + " asked",
                Measure.TORQUE,
                "torque asked of this limb as " + joint.action().words() + "; negative asks for "
                        + joint.opposite().words(),
                spot -> spot.leg().torque(joint, spot.phase(), spot.position()));
    }

    private static Field strength(Joint joint) {
        return Field.number(
                key(joint) + "_strength",
                joint.words() + " has",
                Measure.TORQUE,
                "what this limb has, at that angle and speed, of the action that is asked for",
                spot -> spot.leg().had(joint, spot.phase(), spot.position()));
    }

    private static Field band(Joint joint) {
        return Field.number(
                key(joint) + "_strength_band",
                joint.words() + " band ×÷",
                Measure.NUMBER,
                "factor by which the 90 % band of the strength of "
                        + joint.action().words() + " lies above and below its middle",
                spot -> spot.leg().bandFactor(joint, spot.position()));
    }

    private static Field effort(Joint joint) {
        return Field.number(
                key(joint) + "_effort",
                joint.words() + " effort",
                Measure.EFFORT,
                "torque asked over what this limb has of that action; 0 where nothing is known of the opposite action",
                spot -> spot.leg().effort(joint, spot.phase(), spot.position()));
    }

    private static Field part(Joint joint, Part part) {
        String key = key(joint) + "_torque_" + part.name().toLowerCase(Locale.ROOT);
        return Field.number(
                key,
                joint.words() + ": " + part.words(),
                Measure.TORQUE,
                "part of the " + joint.words() + " torque that comes from " + part.words(),
                spot -> sum(spot, joint, part));
    }

    static double sum(Spot spot, Joint joint, Part part) {
        double sum = 0;
        for (Why.Summand summand : spot.profile()
                .why()
                .torque(new Why.Place(spot.limb(), joint, spot.phase(), spot.position()))
                .summands()) {
            sum += summand.part() == part ? summand.value() : 0;
        }
        return sum;
    }
}
