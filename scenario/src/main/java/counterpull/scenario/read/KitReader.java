package counterpull.scenario.read;

import static counterpull.scenario.format.Measures.COUNT;
import static counterpull.scenario.format.Measures.DEAD_LENGTH;
import static counterpull.scenario.format.Measures.LINES;
import static counterpull.scenario.format.Measures.PLACE;
import static counterpull.scenario.format.Measures.PLATE;
import static counterpull.scenario.format.Measures.RATING;
import static counterpull.scenario.format.Measures.STRANDS;
import static counterpull.scenario.format.Measures.UP_TO_A_HUNDRED;

import counterpull.engine.choice.Kit.Hooks;
import counterpull.engine.choice.LineRules;
import counterpull.engine.choice.PlateKind;
import counterpull.engine.load.Anchor;
import counterpull.engine.load.Attachment;
import counterpull.engine.load.Hang;
import counterpull.engine.planar.Vec;
import counterpull.scenario.content.Piece;
import counterpull.scenario.content.Room;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.format.Shapes;
import counterpull.scenario.format.Words;
import counterpull.scenario.problem.Code;
import counterpull.scenario.resist.RubberReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads what is in the room. */
final class KitReader {
    private KitReader() {}

    static Optional<Room> read(Fields top) {
        return top.has("kit") ? top.group("kit", Shapes.KIT).flatMap(KitReader::room) : Optional.of(Room.empty());
    }

    private static Optional<Room> room(Fields fields) {
        List<PlateKind> plates = plates(fields);
        List<Piece> pieces = new ArrayList<>();
        UniqueNames tags = new UniqueNames("piece of rubber");
        for (Fields piece : fields.optionalGroups("rubber", Shapes.RUBBER, UP_TO_A_HUNDRED)) {
            tags.check(piece, "tag");
            RubberReader.read(piece).ifPresent(pieces::add);
        }
        Hooks hooks = new Hooks(anchors(fields), attachments(fields));
        Optional<LineRules> rules = rules(fields);
        return fields.built(() -> new Room(plates, pieces, hooks, rules.orElseThrow()));
    }

    private static List<PlateKind> plates(Fields fields) {
        List<PlateKind> plates = new ArrayList<>();
        for (Fields plate : fields.optionalGroups("plates", Shapes.PLATE, UP_TO_A_HUNDRED)) {
            double mass = plate.required("mass", PLATE);
            int count = plate.count("count", COUNT);
            String name =
                    plate.optionalText("name").or(() -> plate.peek("mass")).orElse("");
            if (plate.isSound() && plates.stream().anyMatch(other -> other.mass() == mass)) {
                plate.report(Code.DUPLICATE_NAME, "mass", "another line has plates of this mass", "Add the counts");
            }
            plates.add(new PlateKind(name, mass, count));
        }
        return plates;
    }

    private static List<Anchor> anchors(Fields fields) {
        List<Anchor> anchors = new ArrayList<>();
        UniqueNames names = new UniqueNames("anchor");
        for (Fields anchor : fields.optionalGroups("anchors", Shapes.ANCHOR, UP_TO_A_HUNDRED)) {
            names.check(anchor, "name");
            double rating = anchor.orElse("rating", RATING, Double.POSITIVE_INFINITY);
            anchors.add(new Anchor(anchor.text("name"), place(anchor), anchor.orElse("aside", PLACE, 0), rating));
        }
        return anchors;
    }

    private static List<Attachment> attachments(Fields fields) {
        List<Attachment> attachments = new ArrayList<>();
        UniqueNames names = new UniqueNames("attachment");
        for (Fields found : fields.optionalGroups("attachments", Shapes.ATTACHMENT, UP_TO_A_HUNDRED)) {
            names.check(found, "name");
            attachments.add(new Attachment(found.text("name"), place(found), found.orElse("aside", PLACE, 0)));
        }
        return attachments;
    }

    private static Vec place(Fields fields) {
        return new Vec(fields.required("along", PLACE), fields.required("across", PLACE));
    }

    private static Optional<LineRules> rules(Fields fields) {
        List<Hang> hangs = fields.optionalChoices("hangs", Words.HANG, UP_TO_A_HUNDRED).stream()
                .distinct()
                .toList();
        List<Double> deadLengths = fields.optionalQuantities("dead lengths", DEAD_LENGTH, UP_TO_A_HUNDRED);
        int strands = fields.optionalCount("strands at most", STRANDS).orElse(STRANDS.high());
        int lines = fields.optionalCount("lines at most", LINES).orElse(2);
        return fields.built(() -> new LineRules(
                hangs.isEmpty() ? List.of(Hang.values()) : hangs,
                deadLengths.isEmpty() ? List.of(0.0) : deadLengths,
                strands,
                lines));
    }
}
