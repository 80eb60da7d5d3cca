package counterpull.scenario.write;

import counterpull.engine.Require.Limits;
import counterpull.engine.body.BodyLength;
import counterpull.engine.body.Joint;
import counterpull.engine.motion.WorkingRange;
import counterpull.scenario.content.Client;
import counterpull.scenario.content.ClientLimb;
import counterpull.scenario.content.Ended;
import counterpull.scenario.content.OwnCurve;
import counterpull.scenario.content.OwnStrength;
import counterpull.scenario.content.StrengthTest;
import counterpull.scenario.format.Out;
import counterpull.scenario.format.Words;
import counterpull.scenario.movement.RangeFields;
import counterpull.scenario.units.Dimension;
import java.util.Map;
import java.util.Objects;

/** Writes the person. */
final class PersonWriter {
    private static final Map<BodyLength, String> LENGTHS = Map.of(
            BodyLength.THIGH, "thigh",
            BodyLength.SHANK, "shank",
            BodyLength.FOOT, "foot",
            BodyLength.ANKLE_HEIGHT, "ankle height",
            BodyLength.ANKLE_FROM_HEEL, "ankle from heel",
            BodyLength.UPPER_ARM, "upper arm",
            BodyLength.FOREARM, "forearm");

    private PersonWriter() {}

    static Out person(Client client) {
        Out limbs = new Out();
        client.limbs().forEach(limb -> limbs.put(limb.side().words(), limb(limb)));
        Out out = new Out()
                .put("name", client.name())
                .put("sex", Words.SEX.word(client.physique().sex()))
                .put("age", client.physique().age(), Dimension.AGE)
                .put("stature", client.physique().stature(), Dimension.LENGTH)
                .put("mass", client.physique().mass(), Dimension.MASS)
                .put("segment table", Words.TABLE.word(client.table()));
        // both sides have the one trunk
        client.limbs().stream()
                .map(limb -> limb.measured().lengths().get(BodyLength.TRUNK))
                .filter(Objects::nonNull)
                .findFirst()
                .ifPresent(trunk -> out.put("trunk", trunk, Dimension.LENGTH));
        return out.put("limbs", limbs);
    }

    private static Out limb(ClientLimb limb) {
        Out out = new Out();
        for (BodyLength which : BodyLength.values()) {
            Double length = limb.measured().lengths().get(which);
            if (length != null && LENGTHS.containsKey(which)) {
                out.put(LENGTHS.get(which), length, Dimension.LENGTH);
            }
        }
        limb.ranges().press().ifPresent(range -> out.put("range", RangeFields.written(range, Dimension.ANGLE)));
        out.put("ranges", ranges(limb));
        out.put("joint limits", jointLimits(limb));
        strength(limb.strength(), out);
        return out;
    }

    private static Out ranges(ClientLimb limb) {
        Out out = new Out();
        for (Joint joint : Joint.values()) {
            WorkingRange range = limb.ranges().byJoint().get(joint);
            if (range != null) {
                out.put(Words.angle(joint), RangeFields.written(range, Dimension.ANGLE));
            }
        }
        return out;
    }

    private static Out jointLimits(ClientLimb limb) {
        Out out = new Out();
        for (Joint joint : Joint.values()) {
            Limits limits = limb.jointLimits().byJoint().get(joint);
            if (limits != null) {
                out.put(
                        Words.limit(joint),
                        new Out()
                                .putStated("from", limits.low(), Dimension.ANGLE)
                                .putStated("to", limits.high(), Dimension.ANGLE));
            }
        }
        return out;
    }

    private static void strength(OwnStrength strength, Out out) {
        out.putGroups("tests", strength.tests(), PersonWriter::test);
        out.putGroups("curves", strength.curves(), PersonWriter::curve);
        out.put("not known", strength.notKnown(), Words.ACTION::word);
    }

    private static Out test(StrengthTest test) {
        Out out = new Out()
                .put("action", Words.ACTION.word(test.action()))
                .put("angle", test.test().angle(), Dimension.ANGLE)
                .put("torque", test.test().torque(), Dimension.TORQUE)
                .put("with", Words.TESTER.word(test.with()))
                .put("spread", test.test().relativeSd(), Dimension.RATIO);
        return test.ended() == Ended.REACHED ? out : out.put("ended", Words.ENDED.word(test.ended()));
    }

    private static Out curve(OwnCurve curve) {
        return new Out()
                .put("action", Words.ACTION.word(curve.action()))
                .putGroups(
                        "points",
                        curve.points(),
                        point -> new Out()
                                .put("angle", point.angle(), Dimension.ANGLE)
                                .put("torque", point.torque(), Dimension.TORQUE))
                .put("spread", curve.spread(), Dimension.RATIO);
    }
}
