package counterpull.app.cli;

import counterpull.bench.repetitions.RepetitionBench;
import counterpull.bench.repetitions.SetEnd;
import counterpull.bench.repetitions.ShareOfMaximum;
import counterpull.engine.body.Side;
import counterpull.engine.profile.ExerciseProfile;
import counterpull.engine.profile.Profile;
import counterpull.report.Setup;
import counterpull.report.bench.BenchSection;
import counterpull.report.bench.BenchText;
import counterpull.report.bench.RepetitionSection;
import counterpull.scenario.ExerciseScenario;
import counterpull.scenario.PressScenario;
import counterpull.scenario.Scenario;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What a set of repetitions at today's setup says about the person's strength. */
@Command(
        name = "repetitions",
        mixinStandardHelpOptions = true,
        header = "Says what a set of repetitions at today's setup tells about strength.",
        description =
                "So many repetitions at the setup in the scenario (its \"resists\"), with so many left, say what share of the most it"
                        + " asks, and so how strong the joint is that gave out; the others get a floor. Prints the lines for the"
                        + " scenario's \"tests\".")
final class BenchRepetitionsCommand implements Callable<Integer> {
    @Mixin
    private ScenarioFiles files;

    @Mixin
    private UnitsWanted units;

    @Mixin
    private Output output;

    @Option(names = "--done", required = true, paramLabel = "N", description = "Repetitions done, 1 to 20.")
    private int done;

    @ArgGroup(multiplicity = "1")
    private End end;

    @Option(
            names = "--side",
            paramLabel = "SIDE",
            description = "The side that gave out, where that was seen: left or right.")
    private Side side;

    @Spec
    private CommandSpec spec;

    /** How the set ended: exactly one of these. */
    static final class End {
        @Option(names = "--left", paramLabel = "K", description = "Repetitions left, as the person says, 0 to 6.")
        private Integer left;

        @Option(names = "--failed", description = "The next repetition failed.")
        private boolean failed;

        @Option(names = "--pain", description = "Pain ended the set: it then only says what they can do at least.")
        private boolean pain;

        SetEnd end() {
            if (left != null) {
                return new SetEnd.Called(left);
            }
            return failed ? new SetEnd.Failed() : new SetEnd.Pain();
        }
    }

    @Override
    public Integer call() {
        Profile profile = profile(files.any());
        if (side != null && profile.limbs().stream().noneMatch(limb -> limb.side() == side)) {
            throw new BadInput(List.of("--side: the " + side.words() + " limb does not take part in this scenario"));
        }
        RepetitionBench bench =
                new RepetitionBench(profile, ShareOfMaximum.of(profile), done, end.end(), Optional.ofNullable(side));
        BenchSection section = RepetitionSection.of(bench, units.units());
        output.write(spec, BenchText.of(List.of(section), units.set(), Output.width()));
        return section.headline().isEmpty() ? Exit.BAD_INPUT : Exit.GOOD;
    }

    private static Profile profile(Scenario scenario) {
        if (scenario instanceof PressScenario press) {
            return ScenarioFiles.computed(() -> Setup.today("today", press)).profile();
        }
        ExerciseScenario exercise = (ExerciseScenario) scenario;
        return ScenarioFiles.computed(() -> ExerciseProfile.of(exercise.task()));
    }
}
