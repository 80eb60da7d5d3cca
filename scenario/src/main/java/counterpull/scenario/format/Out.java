package counterpull.scenario.format;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import counterpull.scenario.units.Dimension;
import counterpull.scenario.units.Quantity;
import counterpull.scenario.units.Unit;
import counterpull.scenario.units.Units;
import java.util.List;
import java.util.function.Function;

/** One group of keys being written; each quantity as a text that reads back as the same number. */
public final class Out {
    private final ObjectNode node = JsonNodeFactory.instance.objectNode();

    /** Writes an SI value in the metric unit that people use for it. */
    public static String quantity(double si, Dimension dimension) {
        return quantity(si, Units.METRIC.unit(dimension));
    }

    private static String quantity(double si, Unit unit) {
        return Quantity.exactly(si, unit).toString();
    }

    public Out put(String key, String text) {
        node.put(key, text);
        return this;
    }

    public Out put(String key, int count) {
        node.put(key, count);
        return this;
    }

    public Out put(String key, double si, Dimension dimension) {
        return put(key, quantity(si, dimension));
    }

    public Out put(String key, double si, Unit unit) {
        return put(key, quantity(si, unit));
    }

    /** A limit; left out where none is stated. */
    public Out putStated(String key, double si, Dimension dimension) {
        return Math.abs(si) < Double.MAX_VALUE ? put(key, si, dimension) : this;
    }

    public Out put(String key, Out group) {
        node.set(key, group.node);
        return this;
    }

    public <T> Out put(String key, List<T> items, Function<T, String> text) {
        ArrayNode array = node.putArray(key);
        items.forEach(item -> array.add(text.apply(item)));
        return this;
    }

    public <T> Out putGroups(String key, List<T> items, Function<T, Out> group) {
        ArrayNode array = node.putArray(key);
        items.forEach(item -> array.add(group.apply(item).node));
        return this;
    }

    public Out putQuantities(String key, List<Double> items, Dimension dimension) {
        return put(key, items, item -> quantity(item, dimension));
    }

    public ObjectNode node() {
        return node;
    }
}
