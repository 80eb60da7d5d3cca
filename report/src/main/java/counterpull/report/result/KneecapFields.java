package counterpull.report.result;

import counterpull.engine.jointload.Kneecap;
import counterpull.engine.profile.Profile;
import counterpull.report.table.Measure;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Load on the kneecap joint, with a mark where the published curves end. */
final class KneecapFields {
    private static final Map<Kneecap.Reach, String> MARKS = new EnumMap<>(Map.of(
            Kneecap.Reach.PUBLISHED, "published",
            Kneecap.Reach.AREA_HELD, "area held",
            Kneecap.Reach.ABSENT, "absent"));

    private KneecapFields() {}

    static List<Field> of(Profile profile) {
        return List.of(
                Field.number(
                        "kneecap_force",
                        "kneecap force",
                        Measure.FORCE,
                        "reaction of the kneecap joint from the net knee extension torque, co-contraction left out",
                        spot -> spot.leg().kneecapForce(spot.phase(), spot.position())),
                stress(),
                Field.words(
                        "kneecap_mark",
                        "kneecap curves",
                        "published: all curves inside their range; area held: contact area kept at its last published"
                                + " value; absent: nothing is published at this angle",
                        spot -> MARKS.get(spot.leg().kneecapReach(spot.position()))));
    }

    /** Mean contact stress. */
    static Field stress() {
        return Field.number(
                "kneecap_stress",
                "kneecap stress",
                Measure.STRESS,
                "mean contact stress of the kneecap joint",
                spot -> spot.leg().kneecapStress(spot.phase(), spot.position()));
    }
}
