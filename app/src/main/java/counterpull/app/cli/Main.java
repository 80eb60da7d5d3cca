package counterpull.app.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.logging.LogManager;
import picocli.AutoComplete.GenerateCompletion;
import picocli.CommandLine;

/** Where the program starts. */
public final class Main {
    private Main() {}

    /** Runs one command and ends with its exit code. */
    public static void main(String[] arguments) {
        // libraries have nothing to tell a person, and nothing about a person belongs in a log
        LogManager.getLogManager().reset();
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        int code = run(out, err, arguments);
        out.flush();
        err.flush();
        System.exit(code);
    }

    /** Runs one command, writing to the given ends; answers its exit code. */
    public static int run(PrintWriter out, PrintWriter err, String... arguments) {
        CommandLine command = new CommandLine(new Counterpull())
                .addSubcommand(new CommandLine(new GenerateCompletion()).setCommandName("completion"))
                .setUsageHelpWidth(100)
                .setOut(out)
                .setErr(err)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setExecutionExceptionHandler(Main::explain);
        return command.execute(arguments);
    }

    private static int explain(Exception fault, CommandLine command, CommandLine.ParseResult parsed) throws Exception {
        if (fault instanceof BadInput bad) {
            bad.lines().forEach(command.getErr()::println);
            return Exit.BAD_INPUT;
        }
        throw fault;
    }
}
