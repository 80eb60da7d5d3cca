package counterpull.engine.load;

import java.util.function.DoubleFunction;

/**
 * One thing about what resists that is known only so far, and what resists if it is a little different.
 *
 * @param words as a person says it ("friction of the low cable")
 * @param kind what is turned
 * @param turned what resists with it turned: a factor about 1, or a change about 0, as the kind says
 */
public record Knob(String words, Kind kind, DoubleFunction<Resistance> turned) {
    /** What a knob turns. */
    public enum Kind {
        /** Mass that is always there, by a factor; chosen kilograms are not in it. */
        MASS(1),
        /** Readings of force or torque, all by one factor. */
        READINGS(1),
        /** Friction of a stack's line, a share of its pull, by a change; never below 0. */
        LINE_FRICTION(0),
        /** Constant friction of a carriage, N, by a change; never below 0. */
        CONSTANT_FRICTION(0),
        /** Friction coefficient of a carriage by a change; never below 0. */
        FRICTION_COEFFICIENT(0),
        /** Pull of rubber at every length, by a factor. */
        RUBBER_PULL(1),
        /** Natural length of rubber, m, by a change. */
        RUBBER_LENGTH(0);

        private final double neutral;

        Kind(double neutral) {
            this.neutral = neutral;
        }

        /** What changes nothing: 1 for a factor, 0 for a change. */
        public double neutral() {
            return neutral;
        }
    }

    /** The mass that is always there of something. */
    static Knob mass(String name, DoubleFunction<Resistance> turned) {
        return new Knob("mass of the " + name, Kind.MASS, turned);
    }
}
