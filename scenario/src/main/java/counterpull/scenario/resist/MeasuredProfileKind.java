package counterpull.scenario.resist;

import static counterpull.scenario.format.Measures.ANGLE;
import static counterpull.scenario.format.Measures.AT_LEAST_TWO;
import static counterpull.scenario.format.Measures.MACHINE_TORQUE;
import static counterpull.scenario.format.Measures.PLACE;
import static counterpull.scenario.format.Measures.READING_FORCE;

import counterpull.engine.body.Joint;
import counterpull.engine.load.MeasuredProfile;
import counterpull.engine.load.MeasuredProfile.Acts;
import counterpull.engine.load.MeasuredProfile.Angle;
import counterpull.engine.load.MeasuredProfile.Force;
import counterpull.engine.load.MeasuredProfile.Reading;
import counterpull.engine.load.MeasuredProfile.Torque;
import counterpull.engine.load.MeasuredProfile.Travel;
import counterpull.engine.motion.BodyPoint;
import counterpull.scenario.content.Resisting;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Measure;
import counterpull.scenario.fields.Shape;
import counterpull.scenario.format.Out;
import counterpull.scenario.problem.Code;
import counterpull.scenario.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A machine known only by what a scale read on it, moving slowly up and slowly down. */
final class MeasuredProfileKind implements ResistKind {
    private static final String FORCE_BY_ANGLE = "force by angle";
    private static final String FORCE_BY_TRAVEL = "force by travel";
    private static final String TORQUE_BY_ANGLE = "torque by angle";
    private static final Shape SHAPE =
            Shape.of("measured profile", "name", "at", FORCE_BY_ANGLE, FORCE_BY_TRAVEL, TORQUE_BY_ANGLE, "bottom at");
    private static final Shape FORCE_AT_ANGLE = Shape.of("force at an angle", "angle", "up", "down");
    private static final Shape FORCE_AT_TRAVEL = Shape.of("force at a travel", "travel", "up", "down");
    private static final Shape TORQUE_AT_ANGLE = Shape.of("torque at an angle", "angle", "up", "down");

    @Override
    public Shape shape() {
        return SHAPE;
    }

    @Override
    public List<Shape> parts() {
        return List.of(FORCE_AT_ANGLE, FORCE_AT_TRAVEL, TORQUE_AT_ANGLE);
    }

    @Override
    public Optional<Resisting> read(Fields fields, Setting setting) {
        String name = fields.text("name");
        Optional<String> given = fields.oneOf(FORCE_BY_ANGLE, FORCE_BY_TRAVEL, TORQUE_BY_ANGLE);
        if (given.isEmpty()) {
            return Optional.empty();
        }
        List<Reading> readings = switch (given.get()) {
            case FORCE_BY_ANGLE -> readings(fields, given.get(), FORCE_AT_ANGLE, READING_FORCE);
            case FORCE_BY_TRAVEL -> readings(fields, given.get(), FORCE_AT_TRAVEL, READING_FORCE);
            default -> readings(fields, given.get(), TORQUE_AT_ANGLE, MACHINE_TORQUE);
        };
        Optional<Acts> acts = acts(fields, given.get(), setting);
        return fields.built(() -> Resisting.always(new MeasuredProfile(name, acts.orElseThrow(), readings)));
    }

    private static List<Reading> readings(Fields fields, String key, Shape shape, Measure size) {
        boolean travel = shape.keys().contains("travel");
        List<Reading> readings = new ArrayList<>();
        for (Fields group : fields.groups(key, shape, AT_LEAST_TWO)) {
            double position = travel ? group.required("travel", PLACE) : group.required("angle", ANGLE);
            double up = group.required("up", size);
            double down = group.required("down", size);
            group.built(() -> new Reading(position, up, down)).ifPresent(readings::add);
        }
        return readings;
    }

    private static Optional<Acts> acts(Fields fields, String given, Setting setting) {
        Optional<BodyPoint> at = place(fields, given, setting);
        Optional<Joint> driver = setting.body().driver();
        boolean travel = given.equals(FORCE_BY_TRAVEL);
        if (travel == driver.isPresent()) {
            fields.report(
                    Code.CONTRADICTION,
                    given,
                    travel
                            ? "a joint's angle drives this exercise, not travel"
                            : "travel drives this exercise, not an angle",
                    "Measure the machine by what drives the exercise");
        }
        double start = bottomAt(fields, travel);
        return fields.built(() -> switch (given) {
            case FORCE_BY_ANGLE -> new Force(at.orElseThrow(), new Angle(driver.orElseThrow()));
            case FORCE_BY_TRAVEL -> new Force(at.orElseThrow(), new Travel(start));
            default -> new Torque(driver.orElseThrow());
        });
    }

    /** A force acts somewhere on the body; a torque on the joint that drives. */
    private static Optional<BodyPoint> place(Fields fields, String given, Setting setting) {
        if (!given.equals(TORQUE_BY_ANGLE)) {
            return setting.body().point(fields, "at");
        }
        if (fields.has("at")) {
            fields.report(
                    Code.CONTRADICTION, "at", "a torque acts about the joint that drives, at no place", "Leave it out");
        }
        return Optional.empty();
    }

    private static double bottomAt(Fields fields, boolean travel) {
        double start = fields.orElse("bottom at", PLACE, 0);
        if (!travel && fields.has("bottom at")) {
            fields.report(Code.CONTRADICTION, "bottom at", "angles say themselves where the bottom is", "Leave it out");
        }
        return start;
    }

    @Override
    public Optional<Out> write(Resisting resisting, Setting setting) {
        if (!(resisting.resistance() instanceof MeasuredProfile profile)) {
            return Optional.empty();
        }
        Out out = new Out().put("name", profile.name());
        if (profile.acts() instanceof Force force) {
            out.put("at", setting.body().written(force.at()));
            force(out, force, profile.readings());
        } else {
            out.putGroups(
                    TORQUE_BY_ANGLE,
                    profile.readings(),
                    reading -> written(reading, Dimension.ANGLE, Dimension.TORQUE));
        }
        return Optional.of(out);
    }

    private static void force(Out out, Force force, List<Reading> readings) {
        if (force.position() instanceof Travel travel) {
            out.put("bottom at", travel.start(), Dimension.LENGTH)
                    .putGroups(
                            FORCE_BY_TRAVEL, readings, reading -> written(reading, Dimension.LENGTH, Dimension.FORCE));
        } else {
            out.putGroups(FORCE_BY_ANGLE, readings, reading -> written(reading, Dimension.ANGLE, Dimension.FORCE));
        }
    }

    private static Out written(Reading reading, Dimension position, Dimension size) {
        return new Out()
                .put(position == Dimension.LENGTH ? "travel" : "angle", reading.position(), position)
                .put("up", reading.up(), size)
                .put("down", reading.down(), size);
    }
}
