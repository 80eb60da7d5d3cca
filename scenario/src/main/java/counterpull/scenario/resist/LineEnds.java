package counterpull.scenario.resist;

import static counterpull.scenario.format.Measures.ANGLE;
import static counterpull.scenario.format.Measures.PLACE;
import static counterpull.scenario.format.Measures.RADIUS;
import static counterpull.scenario.format.Measures.RATING;

import counterpull.engine.load.CamStack;
import counterpull.engine.load.FixedPoint;
import counterpull.engine.load.GuidedMass;
import counterpull.engine.load.Lever;
import counterpull.engine.load.LeverFrame;
import counterpull.engine.load.LineEnd;
import counterpull.engine.load.OnBody;
import counterpull.engine.load.OnGuidedMass;
import counterpull.engine.load.OnLever;
import counterpull.engine.load.RailFrame;
import counterpull.engine.load.Resistance;
import counterpull.engine.planar.Vec;
import counterpull.scenario.content.Resisting;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Named;
import counterpull.scenario.fields.Shape;
import counterpull.scenario.format.Out;
import counterpull.scenario.units.Dimension;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Reads and writes where a line ends: a group with one key that says on what, and how far aside. */
final class LineEnds {
    private static final Shape END = Shape.of("line end", "fixed", "on body", "on lever", "on guided mass", "aside");
    private static final Shape FIXED = Shape.of("fixed point", "name", "forward", "up", "rating");
    private static final Shape ON_LEVER = Shape.of("end on a lever", "name", "machine", "radius", "offset");
    private static final Shape ON_GUIDED_MASS = Shape.of("end on a guided mass", "name", "machine", "forward", "up");

    /** The groups of line ends. */
    static final List<Shape> SHAPES = List.of(END, FIXED, ON_LEVER, ON_GUIDED_MASS);

    private LineEnds() {}

    static Optional<LineEnd> read(Fields fields, String key, Setting setting) {
        return fields.group(key, END).flatMap(group -> end(group, setting));
    }

    private static Optional<LineEnd> end(Fields fields, Setting setting) {
        double aside = fields.orElse("aside", PLACE, 0);
        Optional<String> given = fields.oneOf("fixed", "on body", "on lever", "on guided mass");
        if (given.isEmpty()) {
            return Optional.empty();
        }
        return switch (given.get()) {
            case "fixed" -> fields.group("fixed", FIXED).flatMap(group -> fixed(group, aside));
            case "on body" ->
                setting.body().point(fields, "on body").flatMap(at -> fields.built(() -> new OnBody(at, aside)));
            case "on lever" -> fields.group("on lever", ON_LEVER).flatMap(group -> onLever(group, setting, aside));
            default ->
                fields.group("on guided mass", ON_GUIDED_MASS).flatMap(group -> onGuidedMass(group, setting, aside));
        };
    }

    private static Optional<LineEnd> fixed(Fields fields, double aside) {
        String name = fields.text("name");
        Vec at = Places.inside(fields);
        double rating = fields.orElse("rating", RATING, Double.POSITIVE_INFINITY);
        return fields.built(() -> new FixedPoint(name, at, aside, rating));
    }

    private static Optional<LineEnd> onLever(Fields fields, Setting setting, double aside) {
        String name = fields.text("name");
        Optional<LeverFrame> frame = fields.named("machine", machines("lever", setting, LineEnds::leverFrame))
                .flatMap(LineEnds::leverFrame);
        double radius = fields.required("radius", RADIUS);
        double offset = fields.required("offset", ANGLE);
        return fields.built(() -> new OnLever(name, frame.orElseThrow(), radius, offset, aside));
    }

    private static Optional<LineEnd> onGuidedMass(Fields fields, Setting setting, double aside) {
        String name = fields.text("name");
        Optional<RailFrame> frame = fields.named("machine", machines("guided mass", setting, LineEnds::railFrame))
                .flatMap(LineEnds::railFrame);
        Vec from = Places.inside(fields);
        return fields.built(() -> new OnGuidedMass(name, frame.orElseThrow(), from, aside));
    }

    /** The machines listed before the line that have such a frame. */
    private static <T> Named<Resistance> machines(
            String kind, Setting setting, Function<Resistance, Optional<T>> frame) {
        Optional<List<Resistance>> machines = setting.before()
                .map(before -> before.stream()
                        .map(Resisting::resistance)
                        .filter(resistance -> frame.apply(resistance).isPresent())
                        .toList());
        return new Named<>(kind + " listed before this line", machines, Resistance::words);
    }

    private static Optional<LeverFrame> leverFrame(Resistance resistance) {
        if (resistance instanceof Lever lever) {
            return Optional.of(lever.frame());
        }
        return resistance instanceof CamStack cam ? Optional.of(cam.frame()) : Optional.empty();
    }

    private static Optional<RailFrame> railFrame(Resistance resistance) {
        return resistance instanceof GuidedMass mass
                ? Optional.of(new RailFrame(mass.at(), mass.railAngle()))
                : Optional.empty();
    }

    static Out write(LineEnd end, Setting setting) {
        Out out = new Out();
        if (end instanceof FixedPoint fixed) {
            out.put("fixed", fixed(fixed));
        } else if (end instanceof OnBody body) {
            out.put("on body", setting.body().written(body.at()));
        } else if (end instanceof OnLever lever) {
            out.put("on lever", lever(lever, machine(setting, lever.frame(), LineEnds::leverFrame)));
        } else if (end instanceof OnGuidedMass mass) {
            out.put("on guided mass", guided(mass, machine(setting, mass.frame(), LineEnds::railFrame)));
        }
        return out.put("aside", end.lateral(), Dimension.LENGTH);
    }

    private static <T> String machine(Setting setting, T frame, Function<Resistance, Optional<T>> of) {
        return setting.before().orElse(List.of()).stream()
                .map(Resisting::resistance)
                .filter(resistance -> of.apply(resistance).equals(Optional.of(frame)))
                .map(Resistance::words)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("the line ends on no machine of this exercise"));
    }

    private static Out fixed(FixedPoint fixed) {
        return Places.inside(new Out().put("name", fixed.name()), fixed.at())
                .putStated("rating", fixed.rating(), Dimension.FORCE);
    }

    private static Out lever(OnLever lever, String machine) {
        return new Out()
                .put("name", lever.name())
                .put("machine", machine)
                .put("radius", lever.radius(), Dimension.LENGTH)
                .put("offset", lever.offset(), Dimension.ANGLE);
    }

    private static Out guided(OnGuidedMass mass, String machine) {
        return Places.inside(new Out().put("name", mass.name()).put("machine", machine), mass.from());
    }
}
