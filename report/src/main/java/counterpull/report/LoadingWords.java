package counterpull.report;

import counterpull.engine.choice.SafeOrder.Kind;
import counterpull.engine.choice.SafeOrder.Step;
import counterpull.report.PlateStack.Horn;
import counterpull.report.table.Measure;
import counterpull.report.table.UnitSet;
import counterpull.scenario.units.Units;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

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
                case RACK -> {
                    words.add("Rack the carriage at mark " + mark(step.mark()) + ".");
                    if (!setup.order().stopped()) {
                        words.add("This machine has no bottom stop: somebody stands by.");
                    }
                }
                case REST_ON_STOP -> words.add("Let the carriage rest on the stop.");
                case SET_STOP -> words.add("Set the bottom stop at mark " + mark(step.mark()) + ".");
                case UNRACK -> {
                    plates(words);
                    rubber(steps, words);
                    words.add(
                            rests(steps)
                                    ? "Feet on, then press from the stop."
                                    : "Feet on, legs take the load, then unrack.");
                }
                default -> {
                    // plates are told in one sentence, and so is rubber that is hung at one mark
                }
            }
        }
        return words;
    }

    private static boolean rests(List<Step> steps) {
        return steps.stream().anyMatch(step -> step.kind() == Kind.REST_ON_STOP);
    }

    /** Heaviest first on each horn, as the setup lists them. */
    private void plates(List<String> words) {
        for (Horn horn : Horn.values()) {
            List<String> turns = new ArrayList<>();
            for (PlateStack stack : setup.plates().on(horn)) {
                turns.addAll(Collections.nCopies(stack.count(), stack.unbroken()));
            }
            if (!turns.isEmpty()) {
                String where = horn == Horn.EACH_SIDE ? "left and right in turn" : horn.words();
                String what = horn == Horn.STACK ? "Choose on the stack: " : "Plates " + where + ": ";
                words.add(what + String.join(", ", turns) + ".");
            }
        }
    }

    private void rubber(List<Step> steps, List<String> words) {
        Map<String, List<String>> byMark = new LinkedHashMap<>();
        for (Step step : steps) {
            if (step.kind() == Kind.HANG_LINE) {
                byMark.computeIfAbsent(mark(step.mark()), at -> new ArrayList<>())
                        .add(tag(step));
            }
        }
        byMark.forEach((at, tags) ->
                words.add("Rubber last: " + String.join(", then ", tags) + ", with the carriage at mark " + at + "."));
    }

    private static String tag(Step step) {
        int end = step.label().indexOf(", ");
        return end < 0 ? step.label() : step.label().substring(0, end);
    }

    /** Unloading, step by step: the same backwards. */
    public List<String> unloading() {
        List<String> words = new ArrayList<>();
        List<String> marks = hangingMarks();
        if (marks.isEmpty()) {
            words.add(rests(setup.order().steps()) ? "Down onto the stop, feet off." : "Rack the carriage, feet off.");
        } else {
            words.add((rests(setup.order().steps()) ? "Down onto the stop at mark " : "Rack the carriage at mark ")
                    + marks.get(marks.size() - 1) + ", feet off.");
            words.add(marks.size() == 1 ? "Rubber off first." : "Rubber off first, last hung first, each at its mark.");
        }
        if (!setup.plates().stacks().isEmpty() && !setup.plates().areOnStack()) {
            words.add("Plates off in turn, lightest first.");
        }
        return words;
    }

    private List<String> hangingMarks() {
        return setup.order().steps().stream()
                .filter(step -> step.kind() == Kind.HANG_LINE)
                .map(step -> mark(step.mark()))
                .distinct()
                .toList();
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
        if (!setup.order().rackInReach()) {
            words.add(
                    setup.order().stopped()
                            ? "No racking position within reach of the legs: start and end on the stop."
                            : "No racking position within reach of the legs: two people rack and unrack.");
        }
        if (!setup.order().balanced()) {
            words.add(
                    "One plate alone is more than left and right may differ by: two people load both sides together.");
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
