package counterpull.scenario.write;

import counterpull.engine.Require.Limits;
import counterpull.engine.body.BodyLength;
import counterpull.engine.body.Joint;
import counterpull.scenario.content.Client;
import counterpull.scenario.content.ClientLimb;
import counterpull.scenario.content.OwnCurve;
import counterpull.scenario.content.OwnStrength;
import counterpull.scenario.content.StrengthTest;
import counterpull.scenario.read.Words;
import counterpull.scenario.units.Dimension;
import java.util.Map;

/** Writes the person. */
final class PersonWriter {
    private static final Map<BodyLength, String> LENGTHS = Map.of(
            BodyLength.THIGH, "thigh",
            BodyLength.SHANK, "shank",
            BodyLength.FOOT, "foot",
            BodyLength.ANKLE_HEIGHT, "ankle height",
            BodyLength.ANKLE_FROM_HEEL, "ankle from heel");
    private static final Map<Joint, String> JOINTS =
            Map.of(Joint.HIP, "hip flexion", Joint.KNEE, "knee flexion", Joint.ANKLE, "dorsiflexion");

    private PersonWriter() {}

    static Out person(Client client) {
        Out limbs = new Out();
        client.limbs().forEach(limb -> limbs.put(limb.side().words(), limb(limb)));
        return new Out()
                .put("name", client.name())
                .put("sex", Words.SEX.word(client.physique().sex()))
                .put("age", client.physique().age(), Dimension.AGE)
                .put("stature", client.physique().stature(), Dimension.LENGTH)
                .put("mass", client.physique().mass(), Dimension.MASS)
                .put("segment table", Words.TABLE.word(client.table()))
                .put("limbs", limbs);
    }

    private static Out limb(ClientLimb limb) {
        Out out = new Out();
        for (BodyLength which : BodyLength.values()) {
            Double length = limb.measured().lengths().get(which);
            if (length != null) {
                out.put(LENGTHS.get(which), length, Dimension.LENGTH);
            }
        }
        out.put("range", range(limb));
        out.put("joint limits", jointLimits(limb));
        strength(limb.strength(), out);
        return out;
    }

    private static Out range(ClientLimb limb) {
        return new Out()
                .put("bottom", limb.range().bottom(), Dimension.ANGLE)
                .put("top", limb.range().top(), Dimension.ANGLE)
                .put("pain free", limb.range().painFree(), Dimension.ANGLE);
    }

    private static Out jointLimits(ClientLimb limb) {
        Out out = new Out();
        for (Joint joint : Joint.values()) {
            Limits limits = limb.jointLimits().byJoint().get(joint);
            if (limits != null) {
                out.put(
                        JOINTS.get(joint),
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
        return new Out()
                .put("action", Words.ACTION.word(test.action()))
                .put("angle", test.test().angle(), Dimension.ANGLE)
                .put("torque", test.test().torque(), Dimension.TORQUE)
                .put("with", Words.TESTER.word(test.with()))
                .put("spread", test.test().relativeSd(), Dimension.RATIO);
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
