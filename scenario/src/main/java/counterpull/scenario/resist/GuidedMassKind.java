package counterpull.scenario.resist;

import counterpull.engine.load.Carriage;
import counterpull.engine.load.GuidedMass;
import counterpull.engine.load.Loaded.Plates;
import counterpull.engine.motion.BodyPoint;
import counterpull.scenario.content.Resisting;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Shape;
import counterpull.scenario.format.Measures;
import counterpull.scenario.format.Out;
import counterpull.scenario.units.Dimension;
import java.util.Optional;
import java.util.OptionalDouble;

/** A bar, plate or seat on a straight rail that touches the body at a point. */
final class GuidedMassKind implements ResistKind {
    private static final Shape SHAPE = Shape.of(
            "guided mass",
            "name",
            "at",
            "rail direction",
            "carriage",
            "counterweight",
            "friction",
            "plates at most",
            "chosen");

    @Override
    public Shape shape() {
        return SHAPE;
    }

    @Override
    public Optional<Resisting> read(Fields fields, Setting setting) {
        String name = fields.text("name");
        Optional<BodyPoint> at = setting.body().point(fields, "at");
        double rail = fields.required("rail direction", Measures.ANGLE);
        Optional<Carriage> carriage = Carriages.read(fields);
        OptionalDouble chosen = fields.optional("chosen", Measures.LOAD);
        Plates plates = chosen.isPresent() ? Plates.HERE : Plates.ELSEWHERE;
        return fields.built(() -> Resisting.weighing(
                new GuidedMass(name, at.orElseThrow(), rail, carriage.orElseThrow(), plates),
                chosen.isPresent() ? Optional.of(chosen.getAsDouble()) : Optional.empty()));
    }

    @Override
    public Optional<Out> write(Resisting resisting, Setting setting) {
        if (!(resisting.resistance() instanceof GuidedMass mass)) {
            return Optional.empty();
        }
        Out out = new Out()
                .put("name", mass.name())
                .put("at", setting.body().written(mass.at()))
                .put("rail direction", mass.railAngle(), Dimension.ANGLE);
        Carriages.write(out, mass.carriage());
        resisting.chosen().ifPresent(chosen -> out.put("chosen", chosen, Dimension.MASS));
        return Optional.of(out);
    }
}
