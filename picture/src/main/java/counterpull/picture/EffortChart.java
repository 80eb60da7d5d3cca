package counterpull.picture;

import counterpull.engine.body.Joint;
import counterpull.engine.choice.Goal;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.PressProfile;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** Effort along the range for each joint, with target and ceiling, today's setup in grey. At a joint the larger of the limbs' counts. */
public final class EffortChart {
    private EffortChart() {}

    /**
     * The chart without another setup to compare with.
     *
     * @param profile the result
     * @param goal target, ceiling and the joints that are looked at
     */
    public static Chart of(PressProfile profile, Goal goal) {
        return new Chart(
                "Effort along the range",
                Chart.Measure.EFFORT,
                Range.of(profile),
                layers(profile, goal, List.of()),
                OptionalInt.empty());
    }

    /**
     * The chart with today's setup behind it.
     *
     * @param profile the chosen setup's result
     * @param goal target, ceiling and the joints that are looked at
     * @param today today's setup's result
     */
    public static Chart of(PressProfile profile, Goal goal, PressProfile today) {
        Look grey = Look.of(Ink.TODAY, Stroke.TODAY);
        Layer behind = new Layer.Curve(limiting(today, goal), grey, "today, limiting joint");
        return new Chart(
                "Effort along the range",
                Chart.Measure.EFFORT,
                Range.of(profile).holding(Range.of(today)),
                layers(profile, goal, List.of(behind)),
                OptionalInt.empty());
    }

    private static List<Layer> layers(PressProfile profile, Goal goal, List<Layer> behind) {
        List<Layer> layers = new ArrayList<>();
        layers.add(GoalLayers.target(profile, goal));
        layers.add(GoalLayers.ceiling(goal));
        layers.addAll(behind);
        Sampled sampled = new Sampled(profile);
        for (Joint joint : goal.joints()) {
            joint(layers, sampled, joint);
        }
        return layers;
    }

    private static void joint(List<Layer> layers, Sampled sampled, Joint joint) {
        PressProfile profile = sampled.profile();
        Series lowering = sampled.of(i -> profile.effort(joint, Phase.LOWERING, i));
        Series lifting = sampled.of(i -> profile.effort(joint, Phase.LIFTING, i));
        Ink ink = Marker.ink(joint);
        if (!lifting.anyKnown()) {
            layers.add(new Layer.Note(joint.words() + ": effort not known", Layer.Note.Place.MIDDLE));
            return;
        }
        unknownOpposite(layers, profile, joint);
        Look fine = Look.of(ink, Stroke.ASKED_FINE).heading(Heading.TO_BOTTOM).marked(Marker.of(joint));
        layers.add(new Layer.Curve(lowering, fine, joint.words() + ", lowering"));
        Look look = Look.of(ink, Stroke.ASKED).heading(Heading.TO_TOP).marked(Marker.of(joint));
        layers.add(new Layer.Curve(lifting, look, joint.words() + ", lifting", joint.words() + ": not known"));
    }

    // the engine counts an opposite action of which nothing is known as no effort: the chart has to say so
    private static void unknownOpposite(List<Layer> layers, PressProfile profile, Joint joint) {
        for (int k = 0; k < profile.limbs().size(); k++) {
            if (profile.ground().capacity().absent(k, joint.opposite()) && reverses(profile, k, joint)) {
                String words = joint.opposite().words() + ": strength not known, drawn as 0";
                layers.add(new Layer.Note(words, Layer.Note.Place.MIDDLE));
                return;
            }
        }
    }

    private static boolean reverses(PressProfile profile, int limb, Joint joint) {
        for (Phase phase : new Phase[] {Phase.LIFTING, Phase.LOWERING}) {
            for (int i = 0; i < profile.positions(); i++) {
                if (profile.limbs().get(limb).torque(joint, phase, i) < 0) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Effort of the limiting joint, the larger of both moving phases. */
    static Series limiting(PressProfile profile, Goal goal) {
        return new Sampled(profile).of(i -> {
            double most = Double.NaN;
            for (Phase phase : new Phase[] {Phase.LIFTING, Phase.LOWERING}) {
                double effort = profile.limiting(goal.joints(), phase, i)
                        .map(found -> found.effort())
                        .orElse(Double.NaN);
                most = effort <= most || Double.isNaN(effort) ? most : effort;
            }
            return most;
        });
    }
}
