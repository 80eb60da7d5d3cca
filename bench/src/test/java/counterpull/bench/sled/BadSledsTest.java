package counterpull.bench.sled;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.bench.Answer;
import counterpull.bench.Remark;
import counterpull.bench.Way;
import counterpull.bench.fit.Noise;
import counterpull.engine.load.Counterweight;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Sled benches that make no sense, or little: each says so with its own code, and names the reading. */
class BadSledsTest {
    private static final SimulatedSled SLED = new SimulatedSled(Math.toRadians(35), 40, 20, 0.02, 30);
    private static final double DEGREE = Math.toRadians(1);

    /** Three pulls each way with 0 and with 100 kg; they scatter by a newton. */
    private static List<Pull> pulls() {
        double[] off = {0.7, -1.1, 0.4};
        List<Pull> pulls = new ArrayList<>();
        for (double load : new double[] {0, 100}) {
            for (Way way : Way.values()) {
                for (double each : off) {
                    pulls.add(new Pull(way, load, SLED.pull(way, load) + each));
                }
            }
        }
        return pulls;
    }

    private static RailGauge gauge(double... degrees) {
        List<Inclination> readings = new ArrayList<>();
        for (double each : degrees) {
            readings.add(Inclination.turned(each * DEGREE, (each + 0.4) * DEGREE));
        }
        return new RailGauge(readings, 0.7 * DEGREE, 0.2 * DEGREE);
    }

    private static SledBench bench(RailGauge gauge, List<Pull> pulls) {
        return new SledBench(
                "sled",
                gauge,
                new Riding(0.02, Counterweight.none(), Riding.PlateEnd.UPPER),
                pulls,
                List.of(new Breakaway(0, SLED.weight(0) + 30)),
                new Noise.FromScatter());
    }

    private static SledBench good() {
        return bench(gauge(34.9, 34.8, 34.7), pulls());
    }

    private static SledBench forces(UnaryOperator<Pull> changed) {
        return bench(good().gauge(), pulls().stream().map(changed).toList());
    }

    private static SledBench one(int index, double times) {
        List<Pull> pulls = pulls();
        Pull pull = pulls.get(index);
        pulls.set(index, new Pull(pull.way(), pull.plates(), pull.force() * times));
        return bench(good().gauge(), pulls);
    }

    private static Pull times(Pull pull, double force, double plates) {
        return new Pull(pull.way(), pull.plates() * plates, pull.force() * force);
    }

    private static SledBench only(java.util.function.Predicate<Pull> which) {
        return bench(good().gauge(), pulls().stream().filter(which).toList());
    }

    private static Arguments bad(SledBench bench, String code, String named) {
        return Arguments.of(code, named, bench);
    }

