package counterpull.bench.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.bench.Way;
import counterpull.bench.fit.Noise;
import counterpull.engine.load.CamRadius;
import counterpull.engine.load.Loaded;
import counterpull.engine.load.Share;
import counterpull.engine.load.StackLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Readings made by the engine's own laws, or by a closed form, are found again. */
class MachineCrosscheckTest {
    private static final Noise FINE = new Noise.Stated(0.01);

    private static double pull(StackLine line, Way way) {
        double sum = 0;
        for (Share share : line.pull("stack", new double[] {way.sense()}, new double[1])) {
            sum += share.perUnit()[0];
        }
        return sum;
    }

    /** crosscheck: what the engine's line pulls at three pins gives the engine's line back; 1e-9 for rounding. */
    @Test
    void aStackIsTheEnginesLine() {
        List<StackPull> pulls = new ArrayList<>();
        for (double mass : new double[] {21, 43, 64}) {
            StackLine line = new StackLine(2.1, 0.08, Loaded.always(mass), 0.7);
            for (Way way : Way.values()) {
                pulls.add(new StackPull(way, mass - 1, 0, pull(line, way)));
            }
        }
        List<LineRun> runs = List.of(new LineRun(0.63, 0.3), new LineRun(0.84, 0.4));
        StackFound found = new StackBench(
                        "stack", runs, new Noise.Stated(1e-4), pulls, List.of(), List.of(0.7), FINE)
                .answer()
                .result()
                .orElseThrow();
        StackLine line = found.line(1).orElseThrow();
        assertThat(line.ratio()).isCloseTo(2.1, within(1e-9));
        assertThat(line.friction()).isCloseTo(0.08, within(1e-9));
        assertThat(line.stack().own()).isCloseTo(43, within(1e-8));
        assertThat(found.pins().get(1).error().orElseThrow().value()).isCloseTo(1, within(1e-8));
        assertThat(found.pins().get(1).felt().orElseThrow().value())
                .as("what starting and stopping feels")
                .isCloseTo(line.feltMass(0), within(1e-8));
    }

    /** crosscheck: two readings alone; friction and ratio by hand: (110 − 90)/200, 20 kg × g / 50 N. */
    @Test
    void aPlateLaidOnTheStackGivesTheRatio() {
        double more = 20 * 9.80665 / 3;
        List<StackPull> pulls = List.of(
                new StackPull(Way.UP, 30, 0, 110),
                new StackPull(Way.DOWN, 30, 0, 90),
                new StackPull(Way.UP, 30, 20, 1.1 * (100 + more)),
                new StackPull(Way.DOWN, 30, 20, 0.9 * (100 + more)));
        StackFound found = new StackBench("stack", List.of(), FINE, pulls, List.of(), List.of(), FINE)
                .answer()
                .result()
                .orElseThrow();
        assertThat(found.friction().value()).isCloseTo(0.1, within(1e-12));
        assertThat(found.ratio().orElseThrow().value()).isCloseTo(3, within(1e-9));
        assertThat(found.pins().get(0).mass().orElseThrow().value()).isCloseTo(300 / 9.80665, within(1e-9));
    }

    /** crosscheck: a lever's moments by hand, turning clockwise while it lifts. */
    @Test
    void aLeverIsItsMoments() {
        List<LeverReading> readings = new ArrayList<>();
        for (double angle : new double[] {2.2, 2.7, 3.2}) {
            for (double plates : new double[] {0, 15}) {
                double weight = -(18 * Math.cos(angle - 0.3) + plates * 9.80665 * 0.5 * Math.cos(angle + 0.2));
                readings.add(new LeverReading(Way.UP, angle, plates, (weight + 2) / 0.4));
                readings.add(new LeverReading(Way.DOWN, angle, plates, (weight - 2) / 0.4));
            }
        }
        LeverHold hold = new LeverHold(LeverHold.Turn.CLOCKWISE, 0.4, 0.002);
        LeverFound found = new LeverBench("lever", hold, readings, Optional.of(new HornTape(0.5, 0.005)), FINE)
                .answer()
                .result()
                .orElseThrow();
        assertThat(found.moment().value()).isCloseTo(18, within(1e-6));
        assertThat(found.offset().value()).isCloseTo(-0.3, within(1e-6));
        assertThat(found.friction().value()).isCloseTo(2, within(1e-6));
        assertThat(found.horn().orElseThrow().radius().value()).isCloseTo(0.5, within(1e-6));
        assertThat(found.horn().orElseThrow().offset().value()).isCloseTo(0.2, within(1e-6));
        assertThat(found.body(6).comRadius() * 6 * 9.80665).isCloseTo(18, within(1e-6));
    }

    /** crosscheck: a round cam and one whose radius grows evenly are exact: their line is a polynomial; 1e-6 m for the smoothing. */
    @Test
    void simpleCamsAreExact() {
        List<CamTravel> round = new ArrayList<>();
        List<CamTravel> growing = new ArrayList<>();
        for (int i = 0; i <= 6; i++) {
            double angle = -1.5 + 0.3 * i;
            round.add(new CamTravel(angle, -0.11 * angle));
            growing.add(new CamTravel(angle, 0.1 * angle + 0.02 * angle * angle));
        }
        CamRadius left = cam(round, LeverHold.Turn.CLOCKWISE).cam();
        assertThat(left.readings()).allSatisfy(each -> assertThat(each.radius()).isCloseTo(0.11, within(1e-6)));
        CamFound right = cam(growing, LeverHold.Turn.COUNTERCLOCKWISE);
        assertThat(right.radius(-1).value()).isCloseTo(0.1 - 0.04, within(1e-6));
        assertThat(right.radius(0.2).value()).isCloseTo(0.1 + 0.008, within(1e-6));
    }

    private static CamFound cam(List<CamTravel> travels, LeverHold.Turn lifts) {
        return new CamTravelBench("cam", travels, lifts, new Noise.Stated(5e-4))
                .answer()
                .result()
                .orElseThrow();
    }

    /** A machine that pulls alike everywhere comes back as that, and the engine takes its readings. */
    @Test
    void anEvenMachineStaysEven() {
        List<Seen> readings = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            readings.add(new Seen(Way.UP, 0.1 * i, 110));
            readings.add(new Seen(Way.DOWN, 0.1 * i, 90));
        }
        ProfileFound found = new ProfileBench("machine", Quantity.FORCE_BY_TRAVEL, readings, new Noise.Stated(1))
                .answer()
                .result()
                .orElseThrow();
        assertThat(found.readings()).hasSize(11).allSatisfy(each -> {
            assertThat(each.up()).isCloseTo(110, within(1e-6));
            assertThat(each.down()).isCloseTo(90, within(1e-6));
        });
        assertThat(found.half(0.2).value()).isCloseTo(10, within(1e-6));
    }
}
