package counterpull.app.cli;

import counterpull.engine.Refusal;
import counterpull.scenario.Scenario;
import counterpull.scenario.fields.Refusals;
import counterpull.scenario.problem.Place;
import counterpull.scenario.read.ScenarioReader;
import counterpull.scenario.tree.Source;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import picocli.CommandLine.Parameters;

/** The scenario's files as named on the command line. */
final class ScenarioFiles {
    @Parameters(
            arity = "1..*",
            paramLabel = "FILE",
            description = "The scenario: one file, or several that together make one (a person in one, the room in"
                    + " another). YAML or JSON; \"-\" reads standard input.")
    private List<Path> files = List.of();

    /** What the files say; throws {@link BadInput} with every problem. */
    Scenario read() {
        return read(sources());
    }

    static Scenario read(List<Source> sources) {
        ScenarioReader.Result result = ScenarioReader.read(sources);
        return result.scenario()
                .orElseThrow(() -> new BadInput(result.problems().lines()));
    }

    private List<Source> sources() {
        List<Source> sources = new ArrayList<>();
        for (Path file : files) {
            sources.add(file.toString().equals("-") ? standardInput() : Source.of(file));
        }
        return sources;
    }

    private static Source standardInput() {
        try {
            // one byte more than is ever accepted, so that a flood is refused and not swallowed
            return Source.of("standard input", System.in.readNBytes(MOST_BYTES + 1));
        } catch (IOException e) {
            throw new BadInput(List.of("standard input cannot be read: " + e.getMessage()));
        }
    }

    private static final int MOST_BYTES = 1 << 20;

    String name() {
        Path first = files.get(0).getFileName();
        return first == null ? "scenario" : first.toString().replaceFirst("\\.[A-Za-z]+$", "");
    }

    /** Computes, turning a refusal of the engine into bad input in a person's units. */
    static <T> T computed(Supplier<T> computation) {
        try {
            return computation.get();
        } catch (Refusal refusal) {
            throw new BadInput(
                    List.of(Refusals.problem(refusal, Place.file("this setup:")).line()));
        }
    }
}
