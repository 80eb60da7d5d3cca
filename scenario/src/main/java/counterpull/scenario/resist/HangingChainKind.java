package counterpull.scenario.resist;

import static counterpull.scenario.format.Measures.CHAIN_LENGTH;
import static counterpull.scenario.format.Measures.MASS_OF_A_METRE;
import static counterpull.scenario.format.Measures.PLACE;

import counterpull.engine.load.HangingChain;
import counterpull.engine.motion.BodyPoint;
import counterpull.scenario.content.Resisting;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Shape;
import counterpull.scenario.format.Out;
import counterpull.scenario.units.Dimension;
import java.util.Optional;

/** A chain that hangs from a point of the body and lies on the floor. */
final class HangingChainKind implements ResistKind {
    private static final Shape SHAPE = Shape.of("hanging chain", "name", "at", "mass of a metre", "length", "floor");

    @Override
    public Shape shape() {
        return SHAPE;
    }

    @Override
    public Optional<Resisting> read(Fields fields, Setting setting) {
        String name = fields.text("name");
        Optional<BodyPoint> at = setting.body().point(fields, "at");
        double perMetre = fields.required("mass of a metre", MASS_OF_A_METRE);
        double length = fields.required("length", CHAIN_LENGTH);
        double floor = fields.required("floor", PLACE);
        return fields.built(() -> Resisting.always(new HangingChain(name, at.orElseThrow(), perMetre, length, floor)));
    }

    @Override
    public Optional<Out> write(Resisting resisting, Setting setting) {
        if (!(resisting.resistance() instanceof HangingChain chain)) {
            return Optional.empty();
        }
        return Optional.of(new Out()
                .put("name", chain.name())
                .put("at", setting.body().written(chain.top()))
                .put("mass of a metre", chain.perMetre(), Dimension.MASS)
                .put("length", chain.length(), Dimension.LENGTH)
                .put("floor", chain.floor(), Dimension.LENGTH));
    }
}
