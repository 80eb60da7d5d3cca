package counterpull.app.cli;

import counterpull.report.table.Wrap;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;

/** Where text goes: the terminal, a pipe, or a file. */
final class Output {
    private static final int NARROWEST = 40;
    private static final int WIDEST = 140;
    private static final int USUAL = 100;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            description = "Writes there instead of to the terminal; \"-\" is the terminal.")
    private Path file;

    void write(CommandSpec spec, String text) {
        if (file == null || file.toString().equals("-")) {
            spec.commandLine().getOut().print(text);
            return;
        }
        try {
            Files.writeString(file, text);
        } catch (IOException e) {
            throw Unwritable.file(file, e);
        }
    }

    /** Characters in a line: the terminal's own where it says so, else 100. */
    static int width() {
        String columns = System.getenv("COLUMNS");
        if (columns == null || !columns.matches("\\d{1,4}")) {
            return USUAL;
        }
        return Math.max(NARROWEST, Math.min(WIDEST, Integer.parseInt(columns)));
    }

    static void say(StringBuilder text, String sentence) {
        text.append('\n').append(Wrap.block(sentence, width(), ""));
    }
}