    static List<Arguments> benches() {
        SledBench good = good();
        Noise stated = new Noise.Stated(0.2);
        return List.of(
                bad(bench(new RailGauge(List.of(), 0, 0), pulls()), "no-angle", "rail's angle"),
                bad(bench(gauge(34.9, 134.8), pulls()), "angle-past-upright", "angle reading 2"),
                bad(bench(gauge(1, 1, 1), pulls()), "rail-level", "angle reading 1"),
                bad(bench(gauge(34.9, 34.7, 44.8), pulls()), "angles-differ", "angle reading 3"),
                bad(
                        bench(
                                new RailGauge(List.of(Inclination.turned(30 * DEGREE, 40 * DEGREE)), 0, 0.2 * DEGREE),
                                pulls()),
                        "gauge-zero",
                        "angle reading 1"),
                bad(
                        bench(new RailGauge(List.of(Inclination.once(35 * DEGREE)), 0, 0), pulls()),
                        "angle-accuracy",
                        "angle reading 1"),
                bad(bench(gauge(70, 70.1, 69.9), pulls()), "loads-disagree", "percent"),
                bad(bench(gauge(55, 55.1, 54.8), pulls()), "loads-disagree", "plumb line"),
                bad(bench(gauge(39, 39.1, 38.8), pulls()), "loads-disagree", "100 kg"),
                bad(only(pull -> pull.way() == Way.UP), "one-way-only", "pulls up"),
                bad(bench(good.gauge(), pulls().subList(0, 0)), "one-way-only", "0 pulls up"),
                bad(only(pull -> pull.plates() == 0), "one-load", "0 kg"),
                bad(
                        forces(pull -> new Pull(
                                pull.way(),
                                pull.plates() / 50,
                                SLED.pull(pull.way(), pull.plates() / 50)
                                        + (pull.force() - SLED.pull(pull.way(), pull.plates())))),
                        "loads-close",
                        "2 kg"),
                bad(
                        bench(good.gauge(), List.of(pulls().get(0), pulls().get(3), pulls().get(6))),
                        "too-few-pulls",
                        "pull 3"),
                bad(one(7, 10), "slip", "pull 8 (up)"),
                bad(one(4, 0.1), "slip", "pull 5 (down)"),
                bad(one(2, 1 / 9.80665), "slip", "pull 3 (up)"),
                bad(one(6, 2.2046), "slip", "pull 7 (up)"),
                bad(forces(pull -> times(pull, 1 / 9.80665, 1)), "scale-in-kilograms", "100 kg"),
                bad(forces(pull -> times(pull, 1, 2.2046)), "plates-in-pounds", "220.46 kg"),
                bad(forces(pull -> times(pull, 1, 10)), "slip-in-all", "1000 kg"),
                bad(forces(pull -> times(pull, 1 / 4.4482, 1)), "scale-in-pounds", "100 kg"),
                bad(
                        forces(pull -> new Pull(pull.way() == Way.UP ? Way.DOWN : Way.UP, pull.plates(), pull.force())),
                        "down-above-up",
                        "pull 1 (down)"),
                bad(one(3, 1.4), "down-above-up", "pull 4 (down)"),
                bad(one(0, -1), "force-below-zero", "pull 1 (up)"),
                bad(one(8, Double.NaN), "not-a-number", "pull 9 (up)"),
                bad(one(8, 100), "force-too-large", "pull 9 (up)"),
                bad(forces(pull -> times(pull, 1, -1)), "plates-impossible", "pull 7 (up)"),
                bad(
                        bench(
                                good.gauge(),
                                pulls().stream()
                                        .filter(pull -> pull.plates() == 0)
                                        .map(pull -> new Pull(pull.way(), 100, pull.force()))
                                        .toList()),
                        "carriage-below-zero",
                        "pull 1"),
                bad(
                        new SledBench(
                                "sled",
                                good.gauge(),
                                new Riding(1.2, Counterweight.none(), Riding.PlateEnd.UPPER),
                                pulls(),
                                List.of(),
                                good.scale()),
                        "plates-uncertainty",
                        "1.2"),
                bad(
                        new SledBench(
                                "sled",
                                good.gauge(),
                                good.riding(),
                                pulls(),
                                List.of(new Breakaway(0, 90)),
                                good.scale()),
                        "breakaway-below-sliding",
                        "breakaway reading 1"),
                bad(
                        new SledBench(
                                "sled",
                                good.gauge(),
                                good.riding(),
                                pulls(),
                                List.of(new Breakaway(0, -3)),
                                good.scale()),
                        "force-below-zero",
                        "breakaway reading 1"),
                bad(
                        new SledBench("sled", good.gauge(), good.riding(), pulls(), List.of(), stated),
                        "scatter-above-stated",
                        "0.2 N"),
                bad(one(9, 1.05), "stands-apart", "pull 10 (down)"),
                bad(
                        forces(pull -> new Pull(
                                pull.way(),
                                pull.plates(),
                                SLED.weight(pull.plates())
                                        + pull.way().sense() * (pull.plates() == 0 ? 30 : 25)
                                        + (pull.force() - SLED.pull(pull.way(), pull.plates())))),
                        "friction-at-zero",
                        "grows with load"),
                bad(
                        forces(pull -> new Pull(
                                pull.way(),
                                pull.plates(),
                                pull.force() + pull.way().sense() * 120)),
                        "friction-large",
                        "0 kg"));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @MethodSource("benches")
    void isSaidAndTheReadingNamed(String code, String named, SledBench bench) {
        Answer<SledFound> answer = bench.answer();
        assertThat(answer.remarks())
                .as("remarks: %s", answer.remarks().stream().map(Remark::inSi).toList())
                .anySatisfy(remark -> {
                    assertThat(remark.code()).isEqualTo(code);
                    assertThat(remark.inSi()).contains(named).doesNotEndWith(".");
                });
    }

    /** The control: a good bench says nothing, or the checks would speak of anything. */
    @Test
    void aGoodBenchIsLeftAlone() {
        assertThat(good().answer().remarks()).isEmpty();
    }

    @Test
    void allProblemsComeTogether() {
        List<Pull> pulls = new ArrayList<>(pulls());
        pulls.set(1, new Pull(Way.UP, -4, Double.NaN));
        pulls.set(2, new Pull(Way.UP, -4, 100));
        Answer<SledFound> answer = bench(gauge(134), pulls).answer();
        assertThat(answer.result()).isEmpty();
        assertThat(answer.remarks())
                .extracting(Remark::code)
                .contains("angle-past-upright", "not-a-number", "plates-impossible");
    }
}
