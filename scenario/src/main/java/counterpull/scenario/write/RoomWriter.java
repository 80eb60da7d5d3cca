package counterpull.scenario.write;

import counterpull.engine.choice.PlateKind;
import counterpull.engine.load.Anchor;
import counterpull.engine.load.Attachment;
import counterpull.scenario.content.Room;
import counterpull.scenario.format.Out;
import counterpull.scenario.format.Words;
import counterpull.scenario.resist.RubberWriter;
import counterpull.scenario.units.Dimension;

/** Writes what is in the room. */
final class RoomWriter {
    private RoomWriter() {}

    static Out kit(Room room) {
        return new Out()
                .putGroups("plates", room.plates(), RoomWriter::plate)
                .putGroups("rubber", room.pieces(), RubberWriter::piece)
                .putGroups("anchors", room.hooks().anchors(), RoomWriter::anchor)
                .putGroups("attachments", room.hooks().attachments(), RoomWriter::attachment)
                .put("hangs", room.rules().hangs(), Words.HANG::word)
                .putQuantities("dead lengths", room.rules().deadLengths(), Dimension.LENGTH)
                .put("strands at most", room.rules().mostStrands())
                .put("lines at most", room.rules().mostLines());
    }

    private static Out plate(PlateKind plate) {
        return new Out()
                .put("mass", plate.mass(), Dimension.MASS)
                .put("count", plate.count())
                .put("name", plate.name());
    }

    private static Out anchor(Anchor anchor) {
        return new Out()
                .put("name", anchor.name())
                .put("along", anchor.at().x(), Dimension.LENGTH)
                .put("across", anchor.at().y(), Dimension.LENGTH)
                .put("aside", anchor.lateral(), Dimension.LENGTH)
                .putStated("rating", anchor.rating(), Dimension.FORCE);
    }

    private static Out attachment(Attachment attachment) {
        return new Out()
                .put("name", attachment.name())
                .put("along", attachment.at().x(), Dimension.LENGTH)
                .put("across", attachment.at().y(), Dimension.LENGTH)
                .put("aside", attachment.lateral(), Dimension.LENGTH);
    }
}
