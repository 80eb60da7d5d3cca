package counterpull.bench.machine;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.bench.Answer;
import counterpull.bench.Estimate;
import counterpull.bench.Remark;
import counterpull.bench.Way;
import counterpull.bench.fit.Noise;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Machine benches that make no sense, or little: each says so with its own code, and names the reading. */
class BadMachinesTest {
    private static final double DEGREE = Math.toRadians(1);
    private static final Noise SCATTER = new Noise.FromScatter();

    /** Six positions, up and then down: 200 to 250 N and 20 N of friction each way. */
    private static List<Seen> sweep() {
        List<Seen> readings = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            readings.add(new Seen(Way.UP, 0.1 * i, 220 + 10 * i + (i % 2 == 0 ? 0.6 : -0.8)));
        }
        for (int i = 5; i >= 0; i--) {
            readings.add(new Seen(Way.DOWN, 0.1 * i, 180 + 10 * i + (i % 3 == 0 ? 0.9 : -0.5)));
        }
        return readings;
    }

    private static MachineBench profile(List<Seen> readings) {
        return new ProfileBench("machine", Quantity.FORCE_BY_TRAVEL, readings, SCATTER);
    }

    private static MachineBench profile(int index, UnaryOperator<Seen> change) {
        List<Seen> readings = sweep();
        readings.set(index, change.apply(readings.get(index)));
        return profile(readings);
    }

    private static MachineBench size(int index, double times) {
        return profile(index, seen -> new Seen(seen.way(), seen.position(), seen.size() * times));
    }

    private static MachineBench position(int index, double position) {
        return profile(index, seen -> new Seen(seen.way(), position, seen.size()));
    }

    private static MachineBench every(UnaryOperator<Seen> change) {
        return profile(sweep().stream().map(change).toList());
    }

    /** Pins 20, 40 and 60 kg, two pulls each way, 2:1, 6 %. */
    private static List<StackPull> pulls() {
        List<StackPull> pulls = new ArrayList<>();
        for (double printed : new double[] {20, 40, 60}) {
            for (Way way : Way.values()) {
                for (double off : new double[] {0.4, -0.3}) {
                    pulls.add(new StackPull(way, printed, 0, printed * 9.80665 / 2 * (1 + 0.06 * way.sense()) + off));
                }
            }
        }
        return pulls;
    }

    private static List<LineRun> runs() {
        return List.of(new LineRun(0.801, 0.4), new LineRun(0.799, 0.4), new LineRun(1.001, 0.5));
    }

    private static MachineBench stack(List<LineRun> runs, List<StackPull> pulls) {
        return new StackBench("stack", runs, SCATTER, pulls, List.of(), List.of(), SCATTER);
    }

    private static MachineBench stack(UnaryOperator<StackPull> change) {
        return stack(runs(), pulls().stream().map(change).toList());
    }

    private static MachineBench run(double way, double rise) {
        List<LineRun> runs = new ArrayList<>(runs());
        runs.set(1, new LineRun(way, rise));
        return stack(runs, pulls());
    }

    private static MachineBench pull(int index, double times) {
        List<StackPull> pulls = pulls();
        StackPull pull = pulls.get(index);
        pulls.set(index, new StackPull(pull.way(), pull.printed(), pull.added(), pull.force() * times));
        return stack(runs(), pulls);
    }

    private static StackPull times(StackPull pull, double force, double printed) {
        return new StackPull(pull.way(), pull.printed() * printed, pull.added(), pull.force() * force);
    }

    /** Five angles, empty and with 10 kg, each way. */
    private static List<LeverReading> lever() {
        List<LeverReading> readings = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            double angle = (-80 + 20 * i) * DEGREE;
            for (double plates : new double[] {0, 10}) {
                for (Way way : Way.values()) {
                    double torque = 25 * Math.cos(angle) + plates * 9.80665 * 0.4 * Math.cos(angle) + 3 * way.sense();
                    readings.add(new LeverReading(way, angle, plates, torque + (i % 2 == 0 ? 0.1 : -0.1)));
                }
            }
        }
        return readings;
    }

    private static MachineBench lever(List<LeverReading> readings, double horn) {
        return new LeverBench(
                "lever",
                LeverHold.torque(LeverHold.Turn.COUNTERCLOCKWISE),
                readings,
                Optional.of(new HornTape(horn, 0.005)),
                SCATTER);
    }

    private static MachineBench lever(int index, UnaryOperator<LeverReading> change) {
        List<LeverReading> readings = lever();
        readings.set(index, change.apply(readings.get(index)));
        return lever(readings, 0.4);
    }

    private static MachineBench levers(UnaryOperator<LeverReading> change) {
        return lever(lever().stream().map(change).toList(), 0.4);
    }

    private static List<CamTravel> travels() {
        List<CamTravel> travels = new ArrayList<>();
        for (int i = 0; i < 7; i++) {
            travels.add(
                    new CamTravel((-90 + 15 * i) * DEGREE, 0.1 * 15 * i * DEGREE + (i % 2 == 0 ? 0.0003 : -0.0003)));
        }
        return travels;
    }

    private static MachineBench cam(List<CamTravel> travels) {
        return new CamTravelBench("cam", travels, LeverHold.Turn.COUNTERCLOCKWISE, SCATTER);
    }

    private static MachineBench cam(int index, double angle, double line) {
        List<CamTravel> travels = travels();
        travels.set(index, new CamTravel(angle, line));
        return cam(travels);
    }

    private static Arguments bad(MachineBench bench, String code, String named) {
        return Arguments.of(code, named, bench);
    }

    static List<Arguments> unknownMachines() {
        return List.of(
                bad(profile(List.of()), "positions-few", "0"),
                bad(profile(sweep().subList(0, 1)), "positions-few", "1 position alone"),
                bad(profile(sweep().subList(4, 8)), "positions-few", "reading 4"),
                bad(every(seen -> new Seen(seen.way(), 0.3, seen.size())), "positions-few", "1 position alone"),
                bad(profile(sweep().subList(0, 6)), "one-way-only", "way down"),
                bad(every(seen -> new Seen(seen.way(), seen.position(), 0)), "all-zero", "reading 1"),
                bad(size(3, 10), "slip", "reading 4, up at 0.3 m"),
                bad(size(8, 1 / 9.80665), "slip", "reading 9, down at 0.3 m"),
                bad(size(2, -1), "below-zero", "reading 3"),
                bad(size(2, Double.NaN), "not-a-number", "reading 3"),
                bad(position(4, 40), "position-impossible", "reading 5"),
                bad(size(7, 1.4), "down-above-up", "reading 8, down at 0.4 m"),
                bad(
                        every(seen -> new Seen(seen.way() == Way.UP ? Way.DOWN : Way.UP, seen.position(), seen.size())),
                        "down-above-up",
                        "reading 1, down at 0 m"),
                bad(
                        every(seen -> new Seen(seen.way(), 0.5 - seen.position(), seen.size())),
                        "tape-reversed",
                        "reading 6"),
                bad(position(3, 0.03), "positions-not-in-order", "reading 4, up at 0.03 m"),
                bad(
                        every(seen -> new Seen(
                                seen.way(),
                                seen.position() > 0.15 ? 1 + seen.position() : seen.position(),
                                seen.size())),
                        "gap",
                        "0.1 m"));
    }

    static List<Arguments> stacks() {
        return List.of(
                bad(run(-0.8, 0.4), "rise-below-zero", "run 2"),
                bad(run(0.8, 0), "rise-below-zero", "run 2"),
                bad(run(80, 40), "way-too-long", "run 2"),
                bad(run(0.8, 0.004), "ratio-impossible", "run 2"),
                bad(run(0.8 * 2.54, 0.4), "runs-differ", "inches"),
                bad(
                        stack(List.of(new LineRun(0.4, 0.8), new LineRun(0.4, 0.801), new LineRun(0.5, 1)), pulls()),
                        "rise-above-way",
                        "run 1"),
                bad(stack(List.of(new LineRun(0.8, 0.4)), pulls()), "tape-accuracy", "run 1"),
                bad(stack(List.of(), pulls()), "ratio-unknown", "not its mass"),
                bad(
                        stack(
                                runs(),
                                pulls().stream()
                                        .filter(pull -> pull.way() == Way.UP)
                                        .toList()),
                        "one-way-only",
                        "6 pulls up"),
                bad(stack(runs(), List.of()), "one-way-only", "0 pulls up"),
                bad(pull(5, 10), "slip", "pull 6 (up)"),
                bad(pull(3, 0.1), "slip", "pull 4 (down)"),
                bad(pull(0, -1), "force-below-zero", "pull 1 (up)"),
                bad(pull(0, Double.NaN), "not-a-number", "pull 1 (up)"),
                bad(stack(pull -> times(pull, 1, -1)), "pin-impossible", "pull 1 (up)"),
                bad(
                        stack(pull -> new StackPull(
                                pull.way() == Way.UP ? Way.DOWN : Way.UP, pull.printed(), 0, pull.force())),
                        "down-above-up",
                        "20 kg"),
                bad(stack(pull -> times(pull, 1, 2.2046)), "pins-in-pounds", "pull 1"),
                bad(stack(pull -> times(pull, 1 / 9.80665, 1)), "scale-in-kilograms", "pull 1"),
                bad(stack(pull -> times(pull, 9.80665, 1)), "unit-slip", "pull 1"),
                bad(stack(pull -> times(pull, pull.printed() == 40 ? 1.3 : 1, 1)), "pin-far-off", "40 kg"),
                bad(
                        stack(pull -> new StackPull(
                                pull.way(),
                                pull.printed(),
                                0,
                                pull.printed() * 9.80665 / 2
                                        + 12 * pull.way().sense()
                                        + (pull.force()
                                                - pull.printed()
                                                        * 9.80665
                                                        / 2
                                                        * (1 + 0.06 * pull.way().sense())))),
                        "friction-not-a-share",
                        "nothing on the pin"),
                bad(stack(pull -> times(pull, 1 + 0.35 * pull.way().sense(), 1)), "friction-large", "0.4"),
                bad(stack(runs(), List.of(pulls().get(0), pulls().get(2))), "outside-limits", "three times"),
                bad(
                        new StackBench(
                                "stack", runs(), SCATTER, pulls(), List.of(new Alone(Way.UP, 9)), List.of(), SCATTER),
                        "alone-one-way",
                        "1 times up"),
                bad(
                        new StackBench("stack", runs(), SCATTER, pulls(), List.of(), List.of(1.2, -1.0), SCATTER),
                        "moving-mass-impossible",
                        "weighing 2"));
    }

    static List<Arguments> leversAndCams() {
        return List.of(
                bad(
                        levers(reading -> new LeverReading(
                                reading.way(), 0.1 * reading.angle(), reading.plates(), reading.size())),
                        "angles-close",
                        "reading 20"),
                bad(
                        lever(
                                lever().stream()
                                        .filter(reading -> reading.way() == Way.UP)
                                        .toList(),
                                0.4),
                        "one-way-only",
                        "way down"),
                bad(lever(lever().subList(0, 5), 0.4), "too-few-readings", "reading 5"),
                bad(
                        lever(
                                6,
                                reading -> new LeverReading(
                                        reading.way(), reading.angle(), reading.plates(), reading.size() * 10)),
                        "slip",
                        "reading 7, up"),
                bad(
                        lever(6, reading -> new LeverReading(reading.way(), -60, reading.plates(), reading.size())),
                        "angle-impossible",
                        "reading 7, up"),
                bad(
                        lever(6, reading -> new LeverReading(reading.way(), reading.angle(), -10, reading.size())),
                        "plates-impossible",
                        "reading 7, up"),
                bad(
                        lever(
                                6,
                                reading ->
                                        new LeverReading(reading.way(), reading.angle(), reading.plates(), Double.NaN)),
                        "not-a-number",
                        "reading 7"),
                bad(
                        levers(reading -> new LeverReading(
                                reading.way() == Way.UP ? Way.DOWN : Way.UP,
                                reading.angle(),
                                reading.plates(),
                                reading.size())),
                        "down-above-up",
                        "reading 1, down"),
                bad(lever(lever(), 0.55), "horn-disagrees", "0.55 m"),
                bad(
                        levers(reading -> new LeverReading(
                                reading.way(), reading.angle(), reading.plates() * 2.2046, reading.size())),
                        "horn-disagrees",
                        "pounds"),
                bad(
                        levers(reading -> new LeverReading(
                                reading.way(),
                                reading.angle(),
                                reading.plates(),
                                reading.size() - 25 * Math.cos(reading.angle()))),
                        "lever-balanced",
                        "own moment"),
                bad(
                        new LeverBench(
                                "lever",
                                new LeverHold(LeverHold.Turn.CLOCKWISE, -0.4, 0.01),
                                lever(),
                                Optional.empty(),
                                SCATTER),
                        "arm-impossible",
                        "-0.4 m"),
                bad(cam(travels().subList(0, 3)), "angles-few", "reading 3"),
                bad(
                        cam(travels().stream()
                                .map(each -> new CamTravel(0.2, each.line()))
                                .toList()),
                        "angles-few",
                        "1 angle alone"),
                bad(cam(2, -60, 0.05), "angle-impossible", "reading 3"),
                bad(cam(2, -1, 50), "way-too-long", "reading 3"),
                bad(cam(3, -45 * DEGREE, 0.02), "line-steps-back", "reading 4"),
                bad(
                        cam(travels().stream()
                                .map(each -> new CamTravel(each.angle(), each.line() * 15))
                                .toList()),
                        "radius-too-large",
                        "reading 1"),
                bad(
                        new CamTorqueBench("cam", sweep(), Estimate.normal(3, 0.1), Estimate.normal(1, 0.01), SCATTER),
                        "radius-too-large",
                        "reading 1"));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @MethodSource({"unknownMachines", "stacks", "leversAndCams"})
    void isSaidAndTheReadingNamed(String code, String named, MachineBench bench) {
        Answer<? extends MachineFound> answer = bench.answer();
        assertThat(answer.remarks())
                .as(
                        "remarks: %s",
                        answer.remarks().stream()
                                .map(each -> each.code() + ": " + each.inSi())
                                .toList())
                .anySatisfy(remark -> {
                    assertThat(remark.code()).isEqualTo(code);
                    assertThat(remark.inSi()).contains(named).doesNotEndWith(".");
                });
    }

    /** The control: good benches say nothing but what no bench can know. */
    @Test
    void goodBenchesAreLeftAlone() {
        assertThat(profile(sweep()).answer().remarks()).isEmpty();
        assertThat(stack(runs(), pulls()).answer().remarks()).isEmpty();
        assertThat(cam(travels()).answer().remarks()).isEmpty();
        assertThat(lever(lever(), 0.4).answer().remarks())
                .extracting(Remark::code)
                .containsExactly("mass-not-known");
    }
}
