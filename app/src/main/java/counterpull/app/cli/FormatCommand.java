package counterpull.app.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Prints the file format: its commented example, or its schema. */
@Command(
        name = "format",
        mixinStandardHelpOptions = true,
        description = "Prints a complete, commented scenario to start from: it is the format's documentation.")
final class FormatCommand implements Callable<Integer> {
    @Option(names = "--schema", description = "The format's JSON Schema instead.")
    private boolean schema;

    @Option(names = "--exercise", description = "A scenario of any exercise but the rail press instead.")
    private boolean exercise;

    @Option(names = "--readings", description = "A file of readings for \"counterpull bench\" instead.")
    private boolean readings;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        try (InputStream in = FormatCommand.class.getResourceAsStream("/counterpull/" + file())) {
            spec.commandLine().getOut().print(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Exit.GOOD;
    }

    private String file() {
        if (readings) {
            return "readings/example-readings.yaml";
        }
        String example = exercise ? "example-exercise.yaml" : "example.yaml";
        return "scenario/" + (schema ? "scenario.schema.json" : example);
    }
}
