package counterpull.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * A chart along a range: everything in SI, nothing about pixels. Lower layers come first.
 *
 * @param title what it shows
 * @param measure what its height measures
 * @param range the shared axis
 * @param layers what is on it
 * @param here position of the range that is marked by a vertical line, or empty
 */
public record Chart(String title, Measure measure, Range range, List<Layer> layers, OptionalInt here) {
    public Chart {
        layers = List.copyOf(layers);
    }

    /** What a chart's height measures. */
    public enum Measure {
        TORQUE,
        EFFORT,
        FORCE,
        PULL,
        COUPLE,
        STRESS;

        Unit unit(Wording wording) {
            return switch (this) {
                case TORQUE, COUPLE -> wording.torque();
                case EFFORT -> wording.effort();
                case FORCE, PULL -> wording.force();
                case STRESS -> wording.stress();
            };
        }

        String words() {
            return switch (this) {
                case TORQUE -> "torque of one limb";
                case EFFORT -> "effort, share of what this person has";
                case FORCE -> "force along the rail, all limbs together";
                case PULL -> "force on this limb";
                case COUPLE -> "turning force on this limb";
                case STRESS -> "mean, from net torque without co-contraction";
            };
        }
    }

    /** The same chart with the vertical line at a position. */
    public Chart at(int position) {
        return new Chart(title, measure, range, layers, OptionalInt.of(position));
    }

    /** The same chart under another title. */
    public Chart titled(String other) {
        return new Chart(other, measure, range, layers, here);
    }

    /** The same chart with one more layer on top. */
    public Chart with(Layer layer) {
        List<Layer> more = new ArrayList<>(layers);
        more.add(layer);
        return new Chart(title, measure, range, more, here);
    }

    /** The chart as an SVG picture. */
    public String svg(View view) {
        return new ChartDrawing(this, view).draw();
    }
}
