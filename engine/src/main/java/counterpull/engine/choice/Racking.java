package counterpull.engine.choice;

import counterpull.engine.Require;
import java.util.List;

/**
 * How a sled is loaded on the floor.
 *
 * @param racks tape readings at which the carriage can be racked, m
 * @param mostImbalance most difference between left and right horns while loading, kg; infinite where not stated
 */
public record Racking(List<Double> racks, double mostImbalance) {
    public Racking {
        racks = List.copyOf(racks);
        for (double rack : racks) {
            Require.finite(rack, "racking position's tape reading", "m");
        }
        Require.positive(
                mostImbalance == Double.POSITIVE_INFINITY ? 1 : mostImbalance, "left/right limit of the horns", "kg");
    }
}
