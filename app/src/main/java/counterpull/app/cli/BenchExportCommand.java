package counterpull.app.cli;

import counterpull.readings.table.ReadingsRows;
import counterpull.readings.table.ReadingsTable;
import counterpull.readings.table.TableKinds;
import counterpull.readings.table.TableText;
import counterpull.scenario.problem.Problems;
import counterpull.scenario.tree.Node.MapNode;
import counterpull.scenario.tree.Source;
import counterpull.scenario.tree.TreeReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A file of readings as tables. */
@Command(
        name = "export",
        mixinStandardHelpOptions = true,
        header = "Writes a file of readings as CSV, a row a reading.",
        description =
                "One table for each kind of reading that the file holds, with units in the headings, and beside it the list of its"
                        + " columns. \"counterpull bench import\" reads the tables back.")
final class BenchExportCommand implements Callable<Integer> {
    @Parameters(arity = "1", paramLabel = "FILE", description = "The readings.")
    private Path file;

    @Option(names = "--into", paramLabel = "FOLDER", required = true, description = "Where the tables go.")
    private Path folder;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        BenchCommand.read(file);
        MapNode tree = TreeReader.read(Source.of(file), new Problems()).orElseThrow();
        try {
            Files.createDirectories(folder);
            for (ReadingsTable table : TableKinds.ofReadings()) {
                write(table, ReadingsRows.of(tree, table));
            }
        } catch (IOException e) {
            throw Unwritable.folder(folder, e);
        }
        return Exit.GOOD;
    }

    private void write(ReadingsTable table, ReadingsRows rows) throws IOException {
        if (rows.rows().isEmpty()) {
            return;
        }
        text(table.word() + ".csv", TableText.csv(table, rows.rows()));
        text(table.word() + "-columns.csv", TableText.dictionary(table, rows.rows()));
        rows.leftOut().forEach(key -> spec.commandLine().getErr().println("not in " + table.word() + ".csv: " + key));
    }

    private void text(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
        spec.commandLine().getOut().println("wrote " + folder.resolve(name));
    }
}
