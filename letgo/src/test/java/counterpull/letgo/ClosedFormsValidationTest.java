package counterpull.letgo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Constants;
import counterpull.engine.load.Carriage;
import counterpull.engine.load.Counterweight;
import counterpull.engine.load.Cuff;
import counterpull.engine.load.Friction;
import counterpull.engine.load.Horn;
import counterpull.engine.load.Lever;
import counterpull.engine.load.LeverBody;
import counterpull.engine.load.LeverFrame;
import counterpull.engine.load.Loaded;
import counterpull.engine.motion.Rail;
import counterpull.engine.motion.Ride;
import counterpull.engine.motion.Stops;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.Loading;
import counterpull.engine.profile.PressTask;
import counterpull.engine.profile.Sled;
import counterpull.engine.profile.Trials;
import counterpull.engine.validation.Published;
import java.util.List;
import org.hipparchus.special.elliptic.legendre.LegendreEllipticIntegral;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What falls, slides and swings, against what mechanics texts say about it in closed form. */
class ClosedFormsValidationTest {
    private static final double G = Constants.STANDARD_GRAVITY;
    private static final String TEXT = "any mechanics text, closed form from memory; computed";
    // steps are held to 1e-11 of every component, and there are a few dozen
    private static final double STEPS = 1e-9;
    private static final String REASON = "steps are held to 1e-11";

    @ParameterizedTest
    @ValueSource(doubles = {15, 30, 45, 60, 90})
    void slidesDownAnInclineWithFriction(double degrees) {
        double f0 = 12;
        double mu = 0.08;
        double way = 0.2;
        FreeSled sled = FreeSled.of(Sleds.stopped(degrees, new Friction(f0, mu, 0), Loading.plates(60)));
        Outcome outcome = LetGo.of(sled, Release.held(way));
        double angle = Angles.radians(degrees);
        double a = G * (Math.sin(angle) - mu * Math.cos(angle)) - f0 / 100;
        assertThat(outcome.ending()).isEqualTo(Ending.ON_THE_STOP);
        row(
                "slide of 0.2 m down " + degrees + "° with friction: time",
                "s",
                Math.sqrt(2 * way / a),
                outcome.end().time());
        row(
                "slide of 0.2 m down " + degrees + "° with friction: speed",
                "m/s",
                Math.sqrt(2 * a * way),
                outcome.arrivalSpeed());
        assertThat(outcome.energy().friction())
                .as("friction × way")
                .isCloseTo((f0 + mu * 100 * G * Math.cos(angle)) * way, within(1e-8));
        assertThat(outcome.end().kinetic()).isCloseTo(100 * a * way, within(1e-8));
    }

    @Test
    void slidesOnFromASpeed() {
        FreeSled sled = FreeSled.of(Sleds.stopped(30, Friction.none(), Loading.plates(60)));
        Outcome outcome = LetGo.of(sled, new Release(0.2, -0.4));
        double a = G / 2;
        double speed = Math.sqrt(0.4 * 0.4 + 2 * a * 0.2);
        row("slide of 0.2 m down 30° from 0.4 m/s: speed", "m/s", speed, outcome.arrivalSpeed());
        row(
                "slide of 0.2 m down 30° from 0.4 m/s: time",
                "s",
                (speed - 0.4) / a,
                outcome.end().time());
    }

    @Test
    void theSeatSlidesWithThePersonAndItsHangingCounterweight() {
        // 30 kg of seat, 20 kg of plates and 80 kg of person on 30°, 12 kg hanging over a pulley
        Rail rail = new Rail(Angles.radians(-30), Ride.SEAT, 0, 1);
        Counterweight counter = new Counterweight(12, Counterweight.Run.HANGING);
        Carriage seat = new Carriage(30, counter, new Friction(10, 0.05, 0), 400);
        PressTask bare = Trials.with(Trials.task().with(Loading.plates(20)), new Sled(rail, seat, new Stops()));
        double bottom = bare.ownStroke().bottom();
        FreeSled sled = FreeSled.of(Trials.with(bare, new Stops(bottom)));
        Outcome outcome = LetGo.of(sled, Release.held(0.2));
        double friction = 10 + 0.05 * 130 * G * Math.cos(Angles.radians(30));
        double a = (G * (130 * 0.5 - 12) - friction) / 142;
        assertThat(outcome.ending()).isEqualTo(Ending.ON_THE_STOP);
        row(
                "seat and person down 30° against a hanging 12 kg: time",
                "s",
                Math.sqrt(0.4 / a),
                outcome.end().time());
        row(
                "seat and person down 30° against a hanging 12 kg: speed",
                "m/s",
                Math.sqrt(0.4 * a),
                outcome.arrivalSpeed());
    }

