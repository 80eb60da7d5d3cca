package counterpull.scenario.format;

import counterpull.engine.body.Joint;
import counterpull.scenario.fields.Shape;
import java.util.List;
import java.util.stream.Stream;

/** The groups of the format with their keys, besides those of single kinds of movement and of what resists. The JSON Schema defines each under the same name; a test compares them. */
public final class Shapes {
    public static final Shape SCENARIO = Shape.of(
            "scenario",
            "format",
            "about",
            "person",
            "machine",
            "exercise",
            "resists",
            "tempo",
            "target",
            "limits",
            "kit",
            "uncertainty");
    public static final Shape PERSON =
            Shape.of("person", "name", "sex", "age", "stature", "mass", "trunk", "segment table", "limbs");
    public static final Shape LIMBS = Shape.of("limbs", "left", "right");
    public static final Shape LIMB = Shape.of(
            "limb",
            "thigh",
            "shank",
            "foot",
            "ankle height",
            "ankle from heel",
            "upper arm",
            "forearm",
            "range",
            "ranges",
            "joint limits",
            "tests",
            "curves",
            "not known");
    public static final Shape RANGE = Shape.of("range", "bottom", "top", "pain free");
    public static final Shape JOINT_LIMITS = new Shape(
            "joint limits", Stream.of(Joint.values()).map(Words::limit).toList());
    public static final Shape RANGES =
            new Shape("ranges", Stream.of(Joint.values()).map(Words::angle).toList());
    public static final Shape JOINT_RANGE = Shape.of("joint range", "bottom", "top", "pain free");
    public static final Shape FROM_TO = Shape.of("from and to", "from", "to");
    public static final Shape TEST = Shape.of(
            "strength test", "action", "angle", "torque", "force", "lever", "limb weight", "with", "spread", "ended");
    public static final Shape CURVE = Shape.of("strength curve", "action", "points", "flat", "from", "to", "spread");
    public static final Shape CURVE_POINT = Shape.of("point of a strength curve", "angle", "torque");

    public static final Shape ABOUT = Shape.of("about", "name", "what", "measure", "cautions");
    public static final Shape MEASURING = Shape.of("measuring", "what", "how");
    public static final Shape PLACE = Shape.of("place", "forward", "up");
    public static final Shape BODY_POINT = Shape.of("body point", "on", "along", "across");

    public static final Shape MACHINE = Shape.of(
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
            "stack",
            "plates at most",
            "plates go on");
    public static final Shape SEAT = Shape.of("seat", "name", "mark", "hip to plate", "hip across", "trunk direction");
    public static final Shape FOOT_ROW = Shape.of("foot row", "name", "heel");
    public static final Shape COUNTERWEIGHT = Shape.of("counterweight", "mass", "runs");
    public static final Shape FRICTION = Shape.of("friction", "constant", "coefficient", "breakaway");

    public static final Shape STACK = Shape.of("weight stack", "ratio", "friction", "mass", "moving mass", "plates");

    public static final Shape EXERCISE = Shape.of(
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
    public static final Shape HIP_SHIFT = Shape.of("hip shift", "along", "across");
    public static final Shape PUSH = Shape.of("push", "angle", "through", "least effort", "interval");

    public static final Shape RESISTS =
            Shape.of("resists", "plates each side", "plates left", "plates right", "plates in the middle", "lines");
    public static final Shape LINE =
            Shape.of("line", "rubber", "pieces", "hang", "placement", "anchor", "attachment", "dead length");

    public static final Shape TEMPO = Shape.of("tempo", "full stop", "flowing", "bounce");
    public static final Shape FULL_STOP = Shape.of("full stop", "lowering", "low pause", "lifting", "high pause");
    public static final Shape FLOWING = Shape.of("flowing", "at", "lowering", "lifting");
    public static final Shape BOUNCE = Shape.of("bounce", "lowering speed", "lifting speed", "turn time");

    public static final Shape TARGET = Shape.of(
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
    public static final Shape TARGET_POINT = Shape.of("point of the target", "knee", "effort");
    public static final Shape LIMITS =
            Shape.of("limits", "torque", "kneecap stress", "force at the turn", "uneven sides", "hold for");
    public static final Shape TORQUE_LIMIT = Shape.of("torque limit", "action", "at most");

    public static final Shape KIT = Shape.of(
            "kit",
            "plates",
            "rubber",
            "anchors",
            "attachments",
            "hangs",
            "dead lengths",
            "strands at most",
            "lines at most");
    public static final Shape PLATE = Shape.of("plate", "mass", "count", "name");
    public static final Shape RUBBER = Shape.of(
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
    public static final Shape SIZE = Shape.of("size", "bore", "wall", "width", "thickness");
    public static final Shape LAW = Shape.of("law", "linear", "mooney-rivlin", "ogden", "bench");
    public static final Shape LINEAR = Shape.of("linear", "stiffness");
    public static final Shape MOONEY_RIVLIN = Shape.of("mooney-rivlin", "c1", "c2");
    public static final Shape OGDEN_TERM = Shape.of("ogden term", "mu", "alpha");
    public static final Shape READING = Shape.of("reading", "length", "force");
    public static final Shape ANCHOR = Shape.of("anchor", "name", "along", "across", "aside", "rating");
    public static final Shape ATTACHMENT = Shape.of("attachment", "name", "along", "across", "aside");

    public static final Shape UNCERTAINTY = UnsureKeys.shape();
    public static final Shape UNSURE_FRICTION = Shape.of("uncertainty of friction", "constant", "coefficient");
    public static final Shape UNSURE_RUBBER = Shape.of("uncertainty of rubber", "tag", "force", "natural length");

    private Shapes() {}

    /** All of them. */
    public static List<Shape> all() {
        return List.of(
                SCENARIO,
                ABOUT,
                MEASURING,
                PLACE,
                BODY_POINT,
                PERSON,
                LIMBS,
                LIMB,
                RANGE,
                RANGES,
                JOINT_RANGE,
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
                STACK,
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
                ATTACHMENT,
                UNCERTAINTY,
                UNSURE_FRICTION,
                UNSURE_RUBBER);
    }
}
