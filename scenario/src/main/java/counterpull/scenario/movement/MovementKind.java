package counterpull.scenario.movement;

import counterpull.engine.motion.Motion;
import counterpull.engine.motion.WorkingRange;
import counterpull.scenario.content.Client;
import counterpull.scenario.content.Lift;
import counterpull.scenario.content.Sides;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Shape;
import counterpull.scenario.format.Out;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One kind of movement: its keys, how it is read and how it is written. */
public interface MovementKind {

    /**
     * A movement as a file describes it.
     *
     * @param motion the engine's movement
     * @param lift which way the lift goes
     */
    record Movement(Motion motion, Lift lift) {}

    /** The word by which a file asks for it. */
    String word();

    /** The keys of an exercise of this kind; the shape's name is the word. */
    Shape shape();

    /** The groups inside it that no other kind has. */
    default List<Shape> parts() {
        return List.of();
    }

    /** The movement; a problem for everything that is wrong with it. */
    Optional<Movement> read(Fields fields);

    /** The movement as it is for these limbs of this person, where the file leaves something to them. */
    default Movement fitted(Movement movement, Client client, Sides sides) {
        return movement;
    }

    /** The exercise's own range under the key "range", which the group has. */
    Optional<WorkingRange> range(Fields fields, Movement movement);

    /** Whether a movement is of this kind. */
    boolean is(Motion motion);

    /** Adds the movement's keys to an exercise being written. */
    void write(Movement movement, Out out);

    /** Writes the exercise's own range. */
    Out range(WorkingRange range);

    /** The keys of a kind: those of every exercise, then its own. */
    static Shape shape(String word, String... own) {
        List<String> keys = new ArrayList<>(List.of("kind", "limbs", "left share", "borne", "range"));
        keys.addAll(List.of(own));
        return new Shape(word, keys);
    }
}
