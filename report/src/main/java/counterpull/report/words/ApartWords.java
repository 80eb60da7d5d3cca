package counterpull.report.words;

import counterpull.engine.load.HangingChain;
import counterpull.engine.load.MeasuredProfile;
import counterpull.engine.load.Resistance;
import counterpull.engine.motion.BalancedStand;
import counterpull.engine.motion.StandDrive;
import counterpull.engine.profile.ExerciseProfile;
import counterpull.report.table.Measure;
import counterpull.report.table.UnitSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What belongs to something that resists but stands in no total of an exercise, a sentence each. */
public final class ApartWords {
    private ApartWords() {}

    /** Links of a chain that are picked up, and what readings of a machine cannot say. */
    public static List<String> of(ExerciseProfile profile, UnitSet units) {
        List<String> words = new ArrayList<>();
        shinStops(profile, units).ifPresent(words::add);
        for (Resistance resistance : profile.task().exercise().resists()) {
            if (resistance instanceof MeasuredProfile measured) {
                words.add(sentence(measured.notKnown()));
            } else if (resistance instanceof HangingChain chain) {
                words.add("Starting the links of the " + chain.words() + " that leave the floor takes up to "
                        + Measure.FORCE.words(pickedUp(chain, profile), units)
                        + " more while they rise; it is in no total.");
            }
        }
        return words;
    }

    /** Where the ankle gives no further inside the range: the corner is rounded over 4° of knee, which moving turns into a jolt. */
    private static Optional<String> shinStops(ExerciseProfile profile, UnitSet units) {
        if (profile.task().exercise().motion() instanceof BalancedStand stand
                && stand.drive() instanceof StandDrive.Knee knee) {
            double at = knee.ankle().usedUpAt();
            double low = Math.min(profile.range().bottom(), profile.range().top());
            double high = Math.max(profile.range().bottom(), profile.range().top());
            if (at > low && at < high) {
                return Optional.of("The ankle gives no further from knee flexion " + Measure.ANGLE.words(at, units)
                        + " on: a body slows its shin gently there, the model within a few degrees, so moving numbers near that"
                        + " place show a jolt that nobody feels. Read them held still.");
            }
        }
        return Optional.empty();
    }

    private static String sentence(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ".";
    }

    private static double pickedUp(HangingChain chain, ExerciseProfile profile) {
        double most = 0;
        for (double force : chain.pickedUp(profile.limbs().get(0).path())) {
            most = Math.max(most, force);
        }
        return most;
    }
}
