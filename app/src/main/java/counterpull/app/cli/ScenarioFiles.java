package counterpull.app.cli;

import counterpull.engine.Refusal;
import counterpull.scenario.PressScenario;
import counterpull.scenario.Scenario;
import counterpull.scenario.fields.Refusals;
import counterpull.scenario.problem.Code;
import counterpull.scenario.problem.Place;
import counterpull.scenario.read.ScenarioReader;
import counterpull.scenario.tree.Source;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The scenario's files as named on the command line. */
final class ScenarioFiles {
    private static final int MOST_BYTES = 1 << 20;
    private static final Set<String> PARTS = Set.of("person", "machine", "exercise", "tempo", "target");

    @Parameters(
            arity = "1..*",
            paramLabel = "FILE",
            description = "The scenario: one file, or several that together make one (a person in one, the room in"
                    + " another). YAML or JSON; \"-\" reads standard input; the name of an exercise of the library stands for"
                    + " its file.")
    private List<Path> files = List.of();

    @Option(
            names = {"-e", "--exercise"},
            paramLabel = "NAME|FILE",
            description = "The person of the files does this exercise instead of what the files say: a name that"
                    + " \"counterpull exercises\" lists, or a file.")
    private String exercise;

    /** What the files say, or what their person does in another exercise; throws {@link BadInput} with every problem. */
    Scenario any() {
        return exercise == null ? any(sources()) : doing(exercise);
    }

    /** The person of the files doing another exercise, by its name in the library or its file. */
    Scenario doing(String exercise) {
        return scenario(ScenarioReader.read(sources(), Library.namedOrFile(exercise)), 2);
    }

    /** The same for what only a press on a sled has; throws {@link BadInput} for any other exercise too. */
    PressScenario read() {
        return press(any());
    }

    static PressScenario read(List<Source> sources) {
        return press(any(sources));
    }

    private static PressScenario press(Scenario scenario) {
        if (scenario instanceof PressScenario press) {
            return press;
        }
        throw new BadInput(List.of(
                "this searches the plates and rubber of a rail press, and these files describe another exercise; \"profile\","
                        + " \"report\", \"card\" and \"compare\" are for every exercise, and \"profile\" says which weight brings"
                        + " its hardest place to a share of what there is"));
    }

    private static Scenario any(List<Source> sources) {
        return scenario(ScenarioReader.read(sources), sources.size());
    }

    private static Scenario scenario(ScenarioReader.Result result, int files) {
        return result.scenario().orElseThrow(() -> new BadInput(lines(result, files)));
    }

    /** Every problem; and where a whole part is missing from a single file, that the others can be named with it. */
    private static List<String> lines(ScenarioReader.Result result, int files) {
        List<String> lines = new ArrayList<>(result.problems().lines());
        if (isMissing(result, "person")) {
            lines.add("These files do not say who does it. Name the person's file too, for instance:"
                    + " counterpull profile PERSON.yaml EXERCISE.yaml");
            return lines;
        }
        if (isMissing(result, "exercise")) {
            lines.add(
                    "These files do not say what is done. Name an exercise, with --exercise NAME (\"counterpull exercises\""
                            + " lists the names), or its file, or the room of a rail press: person.yaml room.yaml");
            return lines;
        }
        boolean part = result.problems().all().stream()
                .anyMatch(problem -> problem.code() == Code.MISSING_KEY
                        && PARTS.contains(problem.place().key().toString()));
        if (files == 1 && part) {
            lines.add("A person and a room may stand in two files: name both, for instance \"person.yaml room.yaml\".");
        }
        return lines;
    }

    private static boolean isMissing(ScenarioReader.Result result, String key) {
        return result.problems().all().stream()
                .anyMatch(problem -> problem.code() == Code.MISSING_KEY
                        && problem.place().key().toString().equals(key));
    }

    private List<Source> sources() {
        List<String> unfit = unfit();
        if (!unfit.isEmpty()) {
            throw new BadInput(unfit);
        }
        List<Source> sources = new ArrayList<>();
        for (Path file : files) {
            sources.add(file.toString().equals("-") ? standardInput() : source(file));
        }
        return sources;
    }

    /** The file; where there is none and the name is that of an exercise of the library, that exercise. */
    private static Source source(Path file) {
        return Files.exists(file)
                ? Source.of(file)
                : Library.named(file.toString()).orElseGet(() -> Source.of(file));
    }

    private List<String> unfit() {
        List<String> unfit = new ArrayList<>();
        Set<Path> seen = new HashSet<>();
        for (Path file : files) {
            if (file.toString().isEmpty()) {
                unfit.add("\"\" is no file name");
            } else if (!seen.add(file.normalize())) {
                unfit.add(file + " is named twice; name each file once");
            } else if (Files.isDirectory(file)) {
                unfit.add(file + " is a folder; name the scenario's files in it");
            }
        }
        return unfit;
    }

    private static Source standardInput() {
        try {
            // one byte more than is ever accepted, so that a flood is refused and not swallowed
            return Source.of("standard input", System.in.readNBytes(MOST_BYTES + 1));
        } catch (IOException e) {
            throw new BadInput(List.of("standard input cannot be read: " + e.getMessage()));
        }
    }

    String name() {
        if (exercise != null) {
            return fileName(Path.of(exercise));
        }
        return fileName(files.get(0));
    }

    private static String fileName(Path file) {
        Path first = file.getFileName();
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
