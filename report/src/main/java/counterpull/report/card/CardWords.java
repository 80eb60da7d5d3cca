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

    /** A step of the warm-up. */
    record Step(String repetitions, String plates) {}

    String seat() {
        return task.stance().seat().name();
    }

    String row() {
        return task.stance().row().name();
    }

    boolean hasStop() {
        return setup.order().stopped();
    }

    String bottom() {
        return Exact.mark(setup.profile().mark(0), units);
    }

    String top() {
        return Measure.LENGTH.words(setup.profile().mark(setup.profile().positions() - 1), findings.unitSet());
    }

    String stance() {
        String press = Exact.words(task.stance().pressurePoint(), Dimension.RATIO, units);
        double knee = setup.profile().drivingAngle(setup.profile().positions() - 1);
        return "Press through " + press + " of the foot from the heel, " + push() + ". Stroke ends at "
                + Measure.ANGLE.words(knee, findings.unitSet()) + " of knee bend, not locked.";
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
        return "all plates: " + units.written(setup.plates().total(), Dimension.MASS);
    }

    List<CardLine> lines() {
        return CardLine.of(setup);
    }

    String dead(CardLine line) {
        return Exact.words(line.line().deadLength(), Dimension.LENGTH, units);
    }

    String mark(CardLine line) {
        return Exact.mark(line.mark(), units);
    }

    String looseness(CardLine line) {
        return Measure.LENGTH.words(Math.abs(line.looseness()), findings.unitSet());
    }

    String loose(CardLine line) {
        return line.looseness() >= 0 ? "Hangs loose by" : "Stretched by";
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
                    new Beat(Exact.words(bounce.speedDown(), Dimension.SPEED, units), "down,"),
                    new Beat(Exact.words(bounce.speedUp(), Dimension.SPEED, units), "up, turn in"),
                    new Beat(seconds(bounce.turnTime()), ""));
        }
        Tempo.Seconds seconds =
                tempo.seconds(setup.profile().ground().motion().stroke().travel());
        return List.of(
                new Beat(seconds(seconds.lowering()), "down"),
                new Beat(seconds(seconds.lowPause()), "wait"),
                new Beat(seconds(seconds.lifting()), "up"),
                new Beat(seconds(seconds.highPause()), "wait;"));
    }

    /** How the stroke turns. */
    String turn() {
        return task.tempo().words();
    }

    private String seconds(double time) {
        return Exact.words(time, Dimension.TIME, units);
    }

    String warmUpTitle() {
        boolean none = findings.plan().warmUp().isEmpty();
        String title = none ? "Warm-up: no lighter step with these plates" : "Warm-up, plates each side, no rubber";
        boolean stated = findings.plan().origin() == SessionPlan.Origin.STATED;
        return title
                + (stated
                        ? ""
                        : " (sets, reps, rest: " + findings.plan().origin().words() + ")");
    }

    List<Step> warmUp() {
        List<Step> steps = new ArrayList<>();
        for (WarmUp step : findings.plan().warmUp()) {
            steps.add(new Step(String.valueOf(step.repetitions()), plates(step.plates())));
        }
        return steps;
    }

    /** Plates of a step without the horn where that is the usual one. */
    private static String plates(Plates plates) {
        List<PlateStack> pairs = plates.on(Horn.EACH_SIDE);
        if (plates.stacks().isEmpty()) {
            return "none";
        }
        return pairs.size() == plates.stacks().size() ? plates.words(Horn.EACH_SIDE) : plates.words();
    }

    String foot() {
        return findings.heading().made() + " · Counterpull "
                + findings.heading().version() + " · " + findings.heading().scenario();
    }
}
