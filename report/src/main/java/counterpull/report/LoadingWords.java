package counterpull.report;

import counterpull.engine.choice.SafeOrder.Kind;
import counterpull.engine.choice.SafeOrder.Step;
import counterpull.report.table.Measure;
import counterpull.report.table.UnitSet;
import counterpull.scenario.units.Units;
import java.util.ArrayList;
import java.util.List;

/** The safe order of a setup in sentences for the floor. */
public final class LoadingWords {
    private final Setup setup;
    private final Units units;

    /** For one setup in a reader's units. */
    public LoadingWords(Setup setup, Units units) {
        this.setup = setup;
        this.units = units;
    }

    /** Loading, step by step. */
    public List<String> loading() {
        List<String> words = new ArrayList<>();
        List<Step> steps = setup.order().steps();
        for (Step step : steps) {
            switch (step.kind()) {
                case RACK -> words.add("Rack the carriage at mark " + mark(step.mark()) + ".");
                case SET_STOP -> {
                    words.add(stopWords(step.mark()));
                    plates(steps, words);
                }
                case HANG_LINE ->
                    words.add("Rubber last: " + tag(step) + ", racked at mark " + mark(step.mark()) + ".");
                case UNRACK -> words.add("Feet on, legs take the load, then unrack.");
                default -> {
                    // plates are told in one sentence
                }
            }
        }
        return words;
    }

    private String stopWords(double mark) {
        return setup.order().stopped()
                ? "Set the bottom stop at mark " + mark(mark) + "."
                : "This machine has no bottom stop: somebody stands by.";
    }

    private void plates(List<Step> steps, List<String> words) {
        List<String> turns = new ArrayList<>();
        for (Step step : steps) {
            if (step.kind() == Kind.PLATE_LEFT || step.kind() == Kind.PLATE_MIDDLE) {
                turns.add(step.label());
            }
        }
        if (!turns.isEmpty()) {
            boolean middle = steps.stream().anyMatch(step -> step.kind() == Kind.PLATE_MIDDLE);
            String how = middle ? "Plates, one at a time: " : "Plates, left and right in turn: ";
            words.add(how + String.join(", ", turns) + ".");
        }
    }

    private String tag(Step step) {
        int end = step.label().indexOf(", ");
        return end < 0 ? step.label() : step.label().substring(0, end);
    }

    /** Unloading, step by step. */
    public List<String> unloading() {
        List<String> words = new ArrayList<>();
        words.add("Rack the carriage, feet off.");
        if (!setup.profile().loading().lines().isEmpty()) {
            words.add("Rubber off first, where it hangs loosest.");
        }
        if (!setup.plates().stacks().isEmpty()) {
            words.add("Plates off in turn, lightest first.");
        }
        return words;
    }

    /** What makes this setup unsafe to load as it is; empty where nothing does. */
    public List<String> alarms() {
        List<String> words = new ArrayList<>();
        for (Step step : setup.order().steps()) {
            if (!step.check().staysDown() && words.isEmpty()) {
                words.add("Do not load this: the carriage does not stay down by itself at mark "
                        + mark(step.check().mark()) + " (weight "
                        + Measure.FORCE.words(step.check().weight(), UnitSet.of(units))
                        + ", rubber pulls up "
                        + Measure.FORCE.words(step.check().pull(), UnitSet.of(units)) + ").");
            }
        }
        if (setup.order().stopped() && !setup.order().catchesBeforePain()) {
            words.add("The stop catches the load deeper than this person's pain-free bend.");
        }
        if (!setup.order().stopped()) {
            words.add("No bottom stop: nothing catches the load if it is let go.");
        }
        return words;
    }

    private String mark(double mark) {
        return Exact.mark(mark, units);
    }
}
