package counterpull.scenario.resist;

import counterpull.engine.load.Cable;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.planar.Vec;
import counterpull.scenario.content.Resisting;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Shape;
import counterpull.scenario.format.Out;
import java.util.Optional;

/** A cable from a weight stack through a fixed pulley to a point of the body. */
final class CableKind implements ResistKind {
    private static final Shape SHAPE =
            Shape.of("cable", "name", "at", "pulley", "ratio", "friction", "mass", "chosen", "moving mass");

    @Override
    public Shape shape() {
        return SHAPE;
    }

    @Override
    public Optional<Resisting> read(Fields fields, Setting setting) {
        String name = fields.text("name");
        Optional<BodyPoint> at = setting.body().point(fields, "at");
        Vec pulley = Places.read(fields, "pulley");
        StackLines.Read stack = StackLines.read(fields);
        return fields.built(() -> Resisting.weighing(
                new Cable(name, at.orElseThrow(), pulley, stack.line().orElseThrow()), stack.chosen()));
    }

    @Override
    public Optional<Out> write(Resisting resisting, Setting setting) {
        if (!(resisting.resistance() instanceof Cable cable)) {
            return Optional.empty();
        }
        Out out = new Out()
                .put("name", cable.name())
                .put("at", setting.body().written(cable.at()))
                .put("pulley", Places.written(cable.pulley()));
        return Optional.of(StackLines.write(out, cable.line(), resisting));
    }
}
