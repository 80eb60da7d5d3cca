package counterpull.scenario.read;

import static counterpull.scenario.format.Measures.ANGLE;
import static counterpull.scenario.format.Measures.FOOT_PART;
import static counterpull.scenario.format.Measures.KNEE;
import static counterpull.scenario.format.Measures.LIMB_LENGTH;

import counterpull.engine.Require.Limits;
import counterpull.engine.body.BodyLength;
import counterpull.engine.body.Joint;
import counterpull.engine.body.MeasuredLengths;
import counterpull.engine.body.Side;
import counterpull.engine.motion.WorkingRange;
import counterpull.scenario.content.Client;
import counterpull.scenario.content.ClientLimb;
import counterpull.scenario.content.JointLimits;
import counterpull.scenario.content.OwnStrength;
import counterpull.scenario.content.Ranges;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.format.Shapes;
import counterpull.scenario.format.Words;
import counterpull.scenario.movement.RangeFields;
import counterpull.scenario.problem.Code;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** Reads one limb of the person. */
final class LimbReader {
    private LimbReader() {}

    /**
     * Whose limb it is.
     *
     * @param client the person without limbs
     * @param trunk its measured length, m
     * @param needed which ranges the scenario needs
     */
    record Person(Client client, Optional<Double> trunk, RangesNeeded needed) {}

    static Optional<ClientLimb> read(Fields fields, Side side, Person person) {
        MeasuredLengths measured = lengths(fields, person.trunk());
        Optional<WorkingRange> press =
                fields.optionalGroup("range", Shapes.RANGE).flatMap(LimbReader::range);
        Map<Joint, WorkingRange> byJoint = fields.optionalGroup("ranges", Shapes.RANGES)
                .map(LimbReader::ranges)
                .orElse(Map.of());
        person.needed().check(fields, side);
        JointLimits limits = fields.optionalGroup("joint limits", Shapes.JOINT_LIMITS)
                .map(LimbReader::jointLimits)
                .orElse(new JointLimits(Map.of()));
        OwnStrength strength = StrengthReader.read(fields);
        return fields.built(() -> {
            ClientLimb limb = new ClientLimb(side, measured, new Ranges(press, byJoint), limits, strength);
            // what the engine would refuse is refused here, where the limb stands in the file
            person.client().check(limb);
            return limb;
        });
    }

    private static MeasuredLengths lengths(Fields fields, Optional<Double> trunk) {
        Map<BodyLength, Double> lengths = new EnumMap<>(BodyLength.class);
        fields.optional("thigh", LIMB_LENGTH).ifPresent(value -> lengths.put(BodyLength.THIGH, value));
        fields.optional("shank", LIMB_LENGTH).ifPresent(value -> lengths.put(BodyLength.SHANK, value));
        fields.optional("foot", LIMB_LENGTH).ifPresent(value -> lengths.put(BodyLength.FOOT, value));
        fields.optional("ankle height", FOOT_PART).ifPresent(value -> lengths.put(BodyLength.ANKLE_HEIGHT, value));
        fields.optional("ankle from heel", FOOT_PART)
                .ifPresent(value -> lengths.put(BodyLength.ANKLE_FROM_HEEL, value));
        fields.optional("upper arm", LIMB_LENGTH).ifPresent(value -> lengths.put(BodyLength.UPPER_ARM, value));
        fields.optional("forearm", LIMB_LENGTH).ifPresent(value -> lengths.put(BodyLength.FOREARM, value));
        trunk.ifPresent(value -> lengths.put(BodyLength.TRUNK, value));
        return new MeasuredLengths(lengths);
    }

    private static Map<Joint, WorkingRange> ranges(Fields fields) {
        Map<Joint, WorkingRange> ranges = new EnumMap<>(Joint.class);
        for (Joint joint : Joint.values()) {
            RangeFields.angles(fields, Words.angle(joint)).ifPresent(range -> ranges.put(joint, range));
        }
        return ranges;
    }

    private static Optional<WorkingRange> range(Fields fields) {
        double bottom = fields.required("bottom", KNEE);
        double top = fields.required("top", KNEE);
        double painFree = fields.orElse("pain free", KNEE, bottom);
        if (fields.isSound() && top >= bottom) {
            fields.report(
                    Code.OUT_OF_ORDER,
                    "top",
                    "the top must be straighter than the bottom",
                    "Bottom is where the lift starts, with the knee bent more");
        }
        if (fields.isSound() && painFree < bottom) {
            fields.report(
                    Code.OUT_OF_ORDER,
                    "pain free",
                    "the range goes deeper than the depth that does not hurt",
                    "Let the range's bottom stop at the pain-free depth");
        }
        return fields.built(() -> new WorkingRange(bottom, top, painFree));
    }

    private static JointLimits jointLimits(Fields fields) {
        Map<Joint, Limits> limits = new EnumMap<>(Joint.class);
        for (Joint joint : Joint.values()) {
            limit(fields, Words.limit(joint)).ifPresent(found -> limits.put(joint, found));
        }
        return new JointLimits(limits);
    }

    private static Optional<Limits> limit(Fields fields, String key) {
        return fields.optionalGroup(key, Shapes.FROM_TO).map(found -> {
            double from = found.orElse("from", ANGLE, Double.NEGATIVE_INFINITY);
            double to = found.orElse("to", ANGLE, Double.POSITIVE_INFINITY);
            if (found.isSound() && from >= to) {
                found.report(Code.OUT_OF_ORDER, "to", "\"to\" must be above \"from\"", "Exchange them");
            }
            return new Limits(from, to);
        });
    }
}
