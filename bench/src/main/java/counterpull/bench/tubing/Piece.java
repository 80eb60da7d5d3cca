package counterpull.bench.tubing;

import java.util.Optional;

/**
 * What was on the bench.
 *
 * @param tag number written on the piece
 * @param section size across; without it a law's constants are forces, with it stresses
 * @param strands that pulled together: 1, or 2 for a piece doubled over a hook, or more; a whole number, as taken
 * @param preparation before the readings
 */
public record Piece(String tag, Optional<CrossSection> section, double strands, Preparation preparation) {
    /** One strand, cycled before, no size. */
    public static Piece tagged(String tag) {
        return new Piece(tag, Optional.empty(), 1, Preparation.CYCLED);
    }
}
