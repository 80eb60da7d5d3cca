package counterpull.scenario.movement;

import static counterpull.scenario.format.Measures.ANGLE;
import static counterpull.scenario.format.Measures.ANKLE_RATIO;
import static counterpull.scenario.format.Measures.KNEE_RATIO;
import static counterpull.scenario.format.Measures.PRESSURE_POINT;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.AnkleGive;
import counterpull.engine.motion.BalancedStand;
import counterpull.engine.motion.Motion;
import counterpull.engine.motion.StandDrive;
import counterpull.engine.motion.WorkingRange;
import counterpull.scenario.content.Client;
import counterpull.scenario.content.Lift;
import counterpull.scenario.content.Sides;
import counterpull.scenario.fields.Choices;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Shape;
import counterpull.scenario.format.Out;
import counterpull.scenario.problem.Code;
import counterpull.scenario.units.Dimension;
import java.util.List;
import java.util.Optional;

/** A stand on a flat foot that keeps its balance: squat, split squat, step, hip hinge. */
final class StandKind implements MovementKind {
    static final Choices<Joint> DRIVEN_BY = Choices.of(Joint::words, Joint.KNEE, Joint.HIP);

    private static final List<String> OF_KNEE = List.of("ankle per knee", "ankle gives");
    private static final List<String> OF_HIP = List.of("knee at straight hip", "knee per hip");
    private static final Shape SHAPE = MovementKind.shape(
            "balanced stand",
            "driven by",
            "ankle per knee",
            "ankle gives",
            "knee at straight hip",
            "knee per hip",
            "balance");

    @Override
    public String word() {
        return SHAPE.name();
    }

    @Override
    public Shape shape() {
        return SHAPE;
    }

    @Override
    public Optional<Movement> read(Fields fields) {
        Optional<Joint> joint = fields.sound(() -> fields.choice("driven by", DRIVEN_BY));
        Optional<StandDrive> drive = joint.flatMap(found -> found == Joint.KNEE ? knee(fields) : hip(fields));
        double balance = fields.required("balance", PRESSURE_POINT);
        return fields.built(() -> new Movement(new BalancedStand(drive.orElseThrow(), balance), new Lift.Rising()));
    }

    private static Optional<StandDrive> knee(Fields fields) {
        not(fields, OF_HIP, Joint.KNEE);
        double ratio = fields.orElse("ankle per knee", ANKLE_RATIO, AnkleGive.USUAL_RATIO);
        double gives = fields.orElse("ankle gives", ANGLE, Double.POSITIVE_INFINITY);
        return fields.built(() -> new StandDrive.Knee(new AnkleGive(ratio, gives)));
    }

    private static Optional<StandDrive> hip(Fields fields) {
        not(fields, OF_KNEE, Joint.HIP);
        double upright = fields.required("knee at straight hip", ANGLE);
        double ratio = fields.required("knee per hip", KNEE_RATIO);
        return fields.built(() -> new StandDrive.Hip(upright, ratio));
    }

    private static void not(Fields fields, List<String> keys, Joint driver) {
        for (String key : keys) {
            if (fields.has(key)) {
                fields.report(
                        Code.CONTRADICTION,
                        key,
                        "where the " + driver.words() + " drives, this is not used",
                        "Leave it out");
            }
        }
    }

    /** Where nothing is said of how far the ankle gives, the person's own limit holds: the smaller one of the limbs that stand. */
    @Override
    public Movement fitted(Movement movement, Client client, Sides sides) {
        BalancedStand stand = (BalancedStand) movement.motion();
        if (!(stand.drive() instanceof StandDrive.Knee knee)
                || Double.isFinite(knee.ankle().limit())) {
            return movement;
        }
        double limit = client.limbs().stream()
                .filter(limb -> sides.using().uses(limb.side()))
                .mapToDouble(limb -> limb.jointLimits().ranges().of(Joint.ANKLE).high())
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        StandDrive fitted = new StandDrive.Knee(new AnkleGive(knee.ankle().ratio(), limit));
        return new Movement(new BalancedStand(fitted, stand.over()), movement.lift());
    }

    @Override
    public Optional<WorkingRange> range(Fields fields, Movement movement) {
        return RangeFields.turning(fields, "range", movement.lift().sense());
    }

    @Override
    public boolean is(Motion motion) {
        return motion instanceof BalancedStand;
    }

    @Override
    public void write(Movement movement, Out out) {
        BalancedStand stand = (BalancedStand) movement.motion();
        out.put("driven by", DRIVEN_BY.word(stand.drive().joint()));
        if (stand.drive() instanceof StandDrive.Knee knee) {
            out.put("ankle per knee", knee.ankle().ratio(), Dimension.RATIO)
                    .putStated("ankle gives", knee.ankle().limit(), Dimension.ANGLE);
        } else if (stand.drive() instanceof StandDrive.Hip hip) {
            out.put("knee at straight hip", hip.kneeUpright(), Dimension.ANGLE)
                    .put("knee per hip", hip.kneePerHip(), Dimension.RATIO);
        }
        out.put("balance", stand.over(), Dimension.RATIO);
    }

    @Override
    public Out range(WorkingRange range) {
        return RangeFields.written(range, Dimension.ANGLE);
    }
}
