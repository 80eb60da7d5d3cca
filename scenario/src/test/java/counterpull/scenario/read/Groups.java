package counterpull.scenario.read;

import counterpull.scenario.fields.Shape;
import counterpull.scenario.format.Shapes;
import counterpull.scenario.movement.MovementKinds;
import counterpull.scenario.resist.ResistKinds;
import java.util.List;
import java.util.stream.Stream;

/** Every group of the format. */
final class Groups {
    private Groups() {}

    static Stream<Shape> all() {
        return Stream.of(Shapes.all(), MovementKinds.shapes(), ResistKinds.shapes())
                .flatMap(List::stream);
    }
}
