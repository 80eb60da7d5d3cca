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
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
        Map<List<String>, Set<String>> leftOut = new HashMap<>();
        try {
            Files.createDirectories(folder);
            for (ReadingsTable table : TableKinds.ofReadings()) {
                ReadingsRows rows = ReadingsRows.of(tree, table);
                write(table, rows);
                // what one table leaves out may stand in another one of the same subjects
                leftOut.computeIfAbsent(table.key(), top -> new LinkedHashSet<>(rows.leftOut()))
                        .retainAll(rows.leftOut());
            }
        } catch (IOException e) {
            throw Unwritable.folder(folder, e);
        }
        leftOut.values().forEach(keys -> keys.forEach(this::sayLeftOut));
        return Exit.GOOD;
    }

    private void sayLeftOut(String key) {
        spec.commandLine().getErr().println("in no table: " + key);
    }

    private void write(ReadingsTable table, ReadingsRows rows) throws IOException {
        if (!rows.rows().isEmpty()) {
            text(table.word() + ".csv", TableText.csv(table, rows.rows()));
            text(table.word() + "-columns.csv", TableText.dictionary(table, rows.rows()));
        }
    }

    private void text(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
        spec.commandLine().getOut().println("wrote " + folder.resolve(name));
    }
}
