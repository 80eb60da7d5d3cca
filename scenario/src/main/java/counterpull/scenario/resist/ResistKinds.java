package counterpull.scenario.resist;

import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Shape;
import counterpull.scenario.format.Out;
import counterpull.scenario.movement.MovingBody;
import counterpull.scenario.resist.ResistKind.Resisting;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Every kind of thing that resists. A new one is one line here. */
public final class ResistKinds {
    private static final List<ResistKind> ALL = List.of(new DeadWeightKind());

    private ResistKinds() {}

    /** A group with one key: the kind. */
    public static Shape shape() {
        return new Shape(
                "resistance", ALL.stream().map(kind -> kind.shape().name()).toList());
    }

    /** Every group of theirs. */
    public static List<Shape> shapes() {
        List<Shape> shapes = new ArrayList<>(List.of(shape()));
        for (ResistKind kind : ALL) {
            shapes.add(kind.shape());
            shapes.addAll(kind.parts());
        }
        return shapes;
    }

    /** What a group with one key says. */
    public static Optional<Resisting> read(Fields fields, MovingBody body) {
        Optional<String> given = fields.oneOf(shape().keys().toArray(String[]::new));
        return given.flatMap(key ->
                fields.group(key, kind(key).shape()).flatMap(group -> kind(key).read(group, body)));
    }

    private static ResistKind kind(String key) {
        return ALL.stream()
                .filter(kind -> kind.shape().name().equals(key))
                .findFirst()
                .orElseThrow();
    }

    /** The group with one key. */
    public static Out write(Resisting resisting, MovingBody body) {
        for (ResistKind kind : ALL) {
            Optional<Out> keys = kind.write(resisting, body);
            if (keys.isPresent()) {
                return new Out().put(kind.shape().name(), keys.get());
            }
        }
        throw new IllegalArgumentException(
                "no file can say: " + resisting.resistance().words());
    }
}
