package counterpull.readings.machines;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.bench.Remark;
import counterpull.bench.Way;
import counterpull.bench.fit.Noise;
import counterpull.bench.machine.CamFound;
import counterpull.bench.machine.LeverBench;
import counterpull.bench.machine.LeverFound;
import counterpull.bench.machine.MachineFound;
import counterpull.bench.machine.ProfileFound;
import counterpull.bench.machine.StackFound;
import counterpull.bench.sled.Pull;
import counterpull.bench.sled.SledBench;
import counterpull.engine.load.Counterweight;
import counterpull.readings.ReadingsReader;
import counterpull.readings.Subject;
import counterpull.scenario.PressScenario;
import counterpull.scenario.Scenario;
import counterpull.scenario.content.Resisting;
import counterpull.scenario.problem.Problem;
import counterpull.scenario.read.ScenarioReader;
import counterpull.scenario.tree.Source;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Sleds and machines from a file to the bench, and what was found on to a scenario. */
class MachineReadingsTest {
    private static final String BEGIN = "format: counterpull-readings/1\n";

    private static String demo(String name) {
        try {
            return Files.readString(Path.of("..", "demo", name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static ReadingsReader.Result read(String text) {
        return ReadingsReader.read(Source.of("readings.yaml", text));
    }

    private static List<Subject> subjects(String text) {
        ReadingsReader.Result result = read(text);
        return result.readings()
                .orElseThrow(() -> new AssertionError(result.problems().lines()))
                .subjects();
    }

    private static <T extends MachineFound> T found(int index, Class<T> kind) {
        MachineSubject subject =
                (MachineSubject) subjects(demo("bench-machine.yaml")).get(index);
        return kind.cast(subject.answer().result().orElseThrow());
    }

    /** What the demo's invented readings were drawn from: 42.3 kg, 17 N, 0.019, 44.6°; three standard errors allowed. */
    @Test
    void theDemosSledIsFoundAgain() {
        SledSubject sled = (SledSubject) subjects(demo("bench-sled.yaml")).get(0);
        var found = sled.answer().result().orElseThrow();
        assertThat(found.angle().value())
                .isCloseTo(Math.toRadians(44.6), within(3 * found.angle().standardError()));
        assertThat(found.mass().value()).isCloseTo(42.3, within(3 * found.mass().standardError()));
        assertThat(found.carriage().friction().constant()).isCloseTo(17, within(6.0));
        assertThat(found.carriage().friction().coefficient()).isCloseTo(0.019, within(0.008));
        assertThat(sled.answer().remarks()).isEmpty();
    }

    @Test
    void everyKeyOfASledIsRead() {
        SledBench bench = ((SledSubject) subjects(BEGIN + """
                sleds:
                  - name: seat sled
                    rail angle: [{laid: 20 deg, turned: 20.4 deg}, {laid: 20.2 deg}]
                    gauge: {zero sure to: 0.5 deg, sure to: 0.1 deg}
                    foot plate: lower end
                    plates sure to: 0.2 %
                    counterweight: {mass: 12 kg, runs: hanging}
                    scale sure to: 2 N
                    pulls:
                      - {plates: 0 kg, up: [210 N, 211 N], down: [180 N]}
                      - {plates: 50 kg, up: [390 N], down: [350 N]}
                    breakaway: [{plates: 0 kg, readings: [230 N]}]
                """).get(0)).bench();
        assertThat(bench.gauge().readings()).hasSize(2);
        assertThat(bench.gauge().zero()).isEqualTo(Math.toRadians(0.5));
        assertThat(bench.gauge().other()).isEqualTo(Math.toRadians(0.1));
        assertThat(bench.riding().plateEnd().sign()).isEqualTo(-1);
        assertThat(bench.riding().platesShare()).isCloseTo(0.002, within(1e-15));
        assertThat(bench.riding().counterweight()).isEqualTo(new Counterweight(12, Counterweight.Run.HANGING));
        assertThat(bench.scale()).isEqualTo(new Noise.Stated(2));
        assertThat(bench.pulls())
                .containsExactly(
                        new Pull(Way.UP, 0, 210),
                        new Pull(Way.UP, 0, 211),
                        new Pull(Way.DOWN, 0, 180),
                        new Pull(Way.UP, 50, 390),
                        new Pull(Way.DOWN, 50, 350));
        assertThat(bench.breakaways()).hasSize(1);
    }

    @Test
    void theDemosMachinesAreFoundAgain() {
        assertThat(found(0, ProfileFound.class).mean(0.28).value()).isCloseTo(237.6, within(3.0));
        StackFound stack = found(1, StackFound.class);
        assertThat(stack.ratio().orElseThrow().holds(2.03)).isTrue();
        assertThat(stack.friction().value()).isCloseTo(0.068, within(0.004));
        assertThat(stack.pins().get(3).mass().orElseThrow().value()).isCloseTo(82.4, within(1.0));
        LeverFound lever = found(2, LeverFound.class);
        assertThat(lever.moment().value()).isCloseTo(24, within(0.9));
        assertThat(lever.horn().orElseThrow().radius().value()).isCloseTo(0.405, within(0.015));
        CamFound cam = found(3, CamFound.class);
        double radius = 0.095 + 0.022 * Math.cos(0.9);
        assertThat(cam.radius(0).holds(radius))
                .as("radius at 0 deg, %s", radius)
                .isTrue();
    }

    @Test
    void torqueIsReadWhereNoArmIsGiven() {
        LeverBench bench = (LeverBench) ((MachineSubject) subjects(BEGIN + """
                machines:
                  - name: lever
                    lever:
                      lifts: clockwise
                      scale sure to: 1 N·m
                      readings:
                        - {angle: 10 deg, up: [20 N·m], down: [14 N·m]}
                        - {angle: 60 deg, up: [12 N·m], down: [7 N·m]}
                """).get(0)).bench();
        assertThat(bench.hold().byForce()).isFalse();
        assertThat(bench.readings().get(0).size()).isEqualTo(20);
    }

    @Test
    void aCamByTorqueIsRead() {
        CamFound cam = (CamFound) ((MachineSubject) subjects(BEGIN + """
                machines:
                  - name: cam
                    cam by torque:
                      mass: 50 kg
                      ratio: 1
                      scale sure to: 1 N·m
                      readings:
                        - {angle: -80 deg, up: [52 N·m], down: [46 N·m]}
                        - {angle: -40 deg, up: [53 N·m], down: [45 N·m]}
                        - {angle: 0 deg, up: [51 N·m], down: [47 N·m]}
                """).get(0))
                .answer()
                .result()
                .orElseThrow();
        assertThat(cam.radius(0).value()).isCloseTo(49 / (50 * 9.80665), within(0.002));
    }

    @Test
    void everyProblemOfAFileComesTogether() {
        ReadingsReader.Result result = read(BEGIN + """
                sleds:
                  - name: sled
                    rail angle: [{laid: 45}]
                    foot plate: middle
                    pulls: [{plates: 0 kg, up: [300 kg], sideways: [3 N]}]
                machines:
                  - name: machine
                    stack: {pulls: [{pin: 20, up: [3 N]}]}
                  - name: other
                """);
        assertThat(result.readings()).isEmpty();
        assertThat(result.problems().all()).extracting(Problem::message).hasSizeGreaterThanOrEqualTo(6);
    }

    @Test
    void readingsThatCannotBeGiveNoScenario() {
        SledSubject sled = (SledSubject) subjects(BEGIN + """
                sleds:
                  - name: sled
                    rail angle: [{laid: 100 deg, turned: 100.2 deg}]
                    pulls: [{plates: 0 kg, up: [300 N, 302 N, 299 N], down: [260 N, 262 N, 261 N]}]
                """).get(0);
        assertThat(sled.answer().remarks()).extracting(Remark::code).contains("angle-past-upright");
        assertThat(sled.forScenario()).isEmpty();
    }

    private static String example(String name) {
        try (InputStream stream = Scenario.class.getResourceAsStream(name)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Scenario scenario(String text) {
        ScenarioReader.Result result = ScenarioReader.read(List.of(Source.of("scenario.yaml", text)));
        return result.scenario()
                .orElseThrow(() -> new AssertionError(result.problems().lines() + "\n" + text));
    }

    /** What the bench writes for a sled takes the place of the example's keys and reads back as what was found. */
    @Test
    void aSledsLinesReadBack() {
        SledSubject sled = (SledSubject) subjects(demo("bench-sled.yaml")).get(0);
        String lines = sled.forScenario();
        String machine = lines.substring(lines.indexOf("machine:\n") + 9, lines.indexOf("uncertainty:"));
        String unsure = lines.substring(lines.indexOf("uncertainty:\n") + 13);
        String text = example("example.yaml")
                .replaceFirst("(?m)^  carriage: 40 kg\n", "")
                .replaceFirst("(?m)^  friction:\n(    .*\n)+", "")
                .replaceFirst("(?m)^  rail angle: 45 deg.*\n", machine)
                .replaceFirst("(?m)^uncertainty:\n(  .*\n)+", "uncertainty:\n" + unsure);
        PressScenario read = (PressScenario) scenario(text);
        var found = sled.answer().result().orElseThrow();
        assertThat(read.machine().carriage().mass())
                .as("two digits of the uncertainty are written")
                .isCloseTo(found.mass().value(), within(found.mass().standardError() / 10));
        assertThat(read.machine().rail().angle())
                .isCloseTo(found.angle().value(), within(found.angle().standardError() / 10));
        assertThat(read.machine().carriage().friction().constant())
                .isCloseTo(found.carriage().friction().constant(), within(0.1));
    }

    /** Each machine's entry takes the place of the example's list, with what nobody measured filled in. */
    @Test
    void aMachinesLinesReadBack() {
        List<Subject> subjects = subjects(demo("bench-machine.yaml"));
        // the first was read by travel, and the example's exercise is driven by an angle: it has a test of its own
        // below
        for (Subject subject : subjects.subList(1, subjects.size())) {
            String text = subject.forScenario();
            text = text.replaceAll("(?m)^( +)# (at|pulley|pivot|pad|ratio|friction|inertia): ", "$1$2: ");
            // of the pins one counts: the cam's own is still to be filled in
            text = text.contains("cam stack") ? text.replace("# mass: ", "mass: ") : text;
            text = text.replace("on: forearm, along: 26 cm", "on: shank, along: 26 cm");
            String resists = text.contains("uncertainty:") ? text.substring(0, text.indexOf("uncertainty:")) : text;
            String whole = example("example-exercise.yaml")
                    .replaceFirst(
                            "(?ms)^resists:\n.*?^tempo:",
                            java.util.regex.Matcher.quoteReplacement(
                                    resists.substring(resists.indexOf("resists:")) + "\ntempo:"));
            List<Resisting> read = ((counterpull.scenario.ExerciseScenario) scenario(whole))
                    .doing()
                    .resists();
            assertThat(read).as(subject.name()).hasSize(1);
            assertThat(read.get(0).resistance().words()).isEqualTo(subject.name());
        }
    }

    @Test
    void aMeasuredProfilesLinesReadBack() {
        MachineSubject subject = (MachineSubject) subjects(BEGIN + """
                machines:
                  - name: old machine
                    measured profile:
                      scale sure to: 1 N·m
                      torque by angle:
                        - {angle: 5 deg, up: [6 N·m], down: [4 N·m]}
                        - {angle: 50 deg, up: [9 N·m], down: [7 N·m]}
                        - {angle: 95 deg, up: [5 N·m], down: [4 N·m]}
                """).get(0);
        String text = subject.forScenario();
        String whole = example("example-exercise.yaml")
                .replaceFirst(
                        "(?ms)^resists:\n.*?^tempo:",
                        text.substring(text.indexOf("resists:"), text.indexOf("uncertainty:")) + "\ntempo:")
                .replaceFirst("(?m)^uncertainty:\n(  .*\n)+", text.substring(text.indexOf("uncertainty:")));
        assertThat(((counterpull.scenario.ExerciseScenario) scenario(whole))
                        .doing()
                        .resists())
                .hasSize(1);
    }
}
