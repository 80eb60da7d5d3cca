package counterpull.report.result;

import counterpull.engine.load.Part;
import counterpull.engine.profile.PressProfile;
import counterpull.report.table.Measure;
import java.util.List;

/** The contact force along the rail and what it is made of. */
final class ForceFields {
    private ForceFields() {}

    static List<Field> of(PressProfile profile) {
        return List.of(
                Field.number(
                        "force",
                        "whole force",
                        Measure.FORCE,
                        "force of all limbs together on the plate, along the rail",
                        spot -> spot.press().force(spot.phase(), spot.position())),
                part("force_gravity", "of it weight", Part.GRAVITY),
                part("force_elastic", "of it rubber", Part.ELASTIC),
                part("force_friction", "of it friction", Part.FRICTION),
                part("force_inertia", "of it inertia", Part.INERTIA),
                limbWeight(),
                limbInertia(),
                Field.number(
                        "limb_force",
                        "this limb's force",
                        Measure.FORCE,
                        "this limb's share of the force along the rail",
                        spot -> spot.pressLeg().force(spot.phase(), spot.position())));
    }

    private static Field part(String key, String title, Part part) {
        return Field.number(
                key,
                title,
                Measure.FORCE,
                "part of the whole force that comes from " + part.words(),
                spot -> spot.press().force(part, spot.phase(), spot.position()));
    }

    private static Field limbWeight() {
        return part("force_limb_weight", "of it legs' weight", Part.LIMB_WEIGHT);
    }

    private static Field limbInertia() {
        return part("force_limb_inertia", "of it legs' inertia", Part.LIMB_INERTIA);
    }
}
