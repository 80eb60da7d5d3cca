package counterpull.letgo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Constants;
import counterpull.engine.load.CamRadius;
import counterpull.engine.load.CamStack;
import counterpull.engine.load.Carriage;
import counterpull.engine.load.Counterweight;
import counterpull.engine.load.Cuff;
import counterpull.engine.load.Friction;
import counterpull.engine.load.GuidedMass;
import counterpull.engine.load.Lever;
import counterpull.engine.load.LeverBody;
import counterpull.engine.load.LeverFrame;
import counterpull.engine.load.Loaded;
import counterpull.engine.load.Resistance;
import counterpull.engine.load.StackLine;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Vec;
import counterpull.engine.validation.Published;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.special.elliptic.legendre.LegendreEllipticIntegral;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Levers, cams, bars on rails and stacks of exercises, let go: what mechanics texts say in closed form. */
class PartClosedFormsValidationTest {
    private static final double G = Constants.STANDARD_GRAVITY;
    private static final String TEXT = "any mechanics text, closed form from memory; computed";
    private static final double STEPS = 1e-9;
    private static final String REASON = "steps are held to 1e-11";
    private static final LeverFrame FRAME = new LeverFrame(new Vec(0.04, 0.01), new Cuff(0, 0.3));

    private static FreePart lever(double bottom, double travel, Resistance... on) {
        return part(new LeverRod(FRAME, bottom, 1, travel), on);
    }

    private static FreePart part(Rod rod, Resistance... on) {
        List<Resistance> carried = new ArrayList<>();
        for (Resistance one : on) {
            carried.add(rod.carry(one).orElseThrow());
        }
        return new FreePart(rod, carried, new FreePart.Surroundings(G, 20), Ends.Bottom.NOTHING);
    }

    /** A rod of 6 kg and 0.8 m about its end: I = m L²/3, centre at L/2. */
    @ParameterizedTest
    @ValueSource(doubles = {0.01, 5, 60, 120, 175})
    void aUniformRodSwingsAsAPhysicalPendulum(double degrees) {
        LeverBody rod = new LeverBody(6, 0.4, 0, 6 * 0.64 / 3);
        FreePart part = lever(-Math.PI / 2, 3.1, new Lever("rod", FRAME, rod, List.of(), 0));
        Outcome outcome = LetGo.of(part, Release.held(Angles.radians(degrees)));
        double half = Math.sin(Angles.radians(degrees) / 2);
        double small = Math.sqrt(2 * 0.8 / (3 * G));
        row(
                "uniform rod of 0.8 m about its end, from " + degrees + "°: quarter period",
                "s",
                small * LegendreEllipticIntegral.bigK(half * half),
                outcome.end().time());
        row(
                "uniform rod of 0.8 m about its end, from " + degrees + "°: speed when lowest",
                "rad/s",
                2 * half / small,
                outcome.arrivalSpeed());
        // a swing of a hundredth of a degree changes energy in the eighth digit of what is stored
        assertThat(outcome.energy().error()).isLessThan(degrees < 1 ? 1e-7 : STEPS);
    }

    /** A hundredth of a degree: as in every table, the period does not depend on the swing. */
    @Test
    void aSmallSwingTakesTheTextbooksPeriod() {
        LeverBody rod = new LeverBody(6, 0.4, 0, 6 * 0.64 / 3);
        FreePart part = lever(-Math.PI / 2, 3.1, new Lever("rod", FRAME, rod, List.of(), 0));
        Outcome outcome = LetGo.of(part, Release.held(Angles.radians(0.01)));
        // the next term of the series is the square of the swing over 16: 2e-9
        assertThat(4 * outcome.end().time()).isCloseTo(2 * Math.PI * Math.sqrt(2 * 0.8 / (3 * G)), within(1e-8));
    }

    /** Friction f of a pivot on a rod that falls from level: I φ̇²/2 = m g L/2 − f π/2. */
    @Test
    void frictionOfThePivotTakesTorqueTimesAngle() {
        LeverBody rod = new LeverBody(6, 0.4, 0, 6 * 0.64 / 3);
        FreePart part = lever(-Math.PI / 2, 3.1, new Lever("rod", FRAME, rod, List.of(), 4));
        Outcome outcome = LetGo.of(part, Release.held(Math.PI / 2));
        row(
                "uniform rod of 6 kg falling from level against 4 N·m at its pivot: speed when lowest",
                "rad/s",
                Math.sqrt(2 * (6 * G * 0.4 - 4 * Math.PI / 2) / 1.28),
                outcome.arrivalSpeed());
        assertThat(outcome.energy().friction()).isCloseTo(4 * Math.PI / 2, within(1e-9));
    }

    /** A round cam r, inertia I: φ̈ = −(1 − k) m g r/R / (I + (1 − k) m r²/R²). */
    @ParameterizedTest
    @CsvSource({"1, 0, 0", "1, 0.1, 0", "2, 0.1, 1.5", "2, 0.3, 0"})
    void aStackFallsOnARoundCam(double ratio, double lost, double moving) {
        StackLine line = new StackLine(ratio, lost, Loaded.with(5), moving);
        FreePart part = lever(-1, 1.2, new CamStack("cam", FRAME, CamRadius.round(0.12), line, 0.6));
        Outcome outcome = LetGo.of(part, Release.held(1.2));
        double m = 25;
        double a = (1 - lost) * m * G * 0.12 / ratio / (0.6 + (moving + (1 - lost) * m / ratio / ratio) * 0.0144);
        String what = "25 kg on a round cam, ratio " + ratio + ", lost share " + lost + ", " + moving + " kg moving: ";
        row(what + "time", "s", Math.sqrt(2.4 / a), outcome.end().time());
        row(what + "speed", "rad/s", Math.sqrt(2.4 * a), outcome.arrivalSpeed());
        assertThat(outcome.energy().friction())
                .as("lost share of all that the stack pulls, times the way of the line")
                .isCloseTo(lost * m * (G - 0.12 * a / ratio) / ratio * 0.12 * 1.2, within(1e-8));
    }

