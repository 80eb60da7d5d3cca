package counterpull.picture;

/** One thing drawn on a chart, in SI. */
public sealed interface Layer {
    /**
     * A line through a series, with gaps where nothing is known.
     *
     * @param series the values
     * @param look colour and form
     * @param label the word beside it; empty for none
     * @param gap the word in a gap ("strength not known"); empty for none
     */
    record Curve(Series series, Look look, String label, String gap) implements Layer {
        /** A curve whose gaps stay wordless. */
        public Curve(Series series, Look look, String label) {
            this(series, look, label, "");
        }
    }

    /**
     * Readings, each as a shape of its own.
     *
     * @param series the readings
     * @param marker their shape
     * @param ink their colour token
     * @param label the word beside them; empty for none
     */
    record Dots(Series series, Marker marker, Ink ink, String label) implements Layer {}

    /**
     * Upright bars from one value to another: how sure single values are.
     *
     * @param low lower ends
     * @param high upper ends
     * @param ink their colour token
     */
    record Bars(Series low, Series high, Ink ink) implements Layer {}

    /**
     * An area between two series, where both are known.
     *
     * @param low the lower edge
     * @param high the upper edge
     * @param ink its light fill
     */
    record Band(Series low, Series high, Ink ink) implements Layer {}

    /**
     * A limit at one value, hatched on the side that must not be entered.
     *
     * @param value SI
     * @param side which side is out of bounds
     * @param label the word beside it
     */
    record Limit(double value, Side side, String label) implements Layer {
        /** The side of a limit that must not be entered. */
        public enum Side {
            ABOVE,
            BELOW
        }
    }

    /**
     * A stretch of the range that is marked by hatching and a word.
     *
     * @param from where along the range, rad or m
     * @param to where along the range, rad or m
     * @param words what is so there
     */
    record Stretch(double from, double to, String words) implements Layer {}

    /**
     * A point that matters, as a ring with a word beside it.
     *
     * @param x where along the range, rad or m
     * @param y value, SI
     * @param words what is there
     */
    record Mark(double x, double y, String words) implements Layer {}

    /**
     * A word at the foot or head of the plot.
     *
     * @param words what it says
     * @param place where
     */
    record Note(String words, Place place) implements Layer {
        /** Where a note stands. */
        public enum Place {
            /** Just below the zero line. */
            BELOW_ZERO,
            /** In the middle of the plot. */
            MIDDLE
        }
    }
}
