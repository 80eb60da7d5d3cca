package counterpull.scenario.content;

import counterpull.engine.choice.Kit.Hooks;
import counterpull.engine.choice.LineRules;
import counterpull.engine.choice.PlateKind;
import counterpull.engine.choice.RubberStock;
import java.util.List;

/**
 * What is in the room to build a setup from.
 *
 * @param plates plates by mass
 * @param pieces rubber by tag
 * @param hooks anchors and attachments
 * @param rules how rubber may be hung
 */
public record Room(List<PlateKind> plates, List<Piece> pieces, Hooks hooks, LineRules rules) {
    public Room {
        plates = List.copyOf(plates);
        pieces = List.copyOf(pieces);
    }

    /** An empty room. */
    public static Room empty() {
        return new Room(
                List.of(), List.of(), new Hooks(List.of(), List.of()), new LineRules(List.of(), List.of(0.0), 0, 0));
    }

    /** The rubber as the engine takes it. */
    public List<RubberStock> rubber() {
        return pieces.stream()
                .map(piece -> new RubberStock(piece.rubber(), piece.count()))
                .toList();
    }
}
