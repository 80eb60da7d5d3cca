package counterpull.app.cli;

import counterpull.engine.profile.Profile;
import counterpull.report.result.Group;
import counterpull.report.result.ProfileTables;
import counterpull.report.result.ResultJson;
import counterpull.report.result.SummaryTable;
import counterpull.report.result.TextChoice;
import counterpull.report.words.ProfileWords;
import counterpull.scenario.Scenario;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumSet;
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
        description = "Shows what the setup in the scenario (its \"resists\") asks of each joint of each limb, at each"
                + " point of the range, held, lifting and lowering, beside what the person has.")
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
            description = "${COMPLETION-CANDIDATES}. csv and json hold every position. Default: ${DEFAULT-VALUE}.")
    private ProfileFormat format;

    @Option(
            names = {"-p", "--positions"},
            paramLabel = "N",
            defaultValue = "9",
            description = "How many positions a table shows, evenly spread, 2 to 101. Default: ${DEFAULT-VALUE}.")
    private int positions;

    @Option(
            names = "--all",
            description = "Adds every table: angles, moment arms, force and torque with their parts, strength, kneecap"
                    + " joint, push direction, rubber; for each limb and phase.")
    private boolean all;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (positions < 2 || positions > 101) {
            throw new BadInput(java.util.List.of("--positions: " + positions + " must be from 2 to 101"));
        }
        Scenario scenario = files.read();
        Profile profile = ScenarioFiles.computed(() -> Profile.of(scenario.task()));
        output.write(spec, text(scenario, profile));
        return Exit.GOOD;
    }

    private String text(Scenario scenario, Profile profile) {
        return switch (format) {
            case TABLE ->
                summary(scenario, profile) + sentences(scenario, profile) + (all ? "\n" + tables(profile) : "");
            case CSV -> ProfileTables.csv(profile, units.set());
            case DICTIONARY -> ProfileTables.dictionary(profile, units.set());
            case JSON -> json(profile);
        };
    }

    private static String json(Profile profile) {
        try {
            return ResultJson.of(profile);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String tables(Profile profile) {
        TextChoice choice =
                TextChoice.usual(units.set()).withPositions(positions).withWidth(Output.width());
        return ProfileTables.text(profile, choice.withGroups(EnumSet.allOf(Group.class)));
    }

    private String summary(Scenario scenario, Profile profile) {
        return SummaryTable.text(profile, scenario.goal().joints(), units.set(), positions);
    }

    private String sentences(Scenario scenario, Profile profile) {
        ProfileWords words = new ProfileWords(profile, scenario.goal(), units.set());
        StringBuilder text = new StringBuilder();
        Output.say(text, words.turn());
        Output.say(text, words.push());
        words.unknown().forEach(sentence -> Output.say(text, sentence));
        words.unjudged().forEach(sentence -> Output.say(text, sentence));
        return text.toString();
    }
}
