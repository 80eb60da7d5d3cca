package counterpull.scenario.fields;

import counterpull.scenario.units.Dimension;
import counterpull.scenario.units.Quantity;
import counterpull.scenario.units.QuantityText;
import counterpull.scenario.units.Reading.Read;

/**
 * What a value must be: its dimension and the closed interval in which it makes sense, each end in the unit in which it is
 * told to a person. Where the low end is above zero, zero and less are refused as not positive.
 */
public record Measure(Dimension dimension, Quantity low, Quantity high) {

    /** From two texts with units: {@code between("5 cm", "1 m")}. */
    public static Measure between(Dimension dimension, String low, String high) {
        return new Measure(dimension, quantity(low, dimension), quantity(high, dimension));
    }

    private static Quantity quantity(String text, Dimension dimension) {
        if (QuantityText.read(text, dimension) instanceof Read read) {
            return read.quantity();
        }
        throw new IllegalArgumentException(text + " is no " + dimension.words());
    }

    /** A value inside the interval, used in place of a refused one so that reading can go on. */
    double placeholder() {
        return (low.si() + high.si()) / 2;
    }
}
