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

    /**
     * What a chart's height measures.
     *
     * @param quantity what it is counted in
     * @param words what is meant, beside the unit
     */
    public record Measure(Quantity quantity, String words) {
        public static final Measure TORQUE = new Measure(Quantity.TORQUE, "torque of one limb");
        public static final Measure EFFORT = new Measure(Quantity.SHARE, "effort, share of what this person has");
        public static final Measure FORCE = new Measure(Quantity.FORCE, "force along the rail, all limbs together");
        public static final Measure PULL = new Measure(Quantity.FORCE, "force on this limb");
        public static final Measure COUPLE = new Measure(Quantity.TORQUE, "turning force on this limb");
        public static final Measure STRESS =
                new Measure(Quantity.STRESS, "mean, from net torque without co-contraction");

        Unit unit(Wording wording) {
            return switch (quantity) {
                case TORQUE -> wording.torque();
                case SHARE -> wording.effort();
                case FORCE -> wording.force();
                case STRESS -> wording.stress();
                case LENGTH -> wording.length();
                case MASS -> wording.mass();
                case ANGLE -> wording.angle();
            };
        }
    }

    /** What a height is counted in. */
    public enum Quantity {
        TORQUE,
        SHARE,
        FORCE,
        STRESS,
        LENGTH,
        MASS,
        ANGLE
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
