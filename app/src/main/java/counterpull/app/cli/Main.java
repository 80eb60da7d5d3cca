package counterpull.app.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.logging.LogManager;
import picocli.AutoComplete.GenerateCompletion;
import picocli.CommandLine;

/** Where the program starts. */
public final class Main {
    private static final int NARROWEST_HELP = 55;

    private Main() {}

    /** Runs one command and ends with its exit code. */
    public static void main(String[] arguments) {
        // libraries have nothing to tell a person, and nothing about a person belongs in a log
        LogManager.getLogManager().reset();
        StandardOutput standard = new StandardOutput();
        PrintWriter out = new PrintWriter(standard, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        int code = run(out, err, arguments);
        out.flush();
        if (!standard.trouble().isEmpty()) {
            err.println("Not everything could be written: " + standard.trouble());
            code = Exit.BAD_INPUT;
        }
        end(code);
    }

    /** Ends from another thread, so that an interrupt that waits for this one sees it gone and does not wait in vain. */
    private static void end(int code) {
        new Thread(() -> System.exit(code)).start();
    }

    /** Runs one command, writing to the given ends; answers its exit code. */
    public static int run(PrintWriter out, PrintWriter err, String... arguments) {
        CommandLine command = new CommandLine(new Counterpull())
                .addSubcommand(new CommandLine(new GenerateCompletion()).setCommandName("completion"))
                .setOut(out)
                .setErr(err)
                .setExpandAtFiles(false)
                .setUsageHelpWidth(Math.max(NARROWEST_HELP, Output.width()))
                .setParameterExceptionHandler(Complaints::parameter)
                .setExecutionExceptionHandler(Complaints::execution);
        try {
            return ByWord.register(command).execute(arguments);
        } catch (OutOfMemoryError e) {
            return Complaints.tooLarge(err);
        } catch (StackOverflowError e) {
            return Complaints.own(e, err);
        }
    }
}
