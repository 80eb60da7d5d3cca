package counterpull.app.cli;

import counterpull.engine.body.Joint;
import counterpull.engine.body.Side;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.Profile;
import counterpull.engine.profile.Why;
import counterpull.report.result.WhyText;
import counterpull.report.table.Measure;
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
        description = "Says what one torque (or, without --joint, the push on the plate) is made of: its terms, which"
                + " add up to it, its formula and its sources.")
final class WhyCommand implements Callable<Integer> {
    @Mixin
    private ScenarioFiles files;

    @Mixin
    private UnitsWanted units;

    @Mixin
    private Output output;

    @Option(names = "--joint", paramLabel = "JOINT", description = "${COMPLETION-CANDIDATES}.")
    private Joint joint;

    @Option(
            names = "--side",
            paramLabel = "SIDE",
            description = "${COMPLETION-CANDIDATES}. The first limb that pushes where left out.")
    private Side side;

    @Option(
            names = "--phase",
            paramLabel = "PHASE",
            defaultValue = "held",
            description = "${COMPLETION-CANDIDATES}. Default: ${DEFAULT-VALUE}.")
    private Phase phase;

    @Option(
            names = "--knee",
            paramLabel = "ANGLE",
            description = "Where in the range, as knee flexion with its unit (\"75 deg\"); the nearest position is"
                    + " taken. The bottom where left out.")
    private String knee;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Scenario scenario = files.read();
        Profile profile = ScenarioFiles.computed(() -> Profile.of(scenario.task()));
        int position = position(profile);
        int limb = limb(profile);
        Why why = joint == null ? profile.whyForce(phase, position) : profile.why(limb, joint, phase, position);
        output.write(spec, WhyText.of(title(profile, limb, position), why, units.set(), Output.width()));
        return Exit.GOOD;
    }

    private int limb(Profile profile) {
        for (int k = 0; k < profile.limbs().size(); k++) {
            if (side == null || profile.limbs().get(k).side() == side) {
                return k;
            }
        }
        throw new BadInput(List.of("--side: the " + side.words() + " limb does not push in this scenario"));
    }

    private int position(Profile profile) {
        if (knee == null) {
            return 0;
        }
        double wanted = Asked.angle("--knee", knee);
        int nearest = 0;
        for (int i = 1; i < profile.positions(); i++) {
            if (Math.abs(profile.drivingAngle(i) - wanted) < Math.abs(profile.drivingAngle(nearest) - wanted)) {
                nearest = i;
            }
        }
        return nearest;
    }

    private String title(Profile profile, int limb, int position) {
        String where = phase.words() + ", knee at " + Measure.ANGLE.words(profile.drivingAngle(position), units.set())
                + ", mark " + Measure.LENGTH.words(profile.mark(position), units.set());
        return joint == null
                ? "push on the plate along the rail, " + where
                : profile.limbs().get(limb).side().words() + " "
                        + joint.action().words() + " torque, " + where;
    }
}
