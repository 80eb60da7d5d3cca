package counterpull.picture;

import counterpull.engine.motion.Phase;
import counterpull.engine.profile.ExerciseProfile;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** How hard each thing that resists pulls at one limb along the range: this limb's share, whatever the direction. */
public final class PullChart {
    private static final Ink[] INKS = {Ink.WEIGHT, Ink.RUBBER, Ink.FRICTION, Ink.INERTIA};
    private static final Marker[] MARKERS = {Marker.SQUARE, Marker.DIAMOND, Marker.TRIANGLE, Marker.CIRCLE};

    private PullChart() {}

    /**
     * The charts of one limb: one of forces, one of turning forces, each only where there are any.
     *
     * @param profile the result
     * @param limb index of the limb in the profile
     */
    public static List<Chart> of(ExerciseProfile profile, int limb) {
        List<Hit> hits = Hit.of(profile, limb);
        String side = profile.limbs().get(limb).side().words();
        List<Chart> charts = new ArrayList<>();
        for (Hit.Kind kind : Hit.Kind.values()) {
            List<Layer> layers = layers(new Sampled(profile), hits, kind);
            if (!layers.isEmpty()) {
                boolean force = kind == Hit.Kind.FORCE;
                String title = (force ? "What pulls on the " : "What turns the ") + side + " limb";
                Chart.Measure measure = force ? Chart.Measure.PULL : Chart.Measure.COUPLE;
                charts.add(new Chart(title, measure, Range.of(profile), layers, OptionalInt.empty()));
            }
        }
        return charts;
    }

    private static List<Layer> layers(Sampled sampled, List<Hit> hits, Hit.Kind kind) {
        List<Layer> layers = new ArrayList<>();
        for (int k = 0; k < hits.size(); k++) {
            if (hits.get(k).kind() == kind && !hits.get(k).rolls()) {
                Look look = Look.of(INKS[k % INKS.length], Stroke.ASKED).marked(MARKERS[k % MARKERS.length]);
                phases(layers, sampled, hits.get(k), look);
            }
        }
        return layers;
    }

    private static void phases(List<Layer> layers, Sampled sampled, Hit hit, Look look) {
        for (Phase phase : new Phase[] {Phase.LOWERING, Phase.HELD, Phase.LIFTING}) {
            Stroke stroke = phase == Phase.LIFTING ? Stroke.ASKED : Stroke.ASKED_FINE;
            Marker marker = phase == Phase.HELD ? look.marker() : Marker.NONE;
            Look form = Look.of(look.ink(), stroke).marked(marker).heading(Heading.of(phase));
            String words = hit.words() + ", " + phase.words();
            layers.add(new Layer.Curve(sampled.of(i -> hit.amount(phase, i)), form, words));
        }
    }
}
