package counterpull.scenario.movement;

import static counterpull.scenario.format.Measures.ANGLE;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.Hinge;
import counterpull.engine.motion.Hinge.Lie;
import counterpull.engine.motion.Motion;
import counterpull.engine.motion.WorkingRange;
import counterpull.scenario.content.Lift;
import counterpull.scenario.fields.Choices;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Shape;
import counterpull.scenario.format.Out;
import counterpull.scenario.format.Words;
import counterpull.scenario.problem.Code;
import counterpull.scenario.units.Dimension;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One joint turns; what is before it keeps a stated direction, the joints beyond it keep stated angles. */
final class HingeKind implements MovementKind {
    /** How the plane of a movement lies. */
    static final Choices<Lie> PLANE = Choices.of(lie -> lie == Lie.UPRIGHT ? "upright" : "level", Lie.values());

    private static final List<Joint> CAN_BE_HELD = List.of(Joint.KNEE, Joint.ANKLE, Joint.ELBOW);
    private static final Shape HELD =
            new Shape("held angles", CAN_BE_HELD.stream().map(Words::angle).toList());
    private static final List<String> DIRECTIONS = List.of(
            "trunk direction", "thigh direction", "shank direction", "upper arm direction", "straight ahead direction");
    private static final Shape SHAPE = MovementKind.shape(
            "hinge",
            "lift",
            "plane",
            "trunk direction",
            "thigh direction",
            "shank direction",
            "upper arm direction",
            "straight ahead direction",
            "held");

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
        return List.of(HELD);
    }

    /** The key that says where what does not turn points. */
    private static String direction(Joint joint) {
        return switch (joint) {
            case HIP, HIP_SIDEWAYS, SHOULDER, SHOULDER_SIDEWAYS -> "trunk direction";
            case KNEE -> "thigh direction";
            case ANKLE -> "shank direction";
            case ELBOW -> "upper arm direction";
            case SHOULDER_TURNING -> "straight ahead direction";
        };
    }

    @Override
    public Optional<Movement> read(Fields fields) {
        Optional<Lift.Turning> lift = fields.sound(() -> new Lift.Turning(fields.choice("lift", Words.ACTION)));
        Lie lie = fields.choice("plane", PLANE);
        return lift.flatMap(found -> read(fields, found, lie));
    }

    private static Optional<Movement> read(Fields fields, Lift.Turning lift, Lie lie) {
        Joint joint = lift.joint();
        double attitude = fields.required(direction(joint), ANGLE);
        notOthers(fields, joint);
        Map<Joint, Double> held = fields.optionalGroup("held", HELD)
                .map(group -> held(group, joint))
                .orElse(Map.of());
        return fields.built(() -> new Movement(new Hinge(joint, attitude, held, lie), lift));
    }

    private static void notOthers(Fields fields, Joint joint) {
        for (String key : DIRECTIONS) {
            if (!key.equals(direction(joint)) && fields.has(key)) {
                fields.report(
                        Code.CONTRADICTION,
                        key,
                        "where the " + joint.words() + " turns, only the " + direction(joint) + " counts",
                        "Leave it out");
            }
        }
    }

    private static Map<Joint, Double> held(Fields fields, Joint turning) {
        Map<Joint, Double> held = new EnumMap<>(Joint.class);
        List<Joint> beyond = Link.beyond(turning);
        for (Joint joint : CAN_BE_HELD) {
            String key = Words.angle(joint);
            fields.optional(key, ANGLE).ifPresent(angle -> held.put(joint, angle));
            if (fields.has(key) && !beyond.contains(joint)) {
                fields.report(
                        Code.CONTRADICTION,
                        key,
                        "the " + joint.words() + " is not beyond the " + turning.words() + ", which turns",
                        "Leave it out");
            }
        }
        return held;
    }

    @Override
    public Optional<WorkingRange> range(Fields fields, Movement movement) {
        return RangeFields.turning(fields, "range", movement.lift().sense());
    }

    @Override
    public boolean is(Motion motion) {
        return motion instanceof Hinge;
    }

    @Override
    public void write(Movement movement, Out out) {
        Hinge hinge = (Hinge) movement.motion();
        out.put("lift", Words.ACTION.word(((Lift.Turning) movement.lift()).action()))
                .put("plane", PLANE.word(hinge.lie()))
                .put(direction(hinge.joint()), hinge.attitude(), Dimension.ANGLE);
        Out held = new Out();
        for (Joint joint : CAN_BE_HELD) {
            if (hinge.held().containsKey(joint)) {
                held.put(Words.angle(joint), hinge.held().get(joint), Dimension.ANGLE);
            }
        }
        out.put("held", held);
    }

    @Override
    public Out range(WorkingRange range) {
        return RangeFields.written(range, Dimension.ANGLE);
    }
}
