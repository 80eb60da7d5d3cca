package counterpull.app.cli;

import counterpull.engine.motion.Phase;
import counterpull.engine.profile.ExerciseProfile;
import counterpull.report.result.ExerciseTables;
import counterpull.report.result.ProfileTables;
import counterpull.report.result.TextChoice;
import counterpull.report.table.TextTable;
import counterpull.report.table.Wrap;
import counterpull.report.words.ChallengeWords;
import counterpull.scenario.ExerciseScenario;

/** What a terminal shows of an exercise: one table of the lift, what it means, then the detailed tables if they are asked for. */
record ExerciseText(ExerciseScenario scenario, ExerciseProfile profile, TextChoice shown) {
    String text(boolean detailed) {
        ChallengeWords words = new ChallengeWords(profile, shown.units());
        String name = scenario.about().map(about -> about.name() + ", ").orElse("");
        String heading = scenario.client().name() + ": " + name + words.range() + ", "
                + profile.task().tempo().words();
        StringBuilder text = new StringBuilder(Wrap.block(heading, shown.width(), ""));
        int[] rows = ProfileTables.evenly(profile.positions(), shown.positions());
        for (int limb = 0; limb < profile.limbs().size(); limb++) {
            text.append(TextTable.of(
                    ExerciseTables.summary(profile, limb, Phase.LIFTING).only(rows), shown.units(), shown.width()));
        }
        Output.say(text, words.hardest());
        String weights = ChallengeWords.weights(profile.task(), shown.units());
        if (!weights.isEmpty()) {
            Output.say(text, weights);
        }
        words.joints().forEach(sentence -> Output.say(text, sentence));
        words.unknown().forEach(sentence -> Output.say(text, sentence));
        if (detailed) {
            text.append('\n').append(ExerciseTables.text(profile, shown));
        } else {
            Output.say(
                    text,
                    "More: --phase lowering (detailed tables), --parts, --all, --format csv; \"counterpull report\" for pictures;"
                            + " \"counterpull why\" for the reason of one number.");
        }
        return text.toString();
    }
}
