package counterpull.scenario.resist;

import static counterpull.scenario.format.Measures.ANGLE;
import static counterpull.scenario.format.Measures.INERTIA;
import static counterpull.scenario.format.Measures.LOAD;
import static counterpull.scenario.format.Measures.PIVOT_FRICTION;
import static counterpull.scenario.format.Measures.RADIUS;
import static counterpull.scenario.format.Measures.UP_TO_A_HUNDRED;

import counterpull.engine.load.Horn;
import counterpull.engine.load.Lever;
import counterpull.engine.load.LeverBody;
import counterpull.engine.load.LeverFrame;
import counterpull.scenario.content.Resisting;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Shape;
import counterpull.scenario.format.Out;
import counterpull.scenario.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A lever with weights about a pivot that need not be the joint. */
final class LeverKind implements ResistKind {
    private static final Shape SHAPE = Shape.of("lever", "name", "pivot", "pad", "cuff", "itself", "horns", "friction");
    private static final Shape ITSELF = Shape.of("lever itself", "mass", "radius", "offset", "inertia");
    private static final Shape HORN = Shape.of("horn", "name", "radius", "offset", "mass", "chosen");

    @Override
    public Shape shape() {
        return SHAPE;
    }

    @Override
    public List<Shape> parts() {
        return List.of(ITSELF, HORN);
    }

    @Override
    public Optional<Resisting> read(Fields fields, Setting setting) {
        String name = fields.text("name");
        Optional<LeverFrame> frame = LeverFrames.read(fields, setting.body());
        Optional<LeverBody> itself = fields.group("itself", ITSELF).flatMap(LeverKind::itself);
        List<Horn> horns = new ArrayList<>();
        List<Double> chosen = new ArrayList<>();
        for (Fields group : fields.optionalGroups("horns", HORN, UP_TO_A_HUNDRED)) {
            Weight weight = Weight.read(group);
            weight.chosen().ifPresent(chosen::add);
            horn(group, weight).ifPresent(horns::add);
        }
        double friction = fields.orElse("friction", PIVOT_FRICTION, 0);
        return fields.built(() -> Resisting.weighing(
                new Lever(name, frame.orElseThrow(), itself.orElseThrow(), horns, friction),
                chosen.stream().findFirst()));
    }

    private static Optional<LeverBody> itself(Fields fields) {
        double mass = fields.required("mass", LOAD);
        double radius = fields.required("radius", RADIUS);
        double offset = fields.orElse("offset", ANGLE, 0);
        double inertia = fields.required("inertia", INERTIA);
        return fields.built(() -> new LeverBody(mass, radius, offset, inertia));
    }

    private static Optional<Horn> horn(Fields fields, Weight weight) {
        String name = fields.text("name");
        double radius = fields.required("radius", RADIUS);
        double offset = fields.required("offset", ANGLE);
        return fields.built(() -> new Horn(name, radius, offset, weight.loaded()));
    }

    @Override
    public Optional<Out> write(Resisting resisting, Setting setting) {
        if (!(resisting.resistance() instanceof Lever lever)) {
            return Optional.empty();
        }
        Out out = LeverFrames.write(new Out().put("name", lever.name()), lever.frame(), setting.body());
        return Optional.of(out.put("itself", itself(lever.body()))
                .putGroups("horns", lever.horns(), horn -> horn(horn, resisting))
                .put("friction", lever.friction(), Dimension.TORQUE));
    }

    private static Out itself(LeverBody body) {
        return new Out()
                .put("mass", body.mass(), Dimension.MASS)
                .put("radius", body.comRadius(), Dimension.LENGTH)
                .put("offset", body.comOffset(), Dimension.ANGLE)
                .put("inertia", body.inertia(), Dimension.INERTIA);
    }

    private static Out horn(Horn horn, Resisting resisting) {
        Out out = new Out()
                .put("name", horn.name())
                .put("radius", horn.radius(), Dimension.LENGTH)
                .put("offset", horn.offset(), Dimension.ANGLE);
        return Weight.write(out, horn.load(), resisting);
    }
}
