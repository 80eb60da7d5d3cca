package counterpull.report.bench;

import counterpull.bench.person.PersonFindings;
import counterpull.bench.person.PersonFindings.Curve;
import counterpull.engine.body.Action;
import counterpull.engine.body.Side;
import counterpull.engine.strength.AngleRange;
import counterpull.engine.strength.IsometricTest;
import counterpull.engine.strength.IsometricTest.Meaning;
import counterpull.engine.strength.StrengthCurve;
import counterpull.picture.Chart;
import counterpull.picture.Coordinate;
import counterpull.picture.Ink;
import counterpull.picture.Layer;
import counterpull.picture.Look;
import counterpull.picture.Marker;
import counterpull.picture.Range;
import counterpull.picture.Series;
import counterpull.picture.Stroke;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.DoubleUnaryOperator;

/** A chart for each action that was tested: left beside right, each curve with its band, its tests, and the published average. */
final class PersonCharts {
    private static final int POINTS = 61;
    private static final Chart.Measure TORQUE =
            new Chart.Measure(Chart.Quantity.TORQUE, "greatest torque held still, one limb");

    private final PersonFindings findings;

    PersonCharts(PersonFindings findings) {
        this.findings = findings;
    }

    List<BenchSection.Captioned> all() {
        Map<Action, List<Curve>> byAction = new EnumMap<>(Action.class);
        for (Curve curve : findings.curves()) {
            byAction.computeIfAbsent(curve.action(), action -> new ArrayList<>())
                    .add(curve);
        }
        List<BenchSection.Captioned> charts = new ArrayList<>();
        byAction.forEach((action, curves) -> charts.add(new BenchSection.Captioned(
                chart(action, curves),
                "Dashed: what the tests make of the published average (thin, grey); light: where it lies nine times in ten."
                        + " Tests of the left are circles, of the right squares, with one standard deviation each way; an arrow"
                        + " upward: at least this.")));
        return charts;
    }

    private static Chart chart(Action action, List<Curve> curves) {
        AngleRange angles = curves.get(0).curve().angles();
        for (Curve curve : curves) {
            angles = angles.reaching(curve.curve().angles().low())
                    .reaching(curve.curve().angles().high());
        }
        List<Layer> layers = new ArrayList<>();
        StrengthCurve published = curves.get(0).curve().given();
        layers.add(new Layer.Curve(
                series(published.angles(), published::held), Look.of(Ink.TODAY, Stroke.TODAY), "published average"));
        curves.forEach(curve -> curve(curve, layers));
        curves.forEach(curve -> tests(curve, layers));
        String title = action.words().substring(0, 1).toUpperCase(java.util.Locale.ROOT)
                + action.words().substring(1)
                + (curves.size() > 1
                        ? ": left beside right"
                        : ": " + curves.get(0).side().words());
        Range range =
                Range.between(new Coordinate(angleWords(action), Coordinate.Kind.ANGLE), angles.low(), angles.high());
        return new Chart(title, TORQUE, range, layers, OptionalInt.empty());
    }

    private static String angleWords(Action action) {
        for (var joint : counterpull.engine.body.Joint.values()) {
            if (joint.action() == action || joint.opposite() == action) {
                return joint.angleWords();
            }
        }
        throw new IllegalStateException("no joint does " + action);
    }

    private static Series series(AngleRange angles, DoubleUnaryOperator torque) {
        double[] at = new double[POINTS];
        double[] values = new double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            at[i] = angles.low() + (angles.high() - angles.low()) * i / (POINTS - 1);
            values[i] = torque.applyAsDouble(at[i]);
        }
        return new Series(at, values);
    }

    private static Ink ink(Side side) {
        return side == Side.LEFT ? Ink.KNEE : Ink.HIP;
    }

    private static void curve(Curve of, List<Layer> layers) {
        AngleRange angles = of.curve().angles();
        layers.add(new Layer.Band(
                series(angles, of.curve()::lower90), series(angles, of.curve()::upper90), ink(of.side())));
        Look look = Look.of(ink(of.side()), of.side() == Side.LEFT ? Stroke.HAD : Stroke.HAD_FINE);
        layers.add(new Layer.Curve(
                series(angles, of.curve()::held), look, of.side().words() + " has"));
    }

    private static void tests(Curve of, List<Layer> layers) {
        tests(of, Meaning.REACHED, of.side() == Side.LEFT ? Marker.CIRCLE : Marker.SQUARE, layers);
        tests(of, Meaning.AT_LEAST, Marker.UP, layers);
    }

    private static void tests(Curve of, Meaning meaning, Marker marker, List<Layer> layers) {
        List<IsometricTest> tests = of.curve().tests().stream()
                .filter(test -> test.meaning() == meaning)
                .toList();
        if (tests.isEmpty()) {
            return;
        }
        double[] at = tests.stream().mapToDouble(IsometricTest::angle).toArray();
        double[] torque = tests.stream().mapToDouble(IsometricTest::torque).toArray();
        double[] low = tests.stream()
                .mapToDouble(test -> test.torque() / (1 + test.relativeSd()))
                .toArray();
        double[] high = tests.stream()
                .mapToDouble(test -> test.torque() * (1 + test.relativeSd()))
                .toArray();
        if (meaning == Meaning.REACHED) {
            layers.add(new Layer.Bars(new Series(at, low), new Series(at, high), ink(of.side())));
        }
        layers.add(new Layer.Dots(new Series(at, torque), marker, ink(of.side()), ""));
    }
}
