package counterpull.scenario.write;

import counterpull.engine.uncertainty.Input;
import counterpull.scenario.content.Unsure;
import counterpull.scenario.content.Unsure.UnsurePiece;
import counterpull.scenario.format.Out;
import counterpull.scenario.format.UnsureKeys;
import counterpull.scenario.units.Dimension;
import java.util.List;

/** Writes standard uncertainties, as far as they are stated. */
final class UnsureWriter {
    private UnsureWriter() {}

    static void write(Unsure unsure, Out out) {
        if (unsure.equals(Unsure.nothing())) {
            return;
        }
        Out group = inputs(unsure, UnsureKeys.plain());
        if (UnsureKeys.FRICTION.stream().anyMatch(unsure.inputs()::containsKey)) {
            group.put("friction", inputs(unsure, UnsureKeys.FRICTION));
        }
        if (!unsure.pieces().isEmpty()) {
            group.putGroups("rubber", unsure.pieces(), UnsureWriter::piece);
        }
        out.put("uncertainty", group);
    }

    private static Out inputs(Unsure unsure, List<Input> inputs) {
        Out group = new Out();
        for (Input input : inputs) {
            if (unsure.inputs().containsKey(input)) {
                group.put(UnsureKeys.key(input), unsure.inputs().get(input), UnsureKeys.dimension(input));
            }
        }
        return group;
    }

    private static Out piece(UnsurePiece piece) {
        return new Out()
                .put("tag", piece.tag())
                .putStated("force", piece.force(), Dimension.RATIO)
                .putStated("natural length", piece.naturalLength(), Dimension.LENGTH);
    }
}
