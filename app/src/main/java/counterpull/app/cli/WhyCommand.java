package counterpull.app.cli;

import counterpull.engine.body.Joint;
import counterpull.engine.body.Side;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.ExerciseProfile;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.Profile;
import counterpull.engine.profile.Why;
import counterpull.report.result.WhyText;
import counterpull.report.table.Measure;
import counterpull.scenario.ExerciseScenario;
import counterpull.scenario.PressScenario;
import counterpull.scenario.Scenario;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What one number is made of. */
@Command(
        name = "why",
        mixinStandardHelpOptions = true,
        description =
                "Says what one number is made of: its formula, what went into it, the terms that add up to it where"
                        + " it is a sum, and its sources.")
final class WhyCommand implements Callable<Integer> {
    private static final double GRACE = Math.toRadians(0.5);

    @Mixin
    private ScenarioFiles files;

    @Mixin
    private UnitsWanted units;

    @Mixin
    private Output output;

    /** The numbers that can be asked about. */
    enum Number {
        PUSH,
        TORQUE,
        EFFORT,
        ANGLE,
        ARM,
        KNEECAP,
        RUBBER,
        PULL
    }

    /** How a person writes a kind of number. */
    static String word(Number number) {
        return number.name().toLowerCase(java.util.Locale.ROOT);
    }

    @Option(
            names = "--of",
            paramLabel = "NUMBER",
            defaultValue = "torque",
            description =
                    "push (on the plate, along the rail), torque, effort, angle, arm (moment arm), kneecap (joint stress), rubber (pull"
                            + " along the rail), or of any other exercise pull (what --line pulls with). Default: ${DEFAULT-VALUE}.")
    private Number number;

    @Option(
            names = "--joint",
            paramLabel = "JOINT",
            description =
                    "For torque, effort, angle and arm: hip, knee, ankle, shoulder, elbow and so on. Where left out,"
                            + " the knee of a press, the joint that drives another exercise.")
    private Joint joint;

    @Option(
            names = "--line",
            paramLabel = "N",
            defaultValue = "1",
            description =
                    "For rubber and pull: which line of the setup, which pull of the exercise. Default: ${DEFAULT-VALUE}.")
    private int line;

    @Option(
            names = "--side",
            paramLabel = "SIDE",
            description = "left or right. The first limb that pushes where left out.")
    private Side side;

    @Option(
            names = "--phase",
            paramLabel = "PHASE",
            defaultValue = "held",
            description = "held, lifting or lowering. Default: ${DEFAULT-VALUE}.")
    private Phase phase;

    @Option(
            names = {"--at", "--knee"},
            paramLabel = "ANGLE",
            description = "Where in the range, as the driving angle (knee flexion of a press) or travel with its unit"
                    + " (\"75 deg\", \"12 cm\"); the nearest position is taken. The bottom where left out.")
    private String knee;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Scenario scenario = files.any();
        if (scenario instanceof ExerciseScenario exercise) {
            return say(ScenarioFiles.computed(() -> ExerciseProfile.of(exercise.task())));
        }
        return say(ScenarioFiles.computed(() -> PressProfile.of(((PressScenario) scenario).task())));
    }

    private Integer say(ExerciseProfile profile) {
        Joint asked = joint == null ? profile.driver().orElse(profile.joints().get(0)) : joint;
        Why.Place place = new Why.Place(limb(profile), asked, phase, position(profile));
        ExerciseWhy why = new ExerciseWhy(profile, number, place, line - 1);
        output.write(spec, WhyText.of(why.title(units.set()), why.why(), units.set(), Output.width()));
        return Exit.GOOD;
    }

    private Integer say(PressProfile profile) {
        joint = joint == null ? Joint.KNEE : joint;
        int position = position(profile);
        Why why = why(profile, new Why.Place(limb(profile), joint, phase, position));
        output.write(spec, WhyText.of(title(profile, position), why, units.set(), Output.width()));
        return Exit.GOOD;
    }

    private Why why(PressProfile profile, Why.Place at) {
        return switch (number) {
            case PUSH -> profile.why().push(phase, at.position());
            case TORQUE -> profile.why().torque(at);
            case EFFORT -> profile.why().effort(at);
            case ANGLE -> profile.why().angle(at);
            case ARM -> profile.why().momentArm(at);
            case KNEECAP -> profile.why().kneecap(at);
            case RUBBER -> profile.why().rubber(line(profile), phase, at.position());
            case PULL -> throw new BadInput(List.of("--of pull: a press on a sled has push and rubber instead"));
        };
    }

    private int line(PressProfile profile) {
        int lines = profile.lines().size();
        if (lines == 0) {
            throw new BadInput(List.of("--of rubber: this setup has no rubber"));
        }
        if (line < 1 || line > lines) {
            throw new BadInput(List.of("--line: this setup has no line " + line + "; its lines are 1 to " + lines));
        }
        return line - 1;
    }

    private int limb(Profile profile) {
        for (int k = 0; k < profile.limbs().size(); k++) {
            if (side == null || profile.limbs().get(k).side() == side) {
                return k;
            }
        }
        throw new BadInput(List.of("--side: the " + side.words() + " limb does not take part in this scenario"));
    }

    private int position(Profile profile) {
        if (knee == null) {
            return 0;
        }
        double wanted = profile.driver().isPresent() ? Asked.angle("--at", knee) : Asked.length("--at", knee);
        within(profile, wanted);
        int nearest = 0;
        for (int i = 1; i < profile.positions(); i++) {
            if (Math.abs(profile.driving(i) - wanted) < Math.abs(profile.driving(nearest) - wanted)) {
                nearest = i;
            }
        }
        return nearest;
    }

    /** Half a degree of grace: the ends are measured angles, and a shared stroke may end a little before them. */
    private void within(Profile profile, double wanted) {
        double bottom = profile.driving(0);
        double top = profile.driving(profile.positions() - 1);
        if (wanted > Math.max(bottom, top) + GRACE || wanted < Math.min(bottom, top) - GRACE) {
            Measure measure = profile.driver().isPresent() ? Measure.ANGLE : Measure.LENGTH;
            throw new BadInput(List.of("--at: " + knee + " is outside this range, which goes from "
                    + measure.words(bottom, units.set()) + " to " + measure.words(top, units.set())));
        }
    }

    private String title(PressProfile profile, int position) {
        String where = phase.words() + ", knee at " + Measure.ANGLE.words(profile.driving(position), units.set())
                + ", mark " + Measure.LENGTH.words(profile.mark(position), units.set());
        String whose = profile.limbs().get(limb(profile)).side().words();
        return switch (number) {
            case PUSH -> "push on the plate along the rail, " + where;
            case TORQUE -> whose + " " + joint.action().words() + " torque, " + where;
            case ANGLE -> whose + " " + joint.words() + " angle, " + where;
            case ARM -> "moment arm of the push about the " + whose + " " + joint.words() + ", " + where;
            case EFFORT -> "effort of the " + whose + " " + joint.words() + ", " + where;
            case KNEECAP -> whose + " kneecap joint stress, " + where;
            case RUBBER -> "pull of line " + line + " along the rail, toward the top, " + where;
            case PULL -> "";
        };
    }
}
