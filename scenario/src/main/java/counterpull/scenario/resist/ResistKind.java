package counterpull.scenario.resist;

import counterpull.scenario.content.Resisting;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Shape;
import counterpull.scenario.format.Out;
import java.util.List;
import java.util.Optional;

/** One kind of thing that resists: its keys, how it is read and how it is written. */
public interface ResistKind {
    /** Its key and its keys; the shape's name is the key. */
    Shape shape();

    /** The groups inside it that no other kind has. */
    default List<Shape> parts() {
        return List.of();
    }

    /** What the group says; a problem for everything that is wrong with it. */
    Optional<Resisting> read(Fields fields, Setting setting);

    /** The keys of something of this kind; empty where it is of another kind. */
    Optional<Out> write(Resisting resisting, Setting setting);
}
