package counterpull.scenario.resist;

import counterpull.engine.load.DeadWeight;
import counterpull.engine.motion.BodyPoint;
import counterpull.scenario.content.Resisting;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Shape;
import counterpull.scenario.format.Out;
import java.util.Optional;

/** A weight that rides on a point of the body: a cuff, a dumbbell, a bar. */
final class DeadWeightKind implements ResistKind {
    private static final Shape SHAPE = Shape.of("dead weight", "name", "at", "mass", "chosen");

    @Override
    public Shape shape() {
        return SHAPE;
    }

    @Override
    public Optional<Resisting> read(Fields fields, Setting setting) {
        String name = fields.text("name");
        Optional<BodyPoint> at = setting.body().point(fields, "at");
        Weight weight = Weight.read(fields);
        return fields.built(
                () -> Resisting.weighing(new DeadWeight(name, at.orElseThrow(), weight.loaded()), weight.chosen()));
    }

    @Override
    public Optional<Out> write(Resisting resisting, Setting setting) {
        if (!(resisting.resistance() instanceof DeadWeight weight)) {
            return Optional.empty();
        }
        Out out = new Out().put("name", weight.name()).put("at", setting.body().written(weight.at()));
        return Optional.of(Weight.write(out, weight.mass(), resisting));
    }
}
