package counterpull.scenario.movement;

import counterpull.engine.motion.Motion;
import counterpull.scenario.fields.Choices;
import counterpull.scenario.fields.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Every kind of movement that a file can ask for, besides the press on a sled. */
public final class MovementKinds {
    /** The kind that has a machine of its own. */
    public static final String RAIL_PRESS = "rail press";

    private static final List<MovementKind> ALL = List.of(new HingeKind(), new PathKind(), new StandKind());

    private MovementKinds() {}

    /** Every word that "kind" may be. */
    public static Choices<String> words() {
        List<String> words = new ArrayList<>(List.of(RAIL_PRESS));
        ALL.forEach(kind -> words.add(kind.word()));
        return Choices.of(word -> word, words.toArray(String[]::new));
    }

    /** The kind with that word; empty for a press and for what is no kind. */
    public static Optional<MovementKind> named(String word) {
        return ALL.stream().filter(kind -> kind.word().equals(word)).findFirst();
    }

    /** The kind of a movement. */
    public static MovementKind of(Motion motion) {
        return ALL.stream()
                .filter(kind -> kind.is(motion))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no file can say: " + motion.words()));
    }

    /** Every group of theirs. */
    public static List<Shape> shapes() {
        List<Shape> shapes = new ArrayList<>();
        for (MovementKind kind : ALL) {
            shapes.add(kind.shape());
            shapes.addAll(kind.parts());
        }
        return shapes;
    }
}
