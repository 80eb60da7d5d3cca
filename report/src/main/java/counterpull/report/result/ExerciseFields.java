package counterpull.report.result;

import counterpull.engine.body.Joint;
import counterpull.engine.profile.ExerciseLimb;
import counterpull.engine.profile.ExerciseProfile;
import counterpull.report.table.Measure;
import java.util.ArrayList;
import java.util.List;

/** What only an exercise other than a press says of a spot: where it is, its joint angles, and what pulls there. */
final class ExerciseFields {
    private ExerciseFields() {}

    /** The driving coordinate. */
    static Field driving(ExerciseProfile profile) {
        return profile.driver()
                .map(joint -> Field.number(
                        "driving_angle",
                        joint.angleWords(),
                        Measure.ANGLE,
                        "the angle that drives the movement and counts its positions: " + joint.angleWords(),
                        spot -> spot.profile().driving(spot.position())))
                .orElseGet(() -> Field.number(
                        "travel",
                        "travel",
                        Measure.LENGTH,
                        "travel along the path from where the lift starts",
                        spot -> spot.profile().driving(spot.position())));
    }

    /** Number of the position and its share of the stroke. */
    static List<Field> place(ExerciseProfile profile) {
        return List.of(
                Field.number(
                        "position",
                        "no.",
                        Measure.COUNT,
                        "number of the position, 0 at the bottom where the lift starts",
                        Spot::position),
                Field.number(
                        "stroke_fraction",
                        "stroke",
                        Measure.FRACTION,
                        "share of the stroke from the bottom",
                        spot -> profile.course().fraction(spot.position())),
                driving(profile));
    }

    /** Anatomical angle of every joint. */
    static List<Field> angles(ExerciseProfile profile) {
        List<Field> fields = new ArrayList<>();
        for (Joint joint : profile.joints()) {
            fields.add(Field.number(
                    joint.angleWords().replace(' ', '_'),
                    joint.angleWords(),
                    Measure.ANGLE,
                    "anatomical angle: " + joint.angleWords(),
                    spot -> spot.leg().angle(joint, spot.position())));
        }
        return fields;
    }

    /** Size of everything that weighs or pulls, for the whole load. */
    static List<Field> loads(ExerciseProfile profile) {
        List<Field> fields = new ArrayList<>();
        int number = 0;
        for (String load : profile.limbs().get(0).loads()) {
            number++;
            fields.add(Field.number(
                    "load_" + number,
                    load,
                    Measure.FORCE,
                    "force on the body of all that is called " + load
                            + ", without a sign, before it is shared between limbs",
                    spot -> limb(spot)
                            .force(load, spot.phase(), spot.position())
                            .norm()));
        }
        for (String turn : profile.limbs().get(0).turns()) {
            number++;
            fields.add(Field.number(
                    "load_" + number,
                    turn,
                    Measure.TORQUE,
                    "torque on the body of all that is called " + turn + ", before it is shared between limbs",
                    spot -> limb(spot).turn(turn, spot.phase(), spot.position())));
        }
        return fields;
    }

    private static ExerciseLimb limb(Spot spot) {
        return ((ExerciseProfile) spot.profile()).limbs().get(spot.limb());
    }
}
