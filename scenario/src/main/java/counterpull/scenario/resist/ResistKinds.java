package counterpull.scenario.resist;

import counterpull.scenario.content.Resisting;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Shape;
import counterpull.scenario.format.Out;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Every kind of thing that resists. A new one is one line here. */
public final class ResistKinds {
    private static final List<ResistKind> ALL = List.of(
            new DeadWeightKind(),
            new CableKind(),
            new LeverKind(),
            new CamStackKind(),
            new MeasuredProfileKind(),
            new GuidedMassKind(),
            new HangingChainKind(),
            new StretchLineKind());

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
        shapes.addAll(LeverFrames.SHAPES);
        return shapes;
    }

    /** What a group with one key says. */
    public static Optional<Resisting> read(Fields fields, Setting setting) {
        return fields.oneOf(shape().keys().toArray(String[]::new))
                .map(ResistKinds::kind)
                .flatMap(kind ->
                        fields.group(kind.shape().name(), kind.shape()).flatMap(group -> kind.read(group, setting)));
    }

    private static ResistKind kind(String key) {
        return ALL.stream()
                .filter(kind -> kind.shape().name().equals(key))
                .findFirst()
                .orElseThrow();
    }

    /** The group with one key. */
    public static Out write(Resisting resisting, Setting setting) {
        for (ResistKind kind : ALL) {
            Optional<Out> keys = kind.write(resisting, setting);
            if (keys.isPresent()) {
                return new Out().put(kind.shape().name(), keys.get());
            }
        }
        throw new IllegalArgumentException(
                "no file can say: " + resisting.resistance().words());
    }
}
