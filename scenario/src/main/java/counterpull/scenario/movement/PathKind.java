package counterpull.scenario.movement;

import static counterpull.scenario.format.Measures.ANGLE;
import static counterpull.scenario.format.Measures.ON_BODY;
import static counterpull.scenario.format.Measures.PLACE;

import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.ElbowSide;
import counterpull.engine.motion.Motion;
import counterpull.engine.motion.Reach;
import counterpull.engine.motion.StraightPath;
import counterpull.engine.motion.WorkingRange;
import counterpull.engine.planar.Vec;
import counterpull.scenario.content.Lift;
import counterpull.scenario.fields.Choices;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Shape;
import counterpull.scenario.format.Out;
import counterpull.scenario.format.Shapes;
import counterpull.scenario.problem.Code;
import counterpull.scenario.units.Dimension;
import java.util.List;
import java.util.Optional;

/** A hand or a foot goes along a straight line while shoulder or hip stays where it is. */
final class PathKind implements MovementKind {
    /** What goes along the line. */
    enum Leads {
        HAND("hand"),
        HAND_SIDEWAYS("hand sideways"),
        FOOT("foot");

        private final String words;

        Leads(String words) {
            this.words = words;
        }
    }

    static final Choices<Leads> LEADS = Choices.of(leads -> leads.words, Leads.values());
    static final Choices<ElbowSide> ELBOW = Choices.of(
            side -> side == ElbowSide.TOWARD_HEAD ? "toward the head" : "toward the feet", ElbowSide.values());

    private static final Shape GRIP = Shape.of("grip", "along", "across");
    private static final Shape TRAVEL = Shape.of("travel range", "bottom", "top", "pain free");
    private static final Shape SHAPE = MovementKind.shape(
            "straight path", "leads", "trunk direction", "from", "to", "grip", "elbow", "foot direction");

    @Override
    public String word() {
        return SHAPE.name();
    }

    @Override
    public Shape shape() {
        return SHAPE;
    }

    @Override
    public List<Shape> parts() {
        return List.of(GRIP, TRAVEL);
    }

    @Override
    public Optional<Movement> read(Fields fields) {
        Optional<Leads> leads = fields.sound(() -> fields.choice("leads", LEADS));
        double trunk = fields.required("trunk direction", ANGLE);
        Vec from = place(fields, "from");
        Vec to = place(fields, "to");
        Optional<Reach> reach = leads.flatMap(found -> reach(fields, found));
        return fields.built(
                () -> new Movement(new StraightPath(reach.orElseThrow(), trunk, from, to), new Lift.Travelling()));
    }

    private static Vec place(Fields fields, String key) {
        return fields.group(key, Shapes.PLACE)
                .map(group -> new Vec(group.required("forward", PLACE), group.required("up", PLACE)))
                .orElse(new Vec(0, 0));
    }

    private static Optional<Reach> reach(Fields fields, Leads leads) {
        return switch (leads) {
            case HAND -> {
                only(fields, leads, List.of("grip"));
                Optional<BodyPoint> grip = grip(fields);
                yield fields.built(() -> new Reach.Hand(grip));
            }
            case HAND_SIDEWAYS -> {
                only(fields, leads, List.of("grip", "elbow"));
                Optional<BodyPoint> grip = grip(fields);
                ElbowSide elbow = fields.choice("elbow", ELBOW);
                yield fields.built(() -> new Reach.HandSideways(grip, elbow));
            }
            case FOOT -> {
                only(fields, leads, List.of("foot direction"));
                double direction = fields.required("foot direction", ANGLE);
                yield fields.built(() -> new Reach.FlatFoot(direction));
            }
        };
    }

    private static void only(Fields fields, Leads leads, List<String> keys) {
        for (String key : List.of("grip", "elbow", "foot direction")) {
            if (!keys.contains(key) && fields.has(key)) {
                fields.report(
                        Code.CONTRADICTION,
                        key,
                        "where it leads with the " + leads.words + ", this is not used",
                        "Leave it out");
            }
        }
    }

    private static Optional<BodyPoint> grip(Fields fields) {
        return fields.optionalGroup("grip", GRIP).flatMap(group -> {
            Vec at = new Vec(group.required("along", ON_BODY), group.orElse("across", ON_BODY, 0));
            return group.built(() -> new BodyPoint(MovingBody.name(Link.FOREARM, at), 1, at));
        });
    }

    /** The whole line where no range is given: the line itself was measured. */
    @Override
    public Optional<WorkingRange> range(Fields fields, Movement movement) {
        return fields.has("range")
                ? RangeFields.travel(fields, "range", TRAVEL, PLACE)
                : Optional.of(new WorkingRange(0, ((StraightPath) movement.motion()).length(), 0));
    }

    @Override
    public boolean is(Motion motion) {
        return motion instanceof StraightPath;
    }

    @Override
    public void write(Movement movement, Out out) {
        StraightPath path = (StraightPath) movement.motion();
        out.put("leads", LEADS.word(leads(path.reach())))
                .put("trunk direction", path.attitude(), Dimension.ANGLE)
                .put("from", place(path.start()))
                .put("to", place(path.end()));
        if (path.reach() instanceof Reach.Hand hand) {
            hand.grip().ifPresent(grip -> out.put("grip", grip(grip)));
        } else if (path.reach() instanceof Reach.HandSideways hand) {
            hand.grip().ifPresent(grip -> out.put("grip", grip(grip)));
            out.put("elbow", ELBOW.word(hand.side()));
        } else if (path.reach() instanceof Reach.FlatFoot foot) {
            out.put("foot direction", foot.direction(), Dimension.ANGLE);
        }
    }

    private static Leads leads(Reach reach) {
        if (reach instanceof Reach.FlatFoot) {
            return Leads.FOOT;
        }
        return reach instanceof Reach.Hand ? Leads.HAND : Leads.HAND_SIDEWAYS;
    }

    private static Out place(Vec place) {
        return new Out().put("forward", place.x(), Dimension.LENGTH).put("up", place.y(), Dimension.LENGTH);
    }

    private static Out grip(BodyPoint grip) {
        return new Out()
                .put("along", grip.at().x(), Dimension.LENGTH)
                .put("across", grip.at().y(), Dimension.LENGTH);
    }

    @Override
    public Out range(WorkingRange range) {
        return RangeFields.written(range, Dimension.LENGTH);
    }
}
