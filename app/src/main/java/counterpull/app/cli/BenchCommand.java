package counterpull.app.cli;

import counterpull.readings.Readings;
import counterpull.readings.ReadingsReader;
import counterpull.readings.Subject;
import counterpull.report.Heading;
import counterpull.report.bench.BenchPage;
import counterpull.report.bench.BenchSection;
import counterpull.report.bench.BenchSections;
import counterpull.report.bench.BenchText;
import counterpull.scenario.tree.Source;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What a file of readings says about a person, a machine or a piece of rubber. */
@Command(
        name = "bench",
        mixinStandardHelpOptions = true,
        subcommands = {BenchImportCommand.class, BenchRepetitionsCommand.class, BenchExportCommand.class},
        header = "Says what readings tell about rubber, a sled, a machine or a person, and how sure that is.",
        description =
                "Reads a file of readings (rubber, sleds, machines, people), says what they tell and how sure that is,"
                        + " refuses what cannot be, and gives the lines for a scenario. --into writes a page with charts too.")
final class BenchCommand implements Callable<Integer> {
    @Parameters(
            arity = "0..1",
            paramLabel = "FILE",
            description = "The readings: YAML or JSON that begins with \"format: " + ReadingsReader.FORMAT + "\".")
    private Path file;

    @Option(
            names = "--into",
            paramLabel = "FOLDER",
            description = "Writes bench.html (with charts) and for-a-scenario.yaml there.")
    private Path folder;

    @Mixin
    private UnitsWanted units;

    @Mixin
    private Output output;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (file == null) {
            throw new ParameterException(spec.commandLine(), "Missing required parameter: 'FILE'");
        }
        Readings readings = read(file);
        List<BenchSection> sections = BenchSections.of(readings, units.units());
        output.write(spec, BenchText.of(sections, units.set(), Output.width()));
        if (folder != null) {
            write(readings, sections);
        }
        return sections.stream().allMatch(section -> section.headline().isEmpty()) ? Exit.BAD_INPUT : Exit.GOOD;
    }

    static Readings read(Path file) {
        ReadingsReader.Result result = ReadingsReader.read(Source.of(file), LocalDate.now());
        return result.readings()
                .orElseThrow(() -> new BadInput(result.problems().lines()));
    }

    private void write(Readings readings, List<BenchSection> sections) {
        Heading heading = new Heading(String.valueOf(file.getFileName()), "", "", LocalDate.now(), Program.version());
        try {
            Files.createDirectories(folder);
            write("bench.html", BenchPage.html(sections, heading, units.units()));
            write(
                    "for-a-scenario.yaml",
                    readings.subjects().stream().map(Subject::forScenario).collect(Collectors.joining("\n")));
        } catch (IOException e) {
            throw Unwritable.folder(folder, e);
        }
    }

    private void write(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
        spec.commandLine().getOut().println("wrote " + folder.resolve(name));
    }
}
