package counterpull.report.result;

import counterpull.report.table.Measure;
import java.util.List;

/** Where a row is. */
final class PlaceFields {
    private PlaceFields() {}

    /** Limb and phase, for tables that hold several. */
    static List<Field> whose() {
        return List.of(
                Field.words(
                        "limb",
                        "limb",
                        "the person's own left or right leg",
                        spot -> spot.leg().side().words()),
                Field.words(
                        "phase",
                        "phase",
                        "held still, lifting (bottom to top) or lowering (top to bottom)",
                        spot -> spot.phase().words()));
    }

    /** Position in the range. */
    static List<Field> where() {
        return List.of(
                Field.number(
                        "position",
                        "no.",
                        Measure.COUNT,
                        "number of the position, 0 at the bottom where the lift starts",
                        Spot::position),
                Field.number(
                        "travel_fraction",
                        "travel",
                        Measure.FRACTION,
                        "share of the rail travel from the bottom",
                        spot -> spot.press().ground().motion().fraction(spot.position())),
                Field.number(
                        "hip_to_plate",
                        "hip to plate",
                        Measure.LENGTH,
                        "distance from hip to plate surface along the rail",
                        spot -> spot.press().plate(spot.position())),
                mark(),
                kneeAngle());
    }

    /** Just enough to find a row on the machine and on the body. */
    static List<Field> shortly() {
        return List.of(kneeAngle(), mark());
    }

    private static Field mark() {
        return Field.number(
                "mark",
                "tape mark",
                Measure.LENGTH,
                "reading of the tape mark on the frame",
                spot -> spot.press().mark(spot.position()));
    }

    private static Field kneeAngle() {
        return Field.number(
                "driving_knee_angle",
                "knee bend",
                Measure.ANGLE,
                "knee flexion of the limb that counts the positions, 0 = straight",
                spot -> spot.press().driving(spot.position()));
    }
}
