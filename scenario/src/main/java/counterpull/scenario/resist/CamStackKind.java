package counterpull.scenario.resist;

import static counterpull.scenario.format.Measures.AT_LEAST_ONE;
import static counterpull.scenario.format.Measures.CAM_ANGLE;
import static counterpull.scenario.format.Measures.CAM_RADIUS;
import static counterpull.scenario.format.Measures.INERTIA;

import counterpull.engine.load.CamRadius;
import counterpull.engine.load.CamStack;
import counterpull.engine.load.LeverFrame;
import counterpull.scenario.content.Resisting;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Shape;
import counterpull.scenario.format.Out;
import counterpull.scenario.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A lever that winds the line of a weight stack on a cam. */
final class CamStackKind implements ResistKind {
    private static final Shape SHAPE = Shape.of(
            "cam stack",
            "name",
            "pivot",
            "pad",
            "cuff",
            "cam",
            "ratio",
            "friction",
            "mass",
            "chosen",
            "moving mass",
            "inertia");
    private static final Shape CAM = Shape.of("cam reading", "angle", "radius");

    @Override
    public Shape shape() {
        return SHAPE;
    }

    @Override
    public List<Shape> parts() {
        return List.of(CAM);
    }

    @Override
    public Optional<Resisting> read(Fields fields, Setting setting) {
        String name = fields.text("name");
        Optional<LeverFrame> frame = LeverFrames.read(fields, setting.body());
        Optional<CamRadius> radius = radius(fields);
        StackLines.Read stack = StackLines.read(fields);
        double inertia = fields.required("inertia", INERTIA);
        return fields.built(() -> Resisting.weighing(
                new CamStack(
                        name,
                        frame.orElseThrow(),
                        radius.orElseThrow(),
                        stack.line().orElseThrow(),
                        inertia),
                stack.chosen()));
    }

    private static Optional<CamRadius> radius(Fields fields) {
        List<CamRadius.Reading> readings = new ArrayList<>();
        for (Fields group : fields.groups("cam", CAM, AT_LEAST_ONE)) {
            double angle = group.required("angle", CAM_ANGLE);
            double radius = group.required("radius", CAM_RADIUS);
            group.built(() -> new CamRadius.Reading(angle, radius)).ifPresent(readings::add);
        }
        return fields.built(() -> new CamRadius(readings));
    }

    @Override
    public Optional<Out> write(Resisting resisting, Setting setting) {
        if (!(resisting.resistance() instanceof CamStack cam)) {
            return Optional.empty();
        }
        Out out = LeverFrames.write(new Out().put("name", cam.name()), cam.frame(), setting.body());
        out.putGroups(
                "cam",
                cam.radius().readings(),
                reading -> new Out()
                        .put("angle", reading.angle(), Dimension.ANGLE)
                        .put("radius", reading.radius(), Dimension.LENGTH));
        return Optional.of(
                StackLines.write(out, cam.line(), resisting).put("inertia", cam.inertia(), Dimension.INERTIA));
    }
}
