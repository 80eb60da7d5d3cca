package counterpull.scenario.read;

import counterpull.scenario.fields.Shape;
import java.util.List;

/** Every group of the format with its keys. The JSON Schema defines each under the same name; a test compares them. */
public final class Shapes {
    static final Shape SCENARIO = Shape.of(
            "scenario", "format", "person", "machine", "exercise", "resists", "tempo", "target", "limits", "kit");
    static final Shape PERSON = Shape.of("person", "name", "sex", "age", "stature", "mass", "segment table", "limbs");
    static final Shape LIMBS = Shape.of("limbs", "left", "right");
    static final Shape LIMB = Shape.of(
            "limb",
            "thigh",
            "shank",
            "foot",
            "ankle height",
            "ankle from heel",
            "range",
            "joint limits",
            "tests",
            "curves",
            "not known");
    static final Shape RANGE = Shape.of("range", "bottom", "top", "pain free");
    static final Shape JOINT_LIMITS = Shape.of("joint limits", "hip flexion", "knee flexion", "dorsiflexion");
    static final Shape FROM_TO = Shape.of("from and to", "from", "to");
    static final Shape TEST =
            Shape.of("strength test", "action", "angle", "torque", "force", "lever", "limb weight", "with", "spread");
    static final Shape CURVE = Shape.of("strength curve", "action", "points", "spread");
    static final Shape CURVE_POINT = Shape.of("point of a strength curve", "angle", "torque");

    static final Shape MACHINE = Shape.of(
            "machine",
            "name",
            "rail angle",
            "rides",
            "plate tilt",
            "tape",
            "seats",
            "foot rows",
            "stops",
            "racking",
            "carriage",
            "counterweight",
            "friction",
            "plates at most",
            "plates go on");
    static final Shape SEAT = Shape.of("seat", "name", "mark", "hip to plate", "hip across", "trunk direction");
    static final Shape FOOT_ROW = Shape.of("foot row", "name", "heel");
    static final Shape COUNTERWEIGHT = Shape.of("counterweight", "mass", "runs");
    static final Shape FRICTION = Shape.of("friction", "constant", "coefficient", "breakaway");

    static final Shape EXERCISE = Shape.of(
            "exercise",
            "kind",
            "limbs",
            "left share",
            "seat",
            "foot row",
            "pressure point",
            "hip shift",
            "push",
            "seats to try",
            "foot rows to try",
            "further stops to try");
    static final Shape HIP_SHIFT = Shape.of("hip shift", "along", "across");
    static final Shape PUSH = Shape.of("push", "angle", "through", "least effort", "interval");

    static final Shape RESISTS =
            Shape.of("resists", "plates each side", "plates left", "plates right", "plates in the middle", "lines");
    static final Shape LINE =
            Shape.of("line", "rubber", "pieces", "hang", "placement", "anchor", "attachment", "dead length");

    static final Shape TEMPO = Shape.of("tempo", "full stop", "flowing", "bounce");
    static final Shape FULL_STOP = Shape.of("full stop", "lowering", "low pause", "lifting", "high pause");
    static final Shape FLOWING = Shape.of("flowing", "at", "lowering", "lifting");
    static final Shape BOUNCE = Shape.of("bounce", "lowering speed", "lifting speed", "turn time");

    static final Shape TARGET = Shape.of(
            "target",
            "effort",
            "effort at knee angles",
            "ceiling",
            "least force",
            "joints",
            "sets",
            "repetitions",
            "repetitions left",
            "rest");
    static final Shape TARGET_POINT = Shape.of("point of the target", "knee", "effort");
    static final Shape LIMITS =
            Shape.of("limits", "torque", "kneecap stress", "force at the turn", "uneven sides", "hold for");
    static final Shape TORQUE_LIMIT = Shape.of("torque limit", "action", "at most");

    static final Shape KIT = Shape.of(
            "kit",
            "plates",
            "rubber",
            "anchors",
            "attachments",
            "hangs",
            "dead lengths",
            "strands at most",
            "lines at most");
    static final Shape PLATE = Shape.of("plate", "mass", "count", "name");
    static final Shape RUBBER = Shape.of(
            "rubber",
            "tag",
            "size",
            "natural length",
            "law",
            "loss",
            "shortening",
            "tested length",
            "mass",
            "hardware",
            "count");
    static final Shape SIZE = Shape.of("size", "bore", "wall", "width", "thickness");
    static final Shape LAW = Shape.of("law", "linear", "mooney-rivlin", "ogden", "bench");
    static final Shape LINEAR = Shape.of("linear", "stiffness");
    static final Shape MOONEY_RIVLIN = Shape.of("mooney-rivlin", "c1", "c2");
    static final Shape OGDEN_TERM = Shape.of("ogden term", "mu", "alpha");
    static final Shape READING = Shape.of("reading", "length", "force");
    static final Shape ANCHOR = Shape.of("anchor", "name", "along", "across", "aside", "rating");
    static final Shape ATTACHMENT = Shape.of("attachment", "name", "along", "across", "aside");

    private Shapes() {}

    /** All of them. */
    public static List<Shape> all() {
        return List.of(
                SCENARIO,
                PERSON,
                LIMBS,
                LIMB,
                RANGE,
                JOINT_LIMITS,
                FROM_TO,
                TEST,
                CURVE,
                CURVE_POINT,
                MACHINE,
                SEAT,
                FOOT_ROW,
                COUNTERWEIGHT,
                FRICTION,
                EXERCISE,
                HIP_SHIFT,
                PUSH,
                RESISTS,
                LINE,
                TEMPO,
                FULL_STOP,
                FLOWING,
                BOUNCE,
                TARGET,
                TARGET_POINT,
                LIMITS,
                TORQUE_LIMIT,
                KIT,
                PLATE,
                RUBBER,
                SIZE,
                LAW,
                LINEAR,
                MOONEY_RIVLIN,
                OGDEN_TERM,
                READING,
                ANCHOR,
                ATTACHMENT);
    }
}
