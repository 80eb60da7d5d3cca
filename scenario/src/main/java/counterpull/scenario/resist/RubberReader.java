package counterpull.scenario.resist;

import static counterpull.scenario.format.Measures.AT_LEAST_ONE;
import static counterpull.scenario.format.Measures.BORE;
import static counterpull.scenario.format.Measures.HARDWARE;
import static counterpull.scenario.format.Measures.LOSS;
import static counterpull.scenario.format.Measures.PIECES;
import static counterpull.scenario.format.Measures.RUBBER_LENGTH;
import static counterpull.scenario.format.Measures.RUBBER_MASS;
import static counterpull.scenario.format.Measures.THICKNESS;

import counterpull.scenario.content.GivesBack;
import counterpull.scenario.content.Piece;
import counterpull.scenario.content.Piece.Lengths;
import counterpull.scenario.content.PieceLaw;
import counterpull.scenario.content.Size;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.format.Shapes;
import counterpull.scenario.problem.Code;
import java.util.Optional;

/** Reads a piece of rubber. */
public final class RubberReader {
    private RubberReader() {}

    /** A piece; a problem for everything that is wrong with it. */
    public static Optional<Piece> read(Fields fields) {
        String tag = fields.text("tag");
        Optional<Size> size = fields.optionalGroup("size", Shapes.SIZE).flatMap(RubberReader::size);
        Lengths lengths = new Lengths(
                fields.required("natural length", RUBBER_LENGTH),
                fields.required("tested length", RUBBER_LENGTH),
                fields.orElse("hardware", HARDWARE, 0));
        Optional<PieceLaw> law = fields.group("law", Shapes.LAW).flatMap(LawReader::read);
        Optional<GivesBack> back = givesBack(fields);
        double mass = fields.orElse("mass", RUBBER_MASS, 0);
        int count = fields.count("count", PIECES);
        inOrder(fields, lengths);
        return fields.built(() -> {
            Piece piece = new Piece(tag, size, lengths, law.orElseThrow(), back.orElseThrow(), mass, count);
            piece.rubber();
            return piece;
        });
    }

    private static void inOrder(Fields fields, Lengths lengths) {
        if (fields.isSound() && lengths.tested() <= lengths.natural()) {
            fields.report(
                    Code.OUT_OF_ORDER,
                    "tested length",
                    "the tested length must be more than the natural length",
                    "Give the longest length at which the piece was pulled on the bench");
        }
        if (fields.isSound() && lengths.hardware() >= lengths.natural()) {
            fields.report(
                    Code.OUT_OF_ORDER,
                    "hardware",
                    "what the hardware takes up must be less than the natural length",
                    "Check the numbers and their units");
        }
    }

    private static Optional<Size> size(Fields fields) {
        Optional<String> given = fields.oneOf("bore", "width");
        if (given.isEmpty()) {
            return Optional.empty();
        }
        boolean tube = given.get().equals("bore");
        notWith(fields, tube ? "thickness" : "wall");
        return tube
                ? Optional.of(new Size.Tube(fields.required("bore", BORE), fields.required("wall", THICKNESS)))
                : Optional.of(
                        new Size.Strip(fields.required("width", THICKNESS), fields.required("thickness", THICKNESS)));
    }

    private static void notWith(Fields fields, String key) {
        if (fields.has(key)) {
            fields.report(
                    Code.CONTRADICTION,
                    key,
                    "a piece is either a tube (bore and wall) or a strip (width and thickness)",
                    "Keep one pair");
        }
    }

    private static Optional<GivesBack> givesBack(Fields fields) {
        Optional<String> given = fields.oneOf("loss", "shortening");
        if (given.isEmpty()) {
            return Optional.empty();
        }
        return given.get().equals("loss")
                ? Optional.of(new GivesBack.Less(fields.required("loss", LOSS)))
                : Optional.of(new GivesBack.Bench(
                        LawReader.readings(fields.groups("shortening", Shapes.READING, AT_LEAST_ONE))));
    }
}
