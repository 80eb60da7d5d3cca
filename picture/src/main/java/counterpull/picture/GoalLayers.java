package counterpull.picture;

import counterpull.engine.body.Action;
import counterpull.engine.choice.Goal;
import counterpull.engine.profile.PressProfile;
import java.util.Optional;

/** What a professional asks of a setup, as layers of a chart: wishes and limits. */
public final class GoalLayers {
    private GoalLayers() {}

    /** The target effort along a profile's range. */
    public static Layer target(PressProfile profile, Goal goal) {
        Series wanted = new Sampled(profile).of(i -> goal.target().at(profile.driving(i)));
        return new Layer.Curve(wanted, Look.of(Ink.INK, Stroke.TARGET), "target");
    }

    /** The effort ceiling. */
    public static Layer ceiling(Goal goal) {
        String words = "ceiling " + Numbers.fixed(100 * goal.ceiling(), 0) + "\u2009%";
        return new Layer.Limit(goal.ceiling(), Layer.Limit.Side.ABOVE, words);
    }

    /** The least push on the plate; empty where none is stated. */
    public static Optional<Layer> floor(Goal goal) {
        return goal.floor() > 0
                ? Optional.of(new Layer.Limit(goal.floor(), Layer.Limit.Side.BELOW, "least push"))
                : Optional.empty();
    }

    /** The limit on the torque of an action; empty where none is stated. */
    public static Optional<Layer> torque(Goal goal, Action action) {
        return limit(goal.caps().torque(action), "limit, " + action.words());
    }

    /** The limit on kneecap joint stress; empty where none is stated. */
    public static Optional<Layer> stress(Goal goal) {
        return limit(goal.caps().kneecapStress(), "limit");
    }

    private static Optional<Layer> limit(double most, String words) {
        return most < Double.POSITIVE_INFINITY
                ? Optional.of(new Layer.Limit(most, Layer.Limit.Side.ABOVE, words))
                : Optional.empty();
    }
}