    @Test
    void frictionStopsWhatItWouldHold() {
        // μ 0.3 on 10° holds; moving it loses speed at g (μ cos − sin)
        FreeSled sled = FreeSled.of(Sleds.stopped(10, new Friction(0, 0.3, 0), Loading.plates(60)));
        Outcome outcome = LetGo.of(sled, new Release(0.2, -0.4));
        double a = G * (0.3 * Math.cos(Angles.radians(10)) - Math.sin(Angles.radians(10)));
        assertThat(outcome.ending()).isEqualTo(Ending.AT_REST);
        row("slide on 10° with friction 0.3 from 0.4 m/s: way to rest", "m", 0.16 / (2 * a), outcome.drop());
        row(
                "slide on 10° with friction 0.3 from 0.4 m/s: time to rest",
                "s",
                0.4 / a,
                outcome.end().time());
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 45, 90, 150, 179})
    void pendulumFromAnyAmplitude(double degrees) {
        double radius = 0.4;
        double amplitude = Angles.radians(degrees);
        // from the amplitude to the lowest place: a quarter of the period
        FreePart lever = pendulum(radius);
        Outcome outcome = LetGo.of(lever, Release.held(amplitude));
        double half = Math.sin(amplitude / 2);
        double quarter = Math.sqrt(radius / G) * LegendreEllipticIntegral.bigK(half * half);
        row(
                "pendulum of 0.4 m from " + degrees + "°: quarter period",
                "s",
                quarter,
                outcome.end().time());
        row(
                "pendulum of 0.4 m from " + degrees + "°: speed when lowest",
                "rad/s",
                2 * half * Math.sqrt(G / radius),
                outcome.arrivalSpeed());
    }

    /** How much longer a wide swing takes than a small one: K(sin²(A/2)) over its value at 0, π/2. */
    @ParameterizedTest
    @CsvSource({"60, 1.685750354812596", "90, 1.854074677301372", "120, 2.156515647499643"})
    void pendulumAgainstTheTableOfTheCompleteEllipticIntegral(double degrees, double table) {
        FreePart lever = pendulum(0.4);
        Outcome outcome = LetGo.of(lever, Release.held(Angles.radians(degrees)));
        Published.of("period of a pendulum at an amplitude of " + degrees + "° over that of a small swing", "")
                .section("Letting go: closed forms")
                .source("Abramowitz M and Stegun IA 1964, Table 17.1, 2 K/π; from memory")
                .value(2 * table / Math.PI)
                .ours(outcome.end().time() / (Math.PI / 2 * Math.sqrt(0.4 / G)))
                .within(STEPS, REASON);
    }

    @Test
    void massBetweenSpringsKeepsItsPeriodForManySwings() {
        double stiffness = 400;
        FreeSled sled =
                FreeSled.of(Sleds.plain(0, Friction.none(), new Loading(60, Sleds.opposed(0.1, stiffness / 2, 0))));
        Outcome outcome = LetGo.of(sled, Release.held(0.15));
        double omega = Math.sqrt(stiffness / 100);
        assertThat(outcome.ending()).isEqualTo(Ending.STILL_SWINGING);
        assertThat(outcome.way().turns()).isEqualTo((int) Math.floor(LetGo.LONGEST * omega / Math.PI));
        row(
                "100 kg between springs of 400 N/m after 20 s: place from the middle",
                "m",
                0.05 * Math.cos(omega * 20),
                outcome.end().place() - 0.1);
        row(
                "100 kg between springs of 400 N/m after 20 s: speed",
                "m/s",
                -0.05 * omega * Math.sin(omega * 20),
                outcome.end().speed());
        row(
                "100 kg between springs of 400 N/m: largest speed",
                "m/s",
                0.05 * omega,
                outcome.way().fastest());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.9, 1.3, 2.4, 7})
    void frictionTakesTheSameFromEveryHalfSwing(double friction) {
        double stiffness = 400;
        FreeSled sled = FreeSled.of(
                Sleds.plain(0, new Friction(friction, 0, 0), new Loading(60, Sleds.opposed(0.1, stiffness / 2, 0))));
        Outcome outcome = LetGo.of(sled, Release.held(0.15));
        // each half swing goes round a middle that friction moves by f/K: the amplitude loses 2 f/K
        double band = friction / stiffness;
        double amplitude = 0.05;
        int swings = 0;
        while (amplitude > band) {
            amplitude -= 2 * band;
            swings++;
        }
        double side = swings % 2 == 0 ? 1 : -1;
        String what = "mass on springs with friction of " + friction + " N: ";
        assertThat(outcome.ending()).isEqualTo(Ending.AT_REST);
        assertThat(outcome.way().turns()).isEqualTo(swings);
        row(what + "where it rests", "m", side * amplitude, outcome.end().place() - 0.1);
        row(
                what + "when it rests",
                "s",
                swings * Math.PI / Math.sqrt(stiffness / 100),
                outcome.end().time());
    }

    /** 25 kg on a lever without weight that is lifted from straight down to 3.1 rad above it. */
    private static FreePart pendulum(double radius) {
        LeverFrame frame = new LeverFrame(new Vec(0.03, -0.02), new Cuff(0, 0.3));
        Horn horn = new Horn("weight", radius, 0, Loaded.with(5));
        Lever lever = new Lever("pendulum", frame, LeverBody.weightless(), List.of(horn), 0);
        LeverRod rod = new LeverRod(frame, -Math.PI / 2, 1, 3.13);
        return new FreePart(
                rod, List.of(rod.carry(lever).orElseThrow()), new FreePart.Surroundings(G, 20), Ends.Bottom.STOP);
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
