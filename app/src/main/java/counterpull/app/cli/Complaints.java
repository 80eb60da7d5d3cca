package counterpull.app.cli;

import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What is said when a command cannot do what was asked. */
final class Complaints {
    private Complaints() {}

    /** An option or a file that is missing or not read: what is wrong, and where help is. */
    static int parameter(ParameterException fault, String[] arguments) {
        CommandLine command = fault.getCommandLine();
        PrintWriter err = command.getErr();
        err.println(fault.getMessage());
        UnmatchedArgumentException.printSuggestions(fault, err);
        err.println("What there is: " + command.getCommandSpec().qualifiedName() + " --help");
        return Exit.BAD_INPUT;
    }

    /** A command that ended with a fault. */
    static int execution(Exception fault, CommandLine command, CommandLine.ParseResult parsed) {
        if (fault instanceof BadInput bad) {
            bad.lines().forEach(command.getErr()::println);
            return Exit.BAD_INPUT;
        }
        return own(fault, command.getErr());
    }

    /** A fault of the program itself, in one line: nothing of the person's data is in it. */
    static int own(Throwable fault, PrintWriter err) {
        StackTraceElement[] trace = fault.getStackTrace();
        err.println(
                "This is a fault in Counterpull, not in what you gave it; nothing was changed. Report it with the command"
                        + " that you typed and this: " + fault.getClass().getSimpleName()
                        + (trace.length == 0 ? "" : " in " + trace[0]));
        return Exit.OWN_FAULT;
    }

    /** Too much to hold at once. */
    static int tooLarge(PrintWriter err) {
        err.println(
                "This is more than fits into memory: search fewer strategies (--strategy), or leave kinds of plates,"
                        + " rubber, anchors or dead lengths out of the kit that will not be used.");
        return Exit.BAD_INPUT;
    }
}
