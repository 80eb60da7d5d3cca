package counterpull.app.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The whole program. */
@Command(
        name = "counterpull",
        mixinStandardHelpOptions = true,
        versionProvider = Program.class,
        subcommands = {
            DemoCommand.class,
            ReadCommand.class,
            ProfileCommand.class,
            SureCommand.class,
            ChooseCommand.class,
            CardCommand.class,
            WhyCommand.class,
            ExercisesCommand.class,
            ReportCommand.class,
            CompareCommand.class,
            BenchCommand.class,
            FormatCommand.class,
            HelpCommand.class
        },
        description =
                "Fits a machine's challenge to what one person has at each point of their own range: computes what"
                        + " each joint is asked, searches the kit for setups worth choosing, and writes the floor card.",
        footerHeading = "%nStart here:%n",
        footer = {
            "  counterpull demo                               the whole job on invented people",
            "  counterpull format > mine.yaml                 a commented scenario to change",
            "  counterpull read mine.yaml                     every problem in it, at once",
            "  counterpull choose mine.yaml --into card-for-today",
            "  counterpull exercises                          every other exercise, and how one is computed",
            "",
            "Exit codes: 0 good, 2 bad input, 3 nothing in the kit keeps every limit, 130 stopped with Ctrl-C, 69 and 70 the"
                    + " program itself cannot run.",
            "It computes; it does not diagnose or treat. Limits of joints, pain rules and return to load belong to the"
                    + " licensed professional and to local rules; the makers' limits of machine, tubing and anchors stand"
                    + " above any number here."
        })
final class Counterpull implements Runnable {
    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        CommandLine line = spec.commandLine();
        line.usage(line.getOut());
    }
}
