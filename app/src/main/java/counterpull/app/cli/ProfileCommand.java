package counterpull.app.cli;

import counterpull.engine.body.Side;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.ExerciseProfile;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.Profile;
import counterpull.report.Setup;
import counterpull.report.result.ExerciseTables;
import counterpull.report.result.Group;
import counterpull.report.result.ProfileTables;
import counterpull.report.result.ResultJson;
import counterpull.report.result.TableJson;
import counterpull.report.result.TextChoice;
import counterpull.scenario.ExerciseScenario;
import counterpull.scenario.PressScenario;
import counterpull.scenario.Scenario;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What today's setup asks of each joint, beside what the person has. */
@Command(
        name = "profile",
        mixinStandardHelpOptions = true,
        header = "Shows what today's setup asks of each joint, beside what the person has.",
        description = "Shows what the setup in the scenario (its \"resists\") asks of each joint of each limb, at each"
                + " point of the range, held, lifting and lowering, beside what the person has: one small table and the sentences that matter."
                + " --side and --phase add the detailed tables of one limb or phase, --all those of every one.")
final class ProfileCommand implements Callable<Integer> {
    @Mixin
    private ScenarioFiles files;

    @Mixin
    private UnitsWanted units;

    @Mixin
    private Output output;

    @Option(
            names = {"-f", "--format"},
            paramLabel = "FORMAT",
            defaultValue = "table",
            description =
                    "table, csv, json, or dictionary (what the csv's columns are). csv and json always hold everything. Default: ${DEFAULT-VALUE}.")
    private ProfileFormat format;

    @Option(
            names = {"-p", "--positions"},
            paramLabel = "N",
            defaultValue = "9",
            description = "How many positions a table shows, evenly spread, 2 to 101. Default: ${DEFAULT-VALUE}.")
    private int positions;

    @Option(
            names = "--side",
            paramLabel = "SIDE",
            description = "Adds the detailed tables of this limb: left or right.")
    private Side side;

    @Option(
            names = "--phase",
            paramLabel = "PHASE",
            description = "Adds the detailed tables of this phase: held, lifting or lowering.")
    private Phase phase;

    @Option(names = "--all", description = "Adds every table of every limb and phase.")
    private boolean all;

    @Option(
            names = "--parts",
            description = "The detailed tables also say what each torque is made of, and the push's direction.")
    private boolean parts;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (positions < 2 || positions > 101) {
            throw new BadInput(List.of("--positions: " + positions + " must be from 2 to 101"));
        }
        Scenario scenario = files.any();
        output.write(spec, scenario instanceof PressScenario press ? text(press) : text((ExerciseScenario) scenario));
        return Exit.GOOD;
    }

    private String text(ExerciseScenario scenario) {
        ExerciseProfile profile = ScenarioFiles.computed(() -> ExerciseProfile.of(scenario.task()));
        return switch (format) {
            case TABLE -> new ExerciseText(scenario, profile, shown(profile)).text(detailed());
            case CSV -> ExerciseTables.csv(profile, units.set());
            case DICTIONARY -> ExerciseTables.dictionary(profile, units.set());
            case JSON -> TableJson.of(ExerciseTables.everything(profile));
        };
    }

    private String text(PressScenario scenario) {
        Setup today = ScenarioFiles.computed(() -> Setup.today("today", scenario));
        return text(scenario, today);
    }

    private String text(PressScenario scenario, Setup today) {
        PressProfile profile = today.profile();
        return switch (format) {
            case TABLE -> new ProfilePage(scenario, today, shown(profile)).text(detailed());
            case CSV -> ProfileTables.csv(profile, units.set());
            case DICTIONARY -> ProfileTables.dictionary(profile, units.set());
            case JSON -> json(profile);
        };
    }

    private boolean detailed() {
        return all || parts || side != null || phase != null;
    }

    private TextChoice shown(Profile profile) {
        if (side != null && profile.limbs().stream().noneMatch(limb -> limb.side() == side)) {
            throw new BadInput(List.of("--side: the " + side.words() + " limb does not take part in this scenario"));
        }
        TextChoice.Whose every = TextChoice.Whose.all();
        TextChoice choice = TextChoice.usual(units.set())
                .withPositions(positions)
                .withWidth(Output.width())
                .of(new TextChoice.Whose(
                        side == null || all ? every.sides() : Set.of(side),
                        phase == null || all ? every.phases() : Set.of(phase)));
        return parts || all ? choice.withGroups(EnumSet.allOf(Group.class)) : choice;
    }

    private static String json(PressProfile profile) {
        try {
            return ResultJson.of(profile);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
