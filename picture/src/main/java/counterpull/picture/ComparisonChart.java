package counterpull.picture;

import counterpull.engine.body.Joint;
import counterpull.engine.choice.Goal;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.Limiting;
import counterpull.engine.profile.PressProfile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Today's setup against the chosen one: effort of the limiting joint, the larger of both moving phases; the curve's colour and shape say which joint it is. */
public final class ComparisonChart {
    private ComparisonChart() {}

    /**
     * The comparison.
     *
     * @param today what is set up now
     * @param chosen what would be set up
     * @param goal target, ceiling and the joints that are looked at
     */
    public static Chart of(PressProfile today, PressProfile chosen, Goal goal) {
        List<Layer> layers = new ArrayList<>();
        layers.add(GoalLayers.target(chosen, goal));
        layers.add(GoalLayers.ceiling(goal));
        Look grey = Look.of(Ink.TODAY, Stroke.TODAY);
        layers.add(new Layer.Curve(EffortChart.limiting(today, goal), grey, "today, limiting joint"));
        Series now = EffortChart.limiting(chosen, goal);
        layers.add(new Layer.Curve(now, Look.of(Ink.INK, Stroke.ASKED), "chosen, limiting joint", "effort not known"));
        for (Joint joint : goal.joints()) {
            joint(layers, chosen, new Wanted(goal, joint), now);
        }
        Range range = Range.of(chosen).holding(Range.of(today));
        return new Chart("Effort, today against chosen", Chart.Measure.EFFORT, range, layers, OptionalInt.empty());
    }

    private record Wanted(Goal goal, Joint joint) {}

    private static void joint(List<Layer> layers, PressProfile chosen, Wanted wanted, Series effort) {
        Series part = new Sampled(chosen)
                .of(i -> limiting(chosen, wanted.goal, i) == wanted.joint ? effort.y(i) : Double.NaN);
        if (part.anyKnown()) {
            Look look = Look.of(Marker.ink(wanted.joint), Stroke.ASKED).marked(Marker.of(wanted.joint));
            layers.add(new Layer.Curve(part, look, wanted.joint.words() + " limits"));
        }
    }

    private static Joint limiting(PressProfile profile, Goal goal, int i) {
        Optional<Limiting> lifting = profile.limiting(goal.joints(), Phase.LIFTING, i);
        Optional<Limiting> lowering = profile.limiting(goal.joints(), Phase.LOWERING, i);
        double up = lifting.map(Limiting::effort).orElse(-1.0);
        double down = lowering.map(Limiting::effort).orElse(-1.0);
        return (up >= down ? lifting : lowering).map(Limiting::joint).orElse(null);
    }
}
