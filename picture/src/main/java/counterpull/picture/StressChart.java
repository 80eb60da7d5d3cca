package counterpull.picture;

import counterpull.engine.body.Joint;
import counterpull.engine.jointload.Kneecap;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.LimbProfile;
import counterpull.engine.profile.Profile;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * Mean contact stress of one limb's kneecap joint along the range. Where the published contact area does not reach it is held
 * constant and the stretch is hatched; where nothing is published there is a gap with a word.
 */
public final class StressChart {
    private StressChart() {}

    /** Whether a profile tells kneecap stress: whether its knee is computed and somewhere asked to extend, or the stress not known. */
    public static boolean tells(Profile profile) {
        return profile.joints().contains(Joint.KNEE) && profile.limbs().stream().anyMatch(StressChart::tells);
    }

    /** The same of one limb whose knee is computed. */
    public static boolean tells(LimbProfile limb) {
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < limb.path().positions(); i++) {
                if (limb.kneecapStress(phase, i) != 0) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The chart of one limb, by its index in a profile that {@linkplain #tells tells} it. */
    public static Chart of(Profile profile, int limb) {
        LimbProfile leg = profile.limbs().get(limb);
        Sampled sampled = new Sampled(profile);
        List<Layer> layers = new ArrayList<>();
        stretch(layers, leg, profile::driving);
        curve(layers, sampled.of(i -> leg.kneecapStress(Phase.LOWERING, i)), Phase.LOWERING, "");
        curve(layers, sampled.of(i -> leg.kneecapStress(Phase.HELD, i)), Phase.HELD, "");
        curve(layers, sampled.of(i -> leg.kneecapStress(Phase.LIFTING, i)), Phase.LIFTING, "nothing published here");
        String title = "Kneecap joint stress, " + leg.side().words();
        return new Chart(title, Chart.Measure.STRESS, Range.of(profile), layers, OptionalInt.empty());
    }

    private static void curve(List<Layer> layers, Series series, Phase phase, String gap) {
        Stroke stroke = phase == Phase.LIFTING ? Stroke.ASKED : Stroke.ASKED_FINE;
        Marker marker = phase == Phase.HELD ? Marker.CIRCLE : Marker.NONE;
        Look look = Look.of(Ink.KNEE, stroke).marked(marker).heading(Heading.of(phase));
        layers.add(new Layer.Curve(series, look, phase.words(), gap));
    }

    /** Hatches where the published contact area does not reach; {@code at} says where a position lies along the chart. */
    static boolean stretch(List<Layer> layers, LimbProfile limb, Sampled.At at) {
        int first = -1;
        int last = -1;
        for (int i = 0; i < limb.path().positions(); i++) {
            if (limb.kneecapReach(i) == Kneecap.Reach.AREA_HELD) {
                first = first < 0 ? i : first;
                last = i;
            }
        }
        if (first >= 0) {
            layers.add(new Layer.Stretch(at.position(first), at.position(last), "beyond the published contact area"));
        }
        return first >= 0;
    }
}
