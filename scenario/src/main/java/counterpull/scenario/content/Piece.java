package counterpull.scenario.content;

import counterpull.engine.elastic.Rubber;
import java.util.Optional;

/**
 * A piece of rubber as a file describes it.
 *
 * @param tag what is written on it
 * @param size its cross-section, where measured
 * @param lengths natural and tested length, hardware
 * @param law how it pulls
 * @param back what it gives back
 * @param mass kg, 0 where unknown
 * @param count how many equal ones there are
 */
public record Piece(
        String tag, Optional<Size> size, Lengths lengths, PieceLaw law, GivesBack back, double mass, int count) {

    /**
     * Lengths of a piece, m.
     *
     * @param natural unstretched, between its hardware
     * @param tested longest that was tested
     * @param hardware taken up where it is doubled over a hook
     */
    public record Lengths(double natural, double tested, double hardware) {}

    /** As the engine takes it. */
    public Rubber rubber() {
        return new Rubber(
                tag,
                lengths.natural(),
                law.law(lengths.natural(), size),
                back.unloading(lengths.natural()),
                lengths.tested(),
                mass,
                lengths.hardware());
    }
}
