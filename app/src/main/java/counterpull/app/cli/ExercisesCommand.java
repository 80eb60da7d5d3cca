package counterpull.app.cli;

import counterpull.scenario.content.About;
import counterpull.scenario.read.ScenarioReader;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The exercises that come with the program. */
@Command(
        name = "exercises",
        mixinStandardHelpOptions = true,
        description =
                "Lists the exercises that come with the program; with a name, prints that exercise's file, to be changed"
                        + " with a tape in hand.")
final class ExercisesCommand implements Callable<Integer> {
    @Parameters(arity = "0..1", paramLabel = "NAME", description = "Prints this exercise's file.")
    private String name;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        if (name != null) {
            out.print(Library.text(name));
            return Exit.GOOD;
        }
        List<String> names = Library.names();
        int widest = names.stream().mapToInt(String::length).max().orElse(0);
        for (String one : names) {
            out.println(one
                    + " ".repeat(widest - one.length() + 2)
                    + Library.named(one)
                            .flatMap(ScenarioReader::about)
                            .map(About::name)
                            .orElse(""));
        }
        out.println();
        out.println("  counterpull exercises NAME > mine.yaml               a copy to change with a tape in hand");
        out.println("  counterpull profile PERSON.yaml --exercise NAME      computes it for a person");
        out.println("  counterpull profile PERSON.yaml --exercise mine.yaml computes the copy");
        out.println(
                "demo/dunlin.yaml is an invented person with every range; docs/howto/add-an-exercise.md explains the files.");
        return Exit.GOOD;
    }
}
