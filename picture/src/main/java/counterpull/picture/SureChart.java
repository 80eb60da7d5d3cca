package counterpull.picture;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import counterpull.engine.uncertainty.EffortBands;
import counterpull.engine.uncertainty.HowSure;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * How sure the efforts of a lift are: for each joint the effort as measured as a line, and a light area in which nine of ten draws of all
 * that is known only so far lie.
 */
public final class SureChart {
    /** A band may be far wider than what matters: it is drawn to this share and cut there; ours. */
    private static final double HIGHEST = 1.5;

    private SureChart() {}

    /** The chart of the lifting phase, with the ceiling that was looked at. */
    public static Chart of(HowSure sure) {
        List<Layer> layers = new ArrayList<>();
        double ceiling = sure.bands().looked().ceiling();
        if (ceiling < Double.POSITIVE_INFINITY) {
            String words = ceiling == 1 ? "all there is" : "ceiling " + Numbers.fixed(100 * ceiling, 0) + "\u2009%";
            layers.add(new Layer.Limit(ceiling, Layer.Limit.Side.ABOVE, words));
        }
        Sampled sampled = new Sampled(sure.profile());
        for (Joint joint : sure.profile().joints()) {
            layers.add(band(sampled, sure.bands(), joint));
        }
        for (Joint joint : sure.profile().joints()) {
            Series effort = sampled.of(i -> sure.profile().effort(joint, Phase.LIFTING, i));
            if (effort.anyKnown()) {
                Look look = Look.of(Marker.ink(joint), Stroke.ASKED).marked(Marker.of(joint));
                layers.add(new Layer.Curve(effort, look, joint.words()));
            }
        }
        return new Chart(
                "Effort lifting (area: nine draws in ten)",
                Chart.Measure.EFFORT,
                Range.of(sure.profile()),
                layers,
                OptionalInt.empty());
    }

    private static Layer.Band band(Sampled sampled, EffortBands bands, Joint joint) {
        return new Layer.Band(
                sampled.of(i ->
                        Math.min(HIGHEST, bands.effort(joint, Phase.LIFTING, i).low())),
                sampled.of(i ->
                        Math.min(HIGHEST, bands.effort(joint, Phase.LIFTING, i).high())),
                Marker.ink(joint));
    }
}
