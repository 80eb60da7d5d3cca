package counterpull.scenario.read;

import static counterpull.scenario.format.Measures.ANGLE;
import static counterpull.scenario.format.Measures.AT_LEAST_TWO;
import static counterpull.scenario.format.Measures.LEVER;
import static counterpull.scenario.format.Measures.SCALE_FORCE;
import static counterpull.scenario.format.Measures.SIGNED_TORQUE;
import static counterpull.scenario.format.Measures.SPREAD;
import static counterpull.scenario.format.Measures.TORQUE;
import static counterpull.scenario.format.Measures.UP_TO_A_HUNDRED;

import counterpull.engine.body.Action;
import counterpull.engine.strength.IsometricTest;
import counterpull.engine.strength.Tester;
import counterpull.scenario.content.Ended;
import counterpull.scenario.content.OwnCurve;
import counterpull.scenario.content.OwnCurve.Point;
import counterpull.scenario.content.OwnStrength;
import counterpull.scenario.content.StrengthTest;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.format.Shapes;
import counterpull.scenario.format.Words;
import counterpull.scenario.problem.Code;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads strength tests and own curves of a limb. */
final class StrengthReader {
    private StrengthReader() {}

    static OwnStrength read(Fields limb) {
        List<StrengthTest> tests = new ArrayList<>();
        Set<Action> tested = EnumSet.noneOf(Action.class);
        for (Fields fields : limb.optionalGroups("tests", Shapes.TEST, UP_TO_A_HUNDRED)) {
            test(fields).ifPresent(tests::add);
        }
        tests.forEach(test -> tested.add(test.action()));
        List<OwnCurve> curves = new ArrayList<>();
        for (Fields fields : limb.optionalGroups("curves", Shapes.CURVE, UP_TO_A_HUNDRED)) {
            curve(fields, tested).ifPresent(curves::add);
        }
        List<Action> notKnown = limb.optionalChoices("not known", Words.ACTION, UP_TO_A_HUNDRED);
        return new OwnStrength(tests, curves, notKnown);
    }

    private static Optional<StrengthTest> test(Fields fields) {
        Action action = fields.choice("action", Words.ACTION);
        double angle = fields.required("angle", ANGLE);
        double torque = torque(fields);
        Tester with = fields.choice("with", Words.TESTER);
        double spread = fields.orElse("spread", SPREAD, with.relativeSd(action));
        Ended ended = fields.optionalChoice("ended", Words.ENDED).orElse(Ended.REACHED);
        return fields.built(
                () -> new StrengthTest(action, with, ended, new IsometricTest(angle, torque, spread, ended.meaning())));
    }

    /** The torque, or force × lever + what the limb's own weight took off the reading, N·m. */
    private static double torque(Fields fields) {
        Optional<String> given = fields.oneOf("torque", "force");
        if (given.isPresent() && given.get().equals("torque")) {
            notWithTorque(fields, "lever");
            notWithTorque(fields, "limb weight");
            return fields.required("torque", TORQUE);
        }
        if (given.isEmpty()) {
            return TORQUE.high().si();
        }
        double force = fields.required("force", SCALE_FORCE);
        double lever = fields.required("lever", LEVER);
        double torque = force * lever + fields.orElse("limb weight", SIGNED_TORQUE, 0);
        if (fields.isSound() && torque <= 0) {
            fields.report(
                    Code.MUST_BE_POSITIVE,
                    "limb weight",
                    "nothing is left of the tested torque after this correction",
                    "Check its sign: it is negative where the limb's weight helped");
        }
        return torque;
    }

    private static void notWithTorque(Fields fields, String key) {
        if (fields.has(key)) {
            fields.report(
                    Code.CONTRADICTION,
                    key,
                    "this belongs to a force, but the test gives a torque",
                    "A torque is taken as already corrected");
        }
    }

    private static List<Point> points(Fields fields) {
        for (String key : List.of("from", "to")) {
            if (fields.has(key)) {
                fields.report(
                        Code.CONTRADICTION,
                        key,
                        "this belongs to a flat curve, but the curve has points",
                        "The first and last points are its ends");
            }
        }
        List<Point> points = new ArrayList<>();
        for (Fields point : fields.groups("points", Shapes.CURVE_POINT, AT_LEAST_TWO)) {
            points.add(new Point(point.required("angle", ANGLE), point.required("torque", TORQUE)));
        }
        return points;
    }

    /** One torque between two angles. */
    private static List<Point> flat(Fields fields) {
        double torque = fields.required("flat", TORQUE);
        double from = fields.required("from", ANGLE);
        double to = fields.required("to", ANGLE);
        if (fields.isSound() && from >= to) {
            fields.report(Code.OUT_OF_ORDER, "to", "\"to\" must be above \"from\"", "Exchange them");
        }
        return List.of(new Point(from, torque), new Point(to, torque));
    }

    private static Optional<OwnCurve> curve(Fields fields, Set<Action> taken) {
        Action action = fields.choice("action", Words.ACTION);
        double spread = fields.required("spread", SPREAD);
        List<Point> points = fields.oneOf("points", "flat")
                .map(given -> given.equals("flat") ? flat(fields) : points(fields))
                .orElse(List.of());
        if (fields.isSound() && !taken.add(action)) {
            fields.report(
                    Code.CONTRADICTION,
                    "action",
                    action.words() + " has a curve and a test, or two curves, in this limb",
                    "Keep one: tests bend the published curve, an own curve replaces it");
        }
        return fields.built(() -> {
            OwnCurve curve = new OwnCurve(action, points, spread);
            curve.check();
            return curve;
        });
    }
}
