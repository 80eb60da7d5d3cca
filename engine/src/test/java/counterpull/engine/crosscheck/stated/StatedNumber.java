package counterpull.engine.crosscheck.stated;

import counterpull.engine.body.Joint;
import counterpull.engine.body.Side;
import counterpull.engine.load.FixedPointLoads;
import counterpull.engine.load.HangingChain;
import counterpull.engine.load.Resistance;
import counterpull.engine.load.StretchLine;
import counterpull.engine.motion.GroundContact;
import counterpull.engine.motion.Phase;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.ExerciseLimb;
import counterpull.engine.profile.ExerciseProfile;
import java.util.List;
import java.util.Locale;

/** Finds in a profile what a column of a reference table names: "torque KNEE", "angle HIP", "force cable x", "ground upward". */
public final class StatedNumber {
    private StatedNumber() {}

    /** The profile's number for a column in one row, which begins with limb, phase and position. */
    public static double of(ExerciseProfile profile, String column, String[] row) {
        ExerciseLimb limb = limb(profile, Side.valueOf(row[0]));
        Phase phase = Phase.valueOf(row[1].toUpperCase(Locale.ROOT));
        int position = Integer.parseInt(row[2]);
        String[] words = column.split(" ");
        return switch (words[0]) {
            // the file counts angles within half a turn of 0
            case "angle" -> Angles.wrap(limb.angle(Joint.valueOf(words[1]), position));
            case "torque" -> limb.torque(Joint.valueOf(words[1]), phase, position);
            case "speed" -> limb.path().actionSpeed(Joint.valueOf(words[1]), phase, position);
            case "picked" -> picked(profile, limb, words[1], phase, position);
            case "loose" ->
                ((StretchLine) thing(profile, words[1])).over(limb.path()).looseness(position);
            case "anchor" -> anchor((StretchLine) thing(profile, words[1]), limb);
            case "force" -> part(limb.force(words[1], phase, position), words[2]);
            default -> ground(limb.ground().orElseThrow().at(phase, position), words[1]);
        };
    }

    private static ExerciseLimb limb(ExerciseProfile profile, Side side) {
        return profile.limbs().stream()
                .filter(limb -> limb.side() == side)
                .findFirst()
                .orElseThrow();
    }

    private static double picked(ExerciseProfile profile, ExerciseLimb limb, String name, Phase phase, int position) {
        double[] all = ((HangingChain) thing(profile, name)).pickedUp(limb.path());
        return all[profile.course().cell(phase, position)];
    }

    /** The most that the line's fixed end carries over the range. */
    private static double anchor(StretchLine line, ExerciseLimb limb) {
        return FixedPointLoads.of(List.of(line.over(limb.path())), limb.path().positions())
                .get(0)
                .most();
    }

    private static Resistance thing(ExerciseProfile profile, String name) {
        return profile.task().exercise().resists().stream()
                .filter(one -> one.words().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static double part(Vec force, String axis) {
        return axis.equals("x") ? force.x() : force.y();
    }

    private static double ground(GroundContact contact, String what) {
        return switch (what) {
            case "upward" -> contact.upward();
            case "forward" -> contact.forward();
            default -> contact.fraction();
        };
    }
}
