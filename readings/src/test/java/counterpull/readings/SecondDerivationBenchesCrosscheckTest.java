package counterpull.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.bench.Estimate;
import counterpull.bench.machine.LeverFound;
import counterpull.bench.machine.PinFound;
import counterpull.bench.machine.StackFound;
import counterpull.bench.person.Comparison;
import counterpull.bench.person.PersonFindings;
import counterpull.bench.person.RangeResult;
import counterpull.bench.person.StrengthResult;
import counterpull.bench.sled.LoadCheck;
import counterpull.bench.sled.SledFound;
import counterpull.bench.sled.SledFriction;
import counterpull.bench.trace.Effort;
import counterpull.bench.trace.Rise;
import counterpull.bench.trace.Trace;
import counterpull.bench.trace.TraceBench;
import counterpull.bench.tubing.TubingResult;
import counterpull.readings.machines.MachineSubject;
import counterpull.readings.machines.SledSubject;
import counterpull.readings.people.PersonSubject;
import counterpull.readings.rubber.RubberSubject;
import counterpull.scenario.tree.Source;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * What the bench says, from the file of readings to every number, against a second derivation in another language. The file of numbers
 * says what of it was worked out blind, and beside each number how near and why not nearer.
 */
class SecondDerivationBenchesCrosscheckTest {
    private static final Path FOLDER = Path.of("src/test/resources/reference/second-derivation-bench");

    private final Map<String, Double> found = new HashMap<>();

    private void put(String subject, String quantity, double value) {
        found.put(subject + "," + quantity, value);
    }

    private void put(String subject, String quantity, Estimate estimate) {
        put(subject, quantity, estimate.value());
        put(subject, quantity + " error", estimate.standardError());
    }

    @Test
    void everyNumberIsTheSame() throws IOException {
        Readings readings = ReadingsReader.read(Source.of(FOLDER.resolve("readings.yaml")))
                .readings()
                .orElseThrow();
        readings.subjects().forEach(this::take);
        trace();
        Set<String> subjects = new TreeSet<>();
        for (String line : lines(FOLDER.resolve("numbers.csv"))) {
            String[] cells = line.split(",", 5);
            subjects.add(cells[0]);
            assertThat(found).as("asked of the program").containsKey(cells[0] + "," + cells[1]);
            assertThat(found.get(cells[0] + "," + cells[1]))
                    .as("%s: %s (%s)", cells[0], cells[1], cells[4])
                    .isCloseTo(Double.parseDouble(cells[2]), within(Double.parseDouble(cells[3])));
        }
        assertThat(subjects)
                .as("the control: nothing was left out")
                .containsExactly("Wren", "extension lever", "harbour sled", "low pulley", "rubber T1", "trace");
    }

    private static List<String> lines(Path file) throws IOException {
        return Files.readAllLines(file).stream()
                .filter(line -> !line.startsWith("#"))
                .collect(Collectors.toList());
    }

    private void take(Subject subject) {
        if (subject instanceof SledSubject sled) {
            sled(sled.name(), sled.answer().result().orElseThrow());
        } else if (subject instanceof MachineSubject machine) {
            machine.answer().result().ifPresent(each -> machine(machine.name(), each));
        } else if (subject instanceof RubberSubject rubber) {
            rubber.answer().result().ifPresent(each -> rubber(rubber.name(), each));
        } else if (subject instanceof PersonSubject person) {
            person(person.name(), person.findings());
        }
    }

    private void sled(String name, SledFound sled) {
        SledFriction.Apart friction = (SledFriction.Apart) sled.friction();
        LoadCheck loads = sled.loads().orElseThrow();
        put(name, "rail angle", sled.angle());
        put(name, "carriage", sled.mass());
        put(name, "constant", friction.constant());
        put(name, "coefficient", friction.coefficient());
        put(name, "breakaway", sled.breakaway().orElseThrow());
        put(name, "per kilogram", loads.found());
    }

