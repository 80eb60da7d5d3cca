package counterpull.scenario.format;

import counterpull.engine.uncertainty.Input;
import counterpull.engine.uncertainty.Spread;
import counterpull.scenario.fields.Measure;
import counterpull.scenario.fields.Shape;
import counterpull.scenario.units.Dimension;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The keys under which a file states standard uncertainties: one for each input, the two of friction in a group of their own. */
public final class UnsureKeys {
    /** Inputs that stand in the group "friction". */
    public static final List<Input> FRICTION = List.of(Input.FRICTION_CONSTANT, Input.FRICTION_COEFFICIENT);

    /** Inputs that only a press on a sled has. */
    private static final Set<Input> SLED = EnumSet.of(
            Input.RAIL_ANGLE,
            Input.CARRIAGE,
            Input.HIP_TO_PLATE,
            Input.FOOT_ROW,
            Input.HIP_SHIFT,
            Input.PRESSURE_POINT,
            Input.PUSH,
            Input.TRUNK,
            Input.DEAD_LENGTH,
            Input.ANCHORS);

    /** Inputs that a press on a sled does not have. */
    private static final Set<Input> ELSEWHERE = EnumSet.of(Input.READINGS);

    private UnsureKeys() {}

    /** The inputs that stand under a key of their own. */
    public static List<Input> plain() {
        List<Input> plain = new ArrayList<>(List.of(Input.values()));
        plain.removeAll(FRICTION);
        return plain;
    }

    /** Whether the input means something for any other exercise than a press on a sled. */
    public static boolean ofExercise(Input input) {
        return !SLED.contains(input);
    }

    /** Whether the input means something for a press on a sled. */
    public static boolean ofPress(Input input) {
        return !ELSEWHERE.contains(input);
    }

    /** The key of an input inside its group. */
    public static String key(Input input) {
        return switch (input) {
            case FRICTION_CONSTANT -> "constant";
            case FRICTION_COEFFICIENT -> "coefficient";
            default -> input.key();
        };
    }

    /** What the value of an input is counted in. */
    public static Dimension dimension(Input input) {
        return switch (input.kind()) {
            case ANGLE -> Dimension.ANGLE;
            case LENGTH -> Dimension.LENGTH;
            case MASS -> Dimension.MASS;
            case FORCE -> Dimension.FORCE;
            case SHARE, NUMBER -> Dimension.RATIO;
        };
    }

    /** Between which limits it is believed; ours. */
    public static Measure measure(Spread.Kind kind) {
        return switch (kind) {
            case ANGLE -> Measures.UNSURE_ANGLE;
            case LENGTH -> Measures.UNSURE_LENGTH;
            case MASS -> Measures.UNSURE_MASS;
            case FORCE -> Measures.UNSURE_FORCE;
            case SHARE, NUMBER -> Measures.UNSURE_SHARE;
        };
    }

    static Shape shape() {
        List<String> keys = new ArrayList<>();
        plain().forEach(input -> keys.add(key(input)));
        keys.add("friction");
        keys.add("rubber");
        return new Shape("uncertainty", keys);
    }
}
