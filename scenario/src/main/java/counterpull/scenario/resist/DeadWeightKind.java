package counterpull.scenario.resist;

import counterpull.engine.load.DeadWeight;
import counterpull.engine.motion.BodyPoint;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Shape;
import counterpull.scenario.format.Out;
import counterpull.scenario.movement.MovingBody;
import java.util.Optional;

/** A weight that rides on a point of the body: a cuff, a dumbbell, a bar. */
final class DeadWeightKind implements ResistKind {
    private static final Shape SHAPE = Shape.of("dead weight", "name", "at", "mass", "chosen");

    @Override
    public Shape shape() {
        return SHAPE;
    }

    @Override
    public Optional<Resisting> read(Fields fields, MovingBody body) {
        String name = fields.text("name");
        Optional<BodyPoint> at = body.point(fields, "at");
        Weight weight = Weight.read(fields);
        return fields.built(
                () -> new Resisting(new DeadWeight(name, at.orElseThrow(), weight.loaded()), weight.chosen()));
    }

    @Override
    public Optional<Out> write(Resisting resisting, MovingBody body) {
        if (!(resisting.resistance() instanceof DeadWeight weight)) {
            return Optional.empty();
        }
        Out out = new Out().put("name", weight.name()).put("at", body.written(weight.at()));
        return Optional.of(Weight.write(out, weight.mass(), resisting));
    }
}
