package counterpull.app.cli;

import counterpull.readings.ReadingsReader;
import counterpull.readings.table.Conversion;
import counterpull.readings.table.Grid;
import counterpull.readings.table.Mapping;
import counterpull.readings.table.Mapping.Standing;
import counterpull.readings.table.MappingFit;
import counterpull.readings.table.MappingReader;
import counterpull.readings.table.MappingWriter;
import counterpull.readings.table.Proposal;
import counterpull.readings.table.ReadingsTable;
import counterpull.readings.table.ReadingsText;
import counterpull.readings.table.Sheet;
import counterpull.readings.table.SheetReader;
import counterpull.readings.table.TableKind;
import counterpull.readings.table.TableKinds;
import counterpull.readings.table.TraceTable;
import counterpull.scenario.problem.Nearest;
import counterpull.scenario.problem.Problems;
import counterpull.scenario.tree.Source;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Readings from a table: first what each column seems to be, then, once a person has confirmed that, a file of readings. */
@Command(
        name = "import",
        mixinStandardHelpOptions = true,
        header = "Reads readings, or a trace of force over time, from a CSV file.",
        description = {
            "First without --mapping: it says which column seems to be what, shows the first rows as read and as they would be"
                    + " written, and asks what the file does not tell. --write-mapping writes that down for you to look over, change"
                    + " and confirm.",
            "Then with --mapping: the readings as a file for \"counterpull bench\", in your own units, digit for digit; what cannot"
                    + " be used stands at its end as comments. A trace (--as trace) is read at once."
        })
final class BenchImportCommand implements Callable<Integer> {
    @Parameters(
            arity = "1",
            paramLabel = "FILE.csv",
            description = "Cells parted by commas, semicolons or tabs; UTF-8.")
    private Path file;

    @Option(
            names = "--as",
            paramLabel = "KIND",
            description = "What the rows are: ${COMPLETION-CANDIDATES}. A mapping says it too.",
            completionCandidates = Kinds.class)
    private String as;

    @Option(names = "--mapping", paramLabel = "FILE", description = "Which column is what, confirmed by you.")
    private Path mapping;

    @Option(names = "--write-mapping", paramLabel = "FILE", description = "Writes there what each column seems to be.")
    private Path writeMapping;

    @Mixin
    private TraceOutput trace;

    @Mixin
    private Output output;

    @Spec
    private CommandSpec spec;

    /** The kinds of tables, for help and completion. */
    static final class Kinds implements Iterable<String> {
        @Override
        public java.util.Iterator<String> iterator() {
            return TableKinds.words().iterator();
        }
    }

    @Override
    public Integer call() {
        Problems problems = new Problems();
        Sheet sheet = SheetReader.read(Source.of(file), problems).orElseThrow(() -> new BadInput(problems.lines()));
        return mapping == null ? propose(sheet) : take(sheet);
    }

    private int propose(Sheet sheet) {
        Proposal proposal = Proposal.of(sheet, kind());
        Conversion conversion = Conversion.of(proposal.grid(), proposal.mapping());
        output.write(spec, new ImportPreview(sheet, proposal.mapping(), conversion).text(proposal.questions()));
        if (writeMapping != null) {
            write(writeMapping, MappingWriter.yaml(proposal.mapping(), proposal.questions()));
        }
        return proposal.questions().isEmpty() ? Exit.GOOD : Exit.BAD_INPUT;
    }

    private TableKind kind() {
        if (as == null) {
            throw new ParameterException(
                    spec.commandLine(), "Say what the rows are, with --as: " + String.join(", ", TableKinds.words()));
        }
        return TableKinds.named(as)
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(),
                        "--as: \"" + as + "\" is no kind of table. "
                                + Nearest.hint(
                                        as, TableKinds.words(), "One of: " + String.join(", ", TableKinds.words()))));
    }

    private int take(Sheet sheet) {
        Problems problems = new Problems();
        Optional<Mapping> read = MappingReader.read(Source.of(mapping), TableKinds.ALL, problems);
        Optional<Grid> grid = read.flatMap(found -> MappingFit.grid(sheet, found, problems));
        if (grid.isEmpty()) {
            throw new BadInput(problems.lines());
        }
        Mapping confirmed = read.orElseThrow();
        Conversion conversion = Conversion.of(grid.get(), confirmed);
        List<String> open = MappingFit.open(confirmed);
        if (confirmed.standing() == Standing.PROPOSED || !open.isEmpty()) {
            return notYet(sheet, confirmed, conversion, open);
        }
        return taken(sheet, confirmed, conversion);
    }

    private int notYet(Sheet sheet, Mapping asked, Conversion conversion, List<String> open) {
        output.write(spec, new ImportPreview(sheet, asked, conversion).text(open));
        if (asked.standing() == Standing.PROPOSED) {
            spec.commandLine()
                    .getErr()
                    .println("The mapping is not confirmed: look it over and write \"confirmed: yes\" in "
                            + mapping.getFileName() + ".");
        }
        return Exit.BAD_INPUT;
    }

    private int taken(Sheet sheet, Mapping confirmed, Conversion conversion) {
        conversion.refused().forEach(refused -> spec.commandLine().getErr().println(refused.line()));
        if (conversion.taken().isEmpty()) {
            spec.commandLine().getErr().println("No row of " + sheet.file() + " can be used.");
            return Exit.BAD_INPUT;
        }
        if (confirmed.kind() instanceof TraceTable) {
            return trace.show(sheet.file(), confirmed, conversion, new TraceOutput.To(spec, output));
        }
        return readings(sheet, (ReadingsTable) confirmed.kind(), conversion);
    }

    private int readings(Sheet sheet, ReadingsTable table, Conversion conversion) {
        String yaml = ReadingsText.yaml(sheet.file(), table, conversion);
        output.write(spec, yaml);
        written(sheet, conversion);
        List<String> problems =
                ReadingsReader.read(Source.of("readings.yaml", yaml)).problems().lines();
        if (!problems.isEmpty()) {
            PrintWriter err = spec.commandLine().getErr();
            err.println("The bench cannot use this file of readings yet; lines are those of the file written:");
            problems.forEach(err::println);
            return Exit.BAD_INPUT;
        }
        return Exit.GOOD;
    }

    private void written(Sheet sheet, Conversion conversion) {
        long refused = conversion.refused().stream()
                .map(Conversion.Refused::row)
                .distinct()
                .count();
        spec.commandLine()
                .getErr()
                .println(sheet.file() + ": " + conversion.taken().size() + " rows written"
                        + (refused == 0 ? "." : ", " + refused + " refused and kept as comments at the end."));
    }

    private void write(Path path, String text) {
        try {
            Files.writeString(path, text);
            spec.commandLine().getOut().println("wrote " + path);
        } catch (IOException e) {
            throw Unwritable.named("--write-mapping", path, e);
        }
    }
}
