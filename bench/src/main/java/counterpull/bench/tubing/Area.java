package counterpull.bench.tubing;

import counterpull.bench.Kind;
import java.util.Optional;

/** Cross-section that a law's constants are given for: the piece's, or one square metre where it is not known. */
record Area(double squareMetres, Kind kind) {
    /** Constants are then forces: the engine's law of one square metre pulls exactly so. */
    private static final Area UNKNOWN = new Area(1, Kind.FORCE);

    static Area of(Optional<CrossSection> section) {
        return section.map(known -> new Area(known.area(), Kind.STRESS)).orElse(UNKNOWN);
    }
}
