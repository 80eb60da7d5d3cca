package counterpull.browser;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.ExerciseLimb;
import counterpull.engine.profile.ExerciseProfile;
import counterpull.engine.profile.LimbProfile;
import counterpull.engine.profile.PressLimb;
import counterpull.engine.profile.PressProfile;
import java.util.ArrayList;
import java.util.List;

/** The numbers of profiles as lines of text: a name, a tab, the value as the language writes it in full. */
final class NumberLines {
    private final List<String> lines = new ArrayList<>();

    void add(String heading, PressProfile profile) {
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < profile.positions(); i++) {
                String place = heading + ", " + phase.words() + ", " + i;
                add(place + ", force", profile.force(phase, i));
                add(place + ", pull", profile.lines().get(0).tension(phase, i));
                for (PressLimb limb : profile.limbs()) {
                    limb(place, limb, phase, i);
                }
            }
        }
        add(heading + ", inertial force", profile.turnaround().inertialForce());
        add(heading + ", moving over held", profile.turnaround().movingOverHeld());
    }

    void add(String heading, ExerciseProfile profile) {
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < profile.positions(); i++) {
                String place = heading + ", " + phase.words() + ", " + i;
                for (ExerciseLimb limb : profile.limbs()) {
                    for (int pull = 0; pull < limb.pulls().size(); pull++) {
                        add(place + ", pull " + pull, limb.size(pull, phase, i));
                    }
                    joints(place + ", " + limb.side().words(), limb, phase, i);
                }
            }
        }
    }

    private void limb(String place, PressLimb limb, Phase phase, int i) {
        String whose = place + ", " + limb.side().words();
        add(whose + ", push angle", limb.pushAngle(phase, i));
        add(whose + ", kneecap stress", limb.kneecapStress(phase, i));
        joints(whose, limb, phase, i);
    }

    private void joints(String whose, LimbProfile limb, Phase phase, int i) {
        for (Joint joint : limb.joints()) {
            String name = whose + " " + joint.words();
            add(name + " angle", limb.angle(joint, i));
            add(name + " torque", limb.torque(joint, phase, i));
            add(name + " effort", limb.effort(joint, phase, i));
        }
    }

    void add(String name, double value) {
        lines.add(name + "\t" + value);
    }

    List<String> all() {
        return lines;
    }
}
