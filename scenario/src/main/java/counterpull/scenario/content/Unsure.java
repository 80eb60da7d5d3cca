package counterpull.scenario.content;

import counterpull.engine.body.MeasuredLengths;
import counterpull.engine.body.Side;
import counterpull.engine.uncertainty.Input;
import counterpull.engine.uncertainty.Stated;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Standard uncertainties that a scenario states; whatever it does not has the engine's usual one.
 *
 * @param inputs by what they are of, SI or a share
 * @param pieces of single pieces of rubber
 */
public record Unsure(Map<Input, Double> inputs, List<UnsurePiece> pieces) {
    public Unsure {
        inputs = Map.copyOf(inputs);
        pieces = List.copyOf(pieces);
    }

    /**
     * How sure one piece of rubber is; NaN where not stated.
     *
     * @param tag what is written on it
     * @param force standard uncertainty of its pull, a share
     * @param naturalLength of its natural length, m
     */
    public record UnsurePiece(String tag, double force, double naturalLength) {}

    /** Nothing stated. */
    public static Unsure nothing() {
        return new Unsure(Map.of(), List.of());
    }

    /** As the engine takes it, for a person of whom these lengths were measured. */
    public Stated stated(Client client) {
        Map<String, Stated.Rubber> rubber = new java.util.LinkedHashMap<>();
        for (UnsurePiece piece : pieces) {
            rubber.put(piece.tag(), new Stated.Rubber(piece.force(), piece.naturalLength()));
        }
        Map<Side, MeasuredLengths> measured = new EnumMap<>(Side.class);
        for (ClientLimb limb : client.limbs()) {
            measured.put(limb.side(), limb.measured());
        }
        return new Stated(inputs, rubber, measured);
    }
}
