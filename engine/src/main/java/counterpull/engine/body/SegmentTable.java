package counterpull.engine.body;

import java.util.List;
import java.util.Optional;

/**
 * A published table of body segments. There is no default: an input names the table it uses. Fractions are of body mass
 * and of segment length; radii of gyration are about the transverse axis, for turning in the sagittal plane.
 */
public sealed interface SegmentTable permits DempsterWinter, DeLeva1996 {
    /** Short name, as an input says it. */
    String name();

    /** Author, year, table. */
    String source();

    /** Hip to knee. */
    SegmentRow thigh(Sex sex);

    /** Knee to ankle. */
    SegmentRow shank(Sex sex);

    /** The foot; only its mass and its radius of gyration, as a fraction of foot length, are used by {@link Foot}. */
    SegmentRow foot(Sex sex);

    /** Shoulder to elbow. */
    SegmentRow upperArm(Sex sex);

    /** All that is distal of the elbow, in fractions of the length from elbow to wrist. */
    SegmentRow forearmAndHand(Sex sex);

    /** Head, arms and trunk together, from hip to shoulder; empty where the table has no such row. */
    Optional<SegmentRow> headArmsTrunk(Sex sex);

    /** Every row of the table, in its order. */
    List<SegmentRow> rows(Sex sex);
}
