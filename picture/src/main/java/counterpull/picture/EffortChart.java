package counterpull.picture;

import counterpull.engine.body.Joint;
import counterpull.engine.choice.Goal;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.LimbProfile;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.Profile;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** Effort along the range for each joint, with target and ceiling, today's setup in grey. At a joint the larger of the limbs' counts. */
public final class EffortChart {
    private static final double NEAR_ALL = 0.85;

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

    /**
     * The chart of any exercise without a goal: every joint that is computed, with the 90\u2009% band of what the person has as a light
     * area around its lifting curve; where an effort comes near all that there is, that limit is drawn.
     */
    public static Chart of(Profile profile) {
        Sampled sampled = new Sampled(profile);
        List<Layer> layers = new ArrayList<>();
        Extent extent = new Extent();
        for (Joint joint : profile.joints()) {
            Layer.Band band = band(sampled, joint);
            layers.add(band);
            extent.add(band.high());
        }
        if (extent.high() > NEAR_ALL) {
            layers.add(0, new Layer.Limit(1, Layer.Limit.Side.ABOVE, "all there is"));
        }
        for (Joint joint : profile.joints()) {
            joint(layers, sampled, joint);
        }
        String title = "Effort (area: 90\u2009% band, lifting)";
        return new Chart(title, Chart.Measure.EFFORT, Range.of(profile), layers, OptionalInt.empty());
    }

    private static Layer.Band band(Sampled sampled, Joint joint) {
        Series low = sampled.of(i -> hardest(sampled.profile(), joint, i)
                .effortBand(joint, Phase.LIFTING, i)
                .low());
        Series high = sampled.of(i -> hardest(sampled.profile(), joint, i)
                .effortBand(joint, Phase.LIFTING, i)
                .high());
        return new Layer.Band(low, high, Marker.ink(joint));
    }

    private static LimbProfile hardest(Profile profile, Joint joint, int i) {
        LimbProfile hardest = profile.limbs().get(0);
        for (LimbProfile limb : profile.limbs()) {
            if (limb.effort(joint, Phase.LIFTING, i) > hardest.effort(joint, Phase.LIFTING, i)) {
                hardest = limb;
            }
        }
        return hardest;
    }

    private static void joint(List<Layer> layers, Sampled sampled, Joint joint) {
        Profile profile = sampled.profile();
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
    private static void unknownOpposite(List<Layer> layers, Profile profile, Joint joint) {
        for (LimbProfile limb : profile.limbs()) {
            if (asksWithoutCurve(limb, joint)) {
                String words = joint.opposite().words() + ": strength not known, drawn as 0";
                layers.add(new Layer.Note(words, Layer.Note.Place.MIDDLE));
                return;
            }
        }
    }

    private static boolean asksWithoutCurve(LimbProfile limb, Joint joint) {
        for (Phase phase : new Phase[] {Phase.LIFTING, Phase.LOWERING}) {
            for (int i = 0; i < limb.path().positions(); i++) {
                if (limb.torque(joint, phase, i) < 0 && Double.isInfinite(limb.had(joint, phase, i))) {
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
