package counterpull.app.cli;

import counterpull.engine.body.Joint;
import counterpull.engine.load.Pull;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.ExerciseProfile;
import counterpull.engine.profile.Why;
import counterpull.report.words.ChallengeWords;
import java.util.ArrayList;
import java.util.List;

/**
 * What one number of an exercise is made of.
 *
 * @param profile the exercise
 * @param number which kind of number
 * @param place of which limb and joint, in which phase, where
 * @param line which thing that pulls, from 0
 */
record ExerciseWhy(ExerciseProfile profile, WhyCommand.Number number, Why.Place place, int line) {
    Why why() {
        return switch (number) {
            case TORQUE -> profile.why().torque(known());
            case EFFORT -> profile.why().effort(known());
            case ANGLE -> profile.why().angle(known());
            case KNEECAP -> profile.why().kneecap(knee());
            case PULL -> profile.why().pull(place.limb(), pull(), place.phase(), place.position());
            case PUSH, ARM, RUBBER ->
                throw new BadInput(
                        List.of(
                                "--of " + WhyCommand.word(number)
                                        + ": only a press on a sled has this; of this exercise ask torque, effort, angle, kneecap or pull"));
        };
    }

    private Why.Place known() {
        if (!profile.joints().contains(place.joint())) {
            List<String> names = profile.joints().stream().map(Joint::words).toList();
            throw new BadInput(List.of("--joint: the " + place.joint().words()
                    + " is not computed in this exercise; there is " + String.join(", ", names)));
        }
        return place;
    }

    private Why.Place knee() {
        if (!profile.joints().contains(Joint.KNEE)) {
            throw new BadInput(List.of("--of kneecap: the knee is not computed in this exercise"));
        }
        return new Why.Place(place.limb(), Joint.KNEE, place.phase(), place.position());
    }

    private int pull() {
        List<Pull> pulls = profile.limbs().get(place.limb()).pulls();
        List<String> names = new ArrayList<>();
        for (Pull one : pulls) {
            names.add(names.size() + 1 + " " + one.words());
        }
        if (line < 0 || line >= pulls.size()) {
            throw new BadInput(List.of(
                    "--line: this exercise has no pull " + (line + 1) + "; it has " + String.join(", ", names)));
        }
        return line;
    }

    String title(counterpull.report.table.UnitSet units) {
        Phase phase = place.phase();
        String where = ", " + phase.words() + ", at " + new ChallengeWords(profile, units).at(place.position());
        String whose = profile.limbs().get(place.limb()).side().words() + " ";
        return switch (number) {
            case TORQUE -> whose + place.joint().action().words() + " torque" + where;
            case EFFORT -> "effort of the " + whose + place.joint().words() + where;
            case ANGLE -> whose + place.joint().angleWords() + where;
            case KNEECAP -> whose + "kneecap joint stress" + where;
            default ->
                "pull of "
                        + profile.limbs().get(place.limb()).pulls().get(pull()).words() + where;
        };
    }
}