    /** Friction takes its share of a pull that is there: a line with nothing on its end pulls nothing, and its stack falls freely. */
    @ParameterizedTest
    @CsvSource({"1, 0, 1.5", "1, 0.15, 1.5", "2, 0.15, 1.5", "2, 0.15, 0", "1, 0.15, 0"})
    void aStackFallsWithItsLine(double ratio, double lost, double moving) {
        StackLine line = new StackLine(ratio, lost, Loaded.with(5), moving);
        Outcome outcome = LetGo.of(new FreeLine(line, 30, 0.6), Release.held(0.6));
        double pull = (1 - lost) * 35 / ratio;
        double a = pull * G / (pull / ratio + moving);
        String what = "35 kg and its line, ratio " + ratio + ", lost share " + lost + ", " + moving + " kg moving: ";
        row(
                what + "time for 0.6 m of line",
                "s",
                Math.sqrt(1.2 / a),
                outcome.end().time());
        row(what + "speed of the line", "m/s", Math.sqrt(1.2 * a), outcome.arrivalSpeed());
        if (moving == 0) {
            assertThat(a).isCloseTo(G * ratio, within(1e-12));
        }
        assertThat(outcome.energy().error()).isLessThan(STEPS);
    }

    /** 20 kg of bar and 20 kg of plates, 10 kg hanging: (40 sin θ − 10) g less friction over 50 kg. */
    @ParameterizedTest
    @ValueSource(doubles = {30, 60, 90, 135})
    void aBarSlidesDownItsRail(double degrees) {
        Carriage carriage =
                new Carriage(20, new Counterweight(10, Counterweight.Run.HANGING), new Friction(12, 0.05, 0), 400);
        double angle = Angles.radians(degrees);
        BodyPoint hand = new BodyPoint("hand", 1, new Vec(0.3, 0));
        GuidedMass bar = new GuidedMass("bar", hand, angle, carriage, Loaded.Plates.HERE);
        FreePart part = part(new RailRod(bar.frame(), new Vec(0.14, 0.18), angle, 0.36), bar);
        Outcome outcome = LetGo.of(part, Release.held(0.36));
        double a = (G * (40 * Math.sin(angle) - 10) - 12 - 0.05 * 40 * G * Math.abs(Math.cos(angle))) / 50;
        String what = "bar of 40 kg against a hanging 10 kg, rail at " + degrees + "°: ";
        row(what + "time", "s", Math.sqrt(0.72 / a), outcome.end().time());
        row(what + "speed", "m/s", Math.sqrt(0.72 * a), outcome.arrivalSpeed());
    }

    /** 40 kg on a slope of 20°: what first moves it was measured at 1 N more, or 1 N less, than its weight along the rail. */
    @Test
    void whatFirstMovesABarHoldsItAtRest() {
        BodyPoint hand = new BodyPoint("hand", 1, new Vec(0.3, 0));
        double angle = Angles.radians(20);
        double weight = 40 * G * Math.sin(angle);
        for (double breakaway : new double[] {weight + 1, weight - 1}) {
            Carriage carriage = new Carriage(20, Counterweight.none(), new Friction(5, 0, breakaway), 400);
            GuidedMass bar = new GuidedMass("bar", hand, angle, carriage, Loaded.Plates.HERE);
            FreePart part = part(new RailRod(bar.frame(), new Vec(0.14, 0.18), angle, 0.36), bar);
            Ending ending = LetGo.of(part, Release.held(0.2)).ending();
            assertThat(ending).isEqualTo(breakaway > weight ? Ending.AT_REST : Ending.NOTHING_CATCHES_IT);
        }
    }

    /** The controls: on a cam whose radius doubles, either forgotten slope opens the account. */
    @Test
    void aForgottenSlopeOfWhatACamMovesIsFound() {
        CamRadius growing = new CamRadius(List.of(new CamRadius.Reading(-1.1, 0.06), new CamRadius.Reading(0.3, 0.24)));
        StackLine line = new StackLine(1, 0.3, Loaded.with(5), 0);
        FreePart part = lever(-1, 1.2, new CamStack("cam", FRAME, growing, line, 0.1));
        Release release = Release.held(1.2);
        assertThat(LetGo.of(part, release).energy().error()).isLessThan(STEPS);
        LoneMachine forgetful = new Wrapped(part) {
            @Override
            public double inertiaSlope(double x) {
                return 0;
            }
        };
        assertThat(LetGo.of(forgetful, release).energy().closes()).isFalse();
        LoneMachine rubsLess = new Wrapped(part) {
            @Override
            public double friction(double x) {
                return 0.9 * super.friction(x);
            }
        };
        // what friction takes is integrated with the motion, so that only the outcome tells
        assertThat(LetGo.of(rubsLess, release).arrivalSpeed())
                .isGreaterThan(1.001 * LetGo.of(part, release).arrivalSpeed());
    }

    private static void row(String quantity, String unit, double value, double ours) {
        Published.of(quantity, unit)
                .section("Letting go: closed forms")
                .source(TEXT)
                .value(value)
                .ours(ours)
                .within(STEPS, REASON);
    }
}
