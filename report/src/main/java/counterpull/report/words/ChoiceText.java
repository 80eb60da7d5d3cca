package counterpull.report.words;

import counterpull.engine.choice.Candidate;
import counterpull.engine.choice.Choice;
import counterpull.engine.choice.Ranking;
import counterpull.engine.choice.SplitSetup;
import counterpull.report.table.UnitSet;
import counterpull.report.table.Wrap;
import java.util.ArrayList;
import java.util.List;

/** A choice as plain text: the answer first, then every strategy with its best few, then what stopped the rest. */
public final class ChoiceText {
    private final Choice choice;
    private final ChoiceWords words;
    private final UnitSet units;
    private final int width;
    private final StringBuilder out = new StringBuilder();

    private ChoiceText(Choice choice, UnitSet units, int width) {
        this.choice = choice;
        this.width = width;
        this.units = units;
        words = new ChoiceWords(choice, units);
    }

    /**
     * The text.
     *
     * @param choice what a search found
     * @param units the reader's units
     * @param width characters in a line
     * @param most setups shown for each strategy, 1 or more
     */
    public static String of(Choice choice, UnitSet units, int width, int most) {
        ChoiceText text = new ChoiceText(choice, units, width);
        choice.best().ifPresentOrElse(text::answer, text::nothing);
        if (choice.feasible()) {
            choice.rankings().forEach(ranking -> text.strategy(ranking, most));
        }
        text.splits(most);
        text.rest();
        return text.out.toString();
    }

    private void answer(Candidate best) {
        say("", "CHOSEN");
        say("  ", words.line(best) + ".");
        say("  ", words.why(best));
        words.heavier(best).ifPresent(sentence -> say("  ", sentence));
        words.nearerSplit(best).ifPresent(sentence -> say("  ", sentence));
        ProfileWords profile =
                new ProfileWords(best.profile(), choice.question().goal(), units);
        say("  ", profile.push());
        profile.unknown().forEach(sentence -> say("  ", sentence));
        profile.unjudged().forEach(sentence -> say("  ", sentence));
    }

    private void nothing() {
        boolean splits = !choice.splits().isEmpty();
        say(
                "",
                splits
                        ? "NO SINGLE SETUP; A SPLIT RANGE"
                        : choice.extent().complete() ? "NOTHING FEASIBLE" : "NOTHING YET");
        words.nothing().forEach(sentence -> say("  ", sentence));
    }

    private void strategy(Ranking ranking, int most) {
        List<Candidate> best = ranking.best(most);
        out.append('\n');
        say("", words.heading(ranking));
        if (best.isEmpty()) {
            words.none(ranking.strategy()).ifPresent(why -> say("  ", why));
            return;
        }
        say("  1. ", words.line(best.get(0)) + ".");
        boolean chosen = choice.best().filter(first -> first == best.get(0)).isPresent();
        say("     ", chosen ? "This is the chosen one, see above." : words.why(best.get(0)));
        for (int k = 1; k < best.size(); k++) {
            say("  " + (k + 1) + ". ", words.line(best.get(k)) + ": " + words.behind(best.get(0), best.get(k)) + ".");
        }
        if (!words.ties(ranking).isEmpty()) {
            say("  ", words.ties(ranking));
        }
    }

    private void splits(int most) {
        List<SplitSetup> shown = new ArrayList<>();
        for (SplitSetup pair : choice.splits()) {
            if (shown.size() < most && shown.stream().allMatch(pair::differsFrom)) {
                shown.add(pair);
            }
        }
        if (!shown.isEmpty()) {
            out.append('\n');
            say("", words.splitHeading());
            for (int k = 0; k < Math.min(2, shown.size()); k++) {
                say("  " + (k + 1) + ". ", words.split(shown.get(k)));
            }
        }
    }

    private void rest() {
        out.append('\n');
        boolean any = choice.feasible() || !choice.splits().isEmpty();
        say("", any ? words.extent() : "What stopped them (one setup may go past several limits):");
        words.stopped().forEach(sentence -> say("  ", sentence));
        words.leftOut().forEach(sentence -> say("  ", sentence));
    }

    private void say(String indent, String sentence) {
        String block = Wrap.block(sentence, width, " ".repeat(indent.length()));
        out.append(indent).append(block.substring(Math.min(indent.length(), block.length())));
    }
}