    private void machine(String name, Object machine) {
        if (machine instanceof StackFound stack) {
            put(name, "ratio", stack.ratio().orElseThrow());
            put(name, "friction", stack.friction());
            for (PinFound pin : stack.pins()) {
                put(name, "pin " + Math.round(pin.printed()), pin.mass().orElseThrow());
            }
        } else if (machine instanceof LeverFound lever) {
            put(name, "moment", lever.moment());
            put(name, "offset", lever.offset());
            put(name, "friction", lever.friction());
            put(name, "horn", lever.horn().orElseThrow().radius());
            put(name, "horn offset", lever.horn().orElseThrow().offset());
        }
    }

    private void rubber(String name, TubingResult rubber) {
        put(name, "natural length", rubber.lengths().fitted());
        put(name, "AICc", rubber.law().score().aicc().orElse(Double.NaN));
        put(name, "numbers", rubber.law().score().numbers());
        put(name, "C1", rubber.law().constants().get(0).estimate());
        put(name, "C2", rubber.law().constants().get(1).estimate());
        for (double length : new double[] {0.608, 0.765, 1.08}) {
            if (length <= rubber.band().last()) {
                Estimate force = rubber.band().force(length);
                put(name, "force at " + length, force.value());
                put(name, "force error at " + length, force.standardError());
            }
        }
        rubber.loss().ifPresent(loss -> put(name, "loss", loss.share()));
        rubber.softening().ifPresent(softening -> put(name, "softening", softening.fall()));
        rubber.lengths().set().ifPresent(set -> put(name, "set", set));
    }

    private void person(String name, PersonFindings person) {
        String latest = person.tests().get(person.tests().size() - 1).date().toString();
        for (PersonFindings.Tested tested : person.tests()) {
            StrengthResult result = tested.result();
            String what = result.of().subject().words() + " "
                    + Math.round(Math.toDegrees(result.of().subject().angle()))
                    + (tested.date().toString().equals(latest) ? "" : " before");
            put(name, what, result.log().value());
            put(name, what + " weight", result.efforts().limbWeight());
            put(name, what + " error", result.log().budget().standardError());
        }
        comparison(name, "knee left over right", person.comparisons().sides().get(0));
        comparison(name, "hip left over right", person.comparisons().sides().get(1));
        comparison(name, "knee left since", person.comparisons().changes().get(0));
        comparison(name, "knee right since", person.comparisons().changes().get(1));
        for (PersonFindings.Range range : person.ranges()) {
            range(name, range.result(), "");
            range.before().ifPresent(before -> range(name, before, " before"));
        }
    }

    private void comparison(String name, String what, PersonFindings.Beside beside) {
        Comparison comparison = beside.comparison();
        put(name, what, comparison.ratio());
        put(name, what + " error", comparison.budget().standardError());
    }

    private void range(String name, RangeResult range, String when) {
        String words = range.of().which().words();
        String end = words.contains("most") ? "bent" : "straight";
        String side = words.contains("left") ? "left" : "right";
        if (words.startsWith("knee")) {
            put(name, "knee " + end + " " + side + when, range.angle());
            put(name, "knee " + end + " " + side + when + " detectable", range.detectable());
        }
    }

    private void trace() throws IOException {
        List<String> rows = lines(Path.of("../demo/knee-trace.csv"));
        double[][] samples = new double[2][rows.size() - 1];
        for (int i = 1; i < rows.size(); i++) {
            String[] cells = rows.get(i).split(",");
            samples[0][i - 1] = Double.parseDouble(cells[0]);
            samples[1][i - 1] = Double.parseDouble(cells[1]);
        }
        for (Effort effort : TraceBench.of(Trace.of(samples[0], samples[1]))
                .result()
                .orElseThrow()
                .efforts()) {
            put("trace", "peak " + effort.number(), effort.peak().force());
            put(
                    "trace",
                    "best second " + effort.number(),
                    effort.plateau().orElseThrow().mean());
            put(
                    "trace",
                    "onset " + effort.number(),
                    effort.onset().orElseThrow().time());
            for (Rise rise : effort.rises()) {
                put("trace", "rise " + effort.number() + " " + Math.round(1000 * rise.window()), rise.rate());
            }
        }
    }
}
