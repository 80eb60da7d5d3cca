package counterpull.report.card;

import counterpull.engine.motion.Bounce;
import counterpull.engine.motion.Tempo;
import counterpull.engine.profile.PressTask;
import counterpull.engine.profile.Push;
import counterpull.report.Exact;
import counterpull.report.Findings;
import counterpull.report.PlateStack;
import counterpull.report.PlateStack.Horn;
import counterpull.report.Plates;
import counterpull.report.SessionPlan;
import counterpull.report.Setup;
import counterpull.report.SetupSentences;
import counterpull.report.WarmUp;
import counterpull.report.table.Measure;
import counterpull.scenario.units.Dimension;
import counterpull.scenario.units.Units;
import java.util.ArrayList;
import java.util.List;

/** What a card says, word by word. Numbers that somebody sets are written exactly as they were put in. */
final class CardWords {
    private final Findings findings;
    private final Setup setup;
    private final Units units;
    private final PressTask task;

    CardWords(Findings findings, Setup setup) {
        this.findings = findings;
        this.setup = setup;
        units = findings.units();
        task = setup.profile().task();
    }

    /** A number of the tempo and what it is. */
    record Beat(String number, String what) {}

    /** Plates on one horn, and which. */
    record Part(String plates, String where) {}

    /** A step of the warm-up. */
    record Step(String repetitions, List<Part> parts) {}

    String seat() {
        return task.stance().seat().name();
    }

    String row() {
        return task.stance().row().name();
    }

    boolean hasStop() {
        return setup.order().stopped();
    }

    Exact.Said bottom() {
        return new SetupSentences(setup, units).bottom();
    }

    String top() {
        return Measure.LENGTH.words(setup.profile().mark(setup.profile().positions() - 1), findings.unitSet());
    }

    String stance() {
        String press = Exact.words(task.stance().pressurePoint(), Dimension.RATIO, units);
        double knee = setup.profile().driving(setup.profile().positions() - 1);
        String start = hasStop()
                ? ""
                : " Stroke starts at " + Measure.ANGLE.words(setup.profile().driving(0), findings.unitSet())
                        + " of knee bend.";
        return "Press through " + press + " of the foot from the heel, " + push() + "." + start + " Stroke ends at "
                + Measure.ANGLE.words(knee, findings.unitSet()) + " of knee bend, not locked. Turn: "
                + task.tempo().words() + ".";
    }

    private String push() {
        Push push = task.pushing().push();
        if (push instanceof Push.Angled angled && angled.angle() != 0) {
            return "at " + Exact.words(angled.angle(), Dimension.ANGLE, units)
                    + " to the rail, positive toward the head";
        }
        if (push instanceof Push.LeastEffort least) {
            return push.words() + " between " + Exact.words(least.lowest(), Dimension.ANGLE, units) + " and "
                    + Exact.words(least.highest(), Dimension.ANGLE, units) + " to the rail";
        }
        return push.words();
    }

    String plateTotal() {
        return units.written(setup.plates().total(), Dimension.MASS).toString();
    }

    List<CardLine> lines() {
        return CardLine.of(setup);
    }

    Exact.Said dead(CardLine line) {
        return Exact.said(line.line().deadLength(), Dimension.LENGTH, units);
    }

    String mark(CardLine line) {
        return Exact.mark(line.mark(), units);
    }

    String looseness(CardLine line) {
        return Measure.LENGTH.words(Math.abs(line.looseness()), findings.unitSet());
    }

    String loose(CardLine line) {
        return line.looseness() >= 0 ? "Loose by" : "Stretched by";
    }

    String dose() {
        SessionPlan.Dose dose = findings.plan().dose();
        return dose.sets() + " × " + dose.repetitions();
    }

    String left() {
        return String.valueOf(findings.plan().dose().repetitionsLeft());
    }

    String rest() {
        return Exact.words(findings.plan().dose().rest(), Dimension.TIME, units);
    }

    List<Beat> beats() {
        Tempo tempo = task.tempo();
        if (tempo instanceof Bounce bounce) {
            return List.of(
                    new Beat(Exact.words(bounce.speedDown(), Dimension.SPEED, units), "Down"),
                    new Beat(Exact.words(bounce.speedUp(), Dimension.SPEED, units), "Up"),
                    new Beat(seconds(bounce.turnTime()), "Turn in"));
        }
        Tempo.Seconds seconds =
                tempo.seconds(setup.profile().ground().motion().stroke().travel());
        return List.of(
                new Beat(seconds(seconds.lowering()), "Down"),
                new Beat(seconds(seconds.lowPause()), "Wait low"),
                new Beat(seconds(seconds.lifting()), "Up"),
                new Beat(seconds(seconds.highPause()), "Wait high"));
    }

    private String seconds(double time) {
        return Exact.words(time, Dimension.TIME, units);
    }

    String warmUpTitle() {
        if (findings.plan().warmUp().isEmpty()) {
            return "Warm-up: no lighter step with these plates";
        }
        // nobody has planned the steps: they are worked out from the plates
        return paired() && !setup.plates().areOnStack()
                ? "Warm-up (plain steps), plates each side, no rubber"
                : "Warm-up (plain steps), no rubber";
    }

    /** Whether every step has all its plates in pairs, so that the title can say so. */
    private boolean paired() {
        return findings.plan().warmUp().stream()
                .flatMap(step -> step.plates().stacks().stream())
                .allMatch(stack -> stack.horn() == Horn.EACH_SIDE);
    }

    List<Step> warmUp() {
        List<Step> steps = new ArrayList<>();
        for (WarmUp step : findings.plan().warmUp()) {
            steps.add(new Step(String.valueOf(step.repetitions()), parts(step.plates())));
        }
        return steps;
    }

    private List<Part> parts(Plates plates) {
        List<Part> parts = new ArrayList<>();
        for (Horn horn : Horn.values()) {
            if (!plates.on(horn).isEmpty()) {
                parts.add(new Part(together(plates, horn), paired() ? "" : " " + horn.words() + " "));
            }
        }
        String nothing = setup.plates().areOnStack() ? "the stack's lightest alone" : "no plates";
        return parts.isEmpty() ? List.of(new Part(nothing, "")) : parts;
    }

    /** What goes on one horn; short names stay in one piece where the line breaks. */
    String plates(Horn horn) {
        return together(setup.plates(), horn);
    }

    private static String together(Plates plates, Horn horn) {
        List<String> parts = new ArrayList<>();
        for (PlateStack stack : plates.on(horn)) {
            parts.add(stack.wordsUnbroken());
        }
        return String.join(" + ", parts);
    }

    String foot() {
        return findings.heading().made() + " · Counterpull "
                + findings.heading().version() + " · " + findings.heading().scenario();
    }
}
