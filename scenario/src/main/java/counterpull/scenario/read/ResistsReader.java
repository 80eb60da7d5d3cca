package counterpull.scenario.read;

import static counterpull.scenario.format.Measures.DEAD_LENGTH;
import static counterpull.scenario.format.Measures.LINES;
import static counterpull.scenario.format.Measures.PIECES;
import static counterpull.scenario.format.Measures.PLATE;
import static counterpull.scenario.format.Measures.UP_TO_A_HUNDRED;

import counterpull.engine.load.Anchor;
import counterpull.engine.load.Attachment;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.Hang;
import counterpull.engine.load.Placement;
import counterpull.scenario.content.Loaded;
import counterpull.scenario.content.Loaded.Plates;
import counterpull.scenario.content.Piece;
import counterpull.scenario.content.Room;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Named;
import counterpull.scenario.format.Shapes;
import counterpull.scenario.format.Words;
import counterpull.scenario.problem.Code;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads what is on the machine today. */
final class ResistsReader {
    private final Named<Piece> rubber;
    private final Named<Anchor> anchors;
    private final Named<Attachment> attachments;

    ResistsReader(Optional<Room> room) {
        rubber = new Named<>("rubber in the kit", room.map(Room::pieces), Piece::tag);
        anchors =
                new Named<>("anchor in the kit", room.map(found -> found.hooks().anchors()), Anchor::name);
        attachments = new Named<>(
                "attachment in the kit", room.map(found -> found.hooks().attachments()), Attachment::name);
    }

    Optional<Loaded> read(Fields top) {
        return top.has("resists")
                ? top.group("resists", Shapes.RESISTS).flatMap(this::loaded)
                : Optional.of(Loaded.nothing());
    }

    private Optional<Loaded> loaded(Fields fields) {
        Plates plates = plates(fields);
        List<ElasticLine> lines = new ArrayList<>();
        for (Fields line : fields.optionalGroups("lines", Shapes.LINE, LINES)) {
            line(line).ifPresent(lines::add);
        }
        return fields.built(() -> new Loaded(plates, lines));
    }

    private static Plates plates(Fields fields) {
        List<Double> each = fields.optionalQuantities("plates each side", PLATE, UP_TO_A_HUNDRED);
        List<Double> left = fields.optionalQuantities("plates left", PLATE, UP_TO_A_HUNDRED);
        List<Double> right = fields.optionalQuantities("plates right", PLATE, UP_TO_A_HUNDRED);
        List<Double> middle = fields.optionalQuantities("plates in the middle", PLATE, UP_TO_A_HUNDRED);
        boolean apart = fields.has("plates left") || fields.has("plates right");
        if (fields.has("plates each side") && apart) {
            fields.report(
                    Code.CONTRADICTION,
                    "plates each side",
                    "the sides are given together and apart",
                    "Give \"plates each side\", or \"plates left\" and \"plates right\"");
        }
        return apart ? new Plates(left, right, middle) : new Plates(each, each, middle);
    }

    private Optional<ElasticLine> line(Fields fields) {
        Optional<Piece> piece = fields.named("rubber", rubber);
        int count = fields.optionalCount("pieces", PIECES).orElse(1);
        Hang hang = fields.choice("hang", Words.HANG);
        Placement placement = fields.choice("placement", Words.PLACEMENT);
        Optional<Anchor> anchor = fields.named("anchor", anchors);
        Optional<Attachment> attachment = fields.named("attachment", attachments);
        double dead = fields.orElse("dead length", DEAD_LENGTH, 0);
        return fields.built(() -> new ElasticLine(
                piece.orElseThrow().rubber(),
                new ElasticLine.Pieces(count, hang, placement),
                dead,
                new ElasticLine.Ends(anchor.orElseThrow(), attachment.orElseThrow())));
    }
}
