package counterpull.app.cli;

import counterpull.readings.table.Conversion;
import counterpull.readings.table.Mapping;
import counterpull.readings.table.TraceTable;
import counterpull.report.Heading;
import counterpull.report.bench.BenchPage;
import counterpull.report.bench.BenchSection;
import counterpull.report.bench.BenchText;
import counterpull.report.bench.TraceSection;
import counterpull.report.bench.TraceSection.Gravity;
import counterpull.report.bench.TraceSection.Take;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;

/** What a trace of force over time says, in the terminal and as a page. */
final class TraceOutput {
    @Option(
            names = "--take",
            paramLabel = "FORCE",
            defaultValue = "plateau",
            description =
                    "Of a trace: the force for a strength test, plateau (best second) or peak. Default: ${DEFAULT-VALUE}.")
    private Take take;

    @Option(
            names = "--into",
            paramLabel = "FOLDER",
            description = "Of a trace: writes trace.html, with charts, and for-a-test.yaml there.")
    private Path folder;

    @Mixin
    private UnitsWanted units;

    /**
     * Where it goes.
     *
     * @param spec the command
     * @param output its text
     */
    record To(CommandSpec spec, Output output) {}

    int show(String name, Mapping mapping, Conversion conversion, To to) {
        boolean off = mapping.whole().getOrDefault(TraceTable.GRAVITY, "").equals(TraceTable.TAKEN_OFF);
        TraceSection.Read read = new TraceSection.Read(
                name, TraceTable.trace(conversion.taken()), take, off ? Gravity.TAKEN_OFF : Gravity.AS_SHOWN);
        BenchSection section = TraceSection.of(read, units.units());
        String lines = TraceSection.forTest(read, units.units());
        to.output().write(to.spec(), BenchText.of(List.of(section), units.set(), Output.width()) + pasted(lines));
        if (folder != null) {
            files(name, section, lines, to.spec());
        }
        return section.headline().isEmpty() ? Exit.BAD_INPUT : Exit.GOOD;
    }

    private static String pasted(String lines) {
        String block = lines.lines().map(line -> "    " + line + "\n").collect(Collectors.joining());
        return lines.isEmpty() ? "" : "\nFor a strength test in a file of readings:\n\n" + block;
    }

    private void files(String name, BenchSection section, String lines, CommandSpec spec) {
        Heading heading = new Heading(name, "", "", LocalDate.now(), Program.version());
        try {
            Files.createDirectories(folder);
            text("trace.html", BenchPage.html(List.of(section), heading, units.units()), spec);
            text("for-a-test.yaml", lines, spec);
        } catch (IOException e) {
            throw Unwritable.folder(folder, e);
        }
    }

    private void text(String name, String text, CommandSpec spec) throws IOException {
        Files.writeString(folder.resolve(name), text);
        spec.commandLine().getOut().println("wrote " + folder.resolve(name));
    }
}
