package counterpull.report.result;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.LimbProfile;
import counterpull.engine.profile.Profile;
import java.util.ArrayList;
import java.util.List;

/** Where two exercises stress the kneecap joint alike, as the knee bends. */
final class Crossings {
    private static final int STEPS = 400;

    private Crossings() {}

    /** Knee flexions, rad, rising, at which the larger of the two changes; held, each limb that is stressed most. */
    static List<Double> of(Profile one, Profile other) {
        List<Double> found = new ArrayList<>();
        if (!one.joints().contains(Joint.KNEE) || !other.joints().contains(Joint.KNEE)) {
            return found;
        }
        double from = Math.max(lowest(one), lowest(other));
        double to = Math.min(highest(one), highest(other));
        double before = Double.NaN;
        for (int k = 0; k <= STEPS && to > from; k++) {
            double angle = from + (to - from) * k / STEPS;
            double difference = stress(one, angle) - stress(other, angle);
            if (before * difference < 0) {
                double share = before / (before - difference);
                found.add(angle - (to - from) / STEPS * (1 - share));
            }
            before = difference == 0 ? before : difference;
        }
        return found;
    }

    private static double lowest(Profile profile) {
        return bound(profile, 1);
    }

    private static double highest(Profile profile) {
        return -bound(profile, -1);
    }

    private static double bound(Profile profile, int sign) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < profile.positions(); i++) {
            least = Math.min(least, sign * profile.limbs().get(0).angle(Joint.KNEE, i));
        }
        return least;
    }

    /** Largest held stress of the limbs at a knee angle, Pa, between the two positions around it; NaN where none has it. */
    private static double stress(Profile profile, double angle) {
        double most = Double.NaN;
        for (LimbProfile limb : profile.limbs()) {
            for (int i = 1; i < profile.positions(); i++) {
                double a = limb.angle(Joint.KNEE, i - 1);
                double b = limb.angle(Joint.KNEE, i);
                if ((angle - a) * (angle - b) <= 0 && a != b) {
                    double share = (angle - a) / (b - a);
                    double here = (1 - share) * limb.kneecapStress(Phase.HELD, i - 1)
                            + share * limb.kneecapStress(Phase.HELD, i);
                    most = Double.isNaN(most) ? here : Math.max(most, here);
                    break;
                }
            }
        }
        return most;
    }
}
