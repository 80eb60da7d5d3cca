package counterpull.report.words;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.Challenge;
import counterpull.engine.profile.ExerciseTask;
import counterpull.engine.profile.LimbProfile;
import counterpull.engine.profile.Limiting;
import counterpull.engine.profile.LoadForEffort;
import counterpull.engine.profile.Profile;
import counterpull.report.table.Decimals;
import counterpull.report.table.Measure;
import counterpull.report.table.UnitSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where in its range an exercise challenges each joint, in sentences; for any exercise, a press or another. */
public final class ChallengeWords {
    private static final double NEARLY_NOTHING = 0.5;
    private static final Phase[] MOVING = {Phase.LIFTING, Phase.LOWERING};
    private final Profile profile;
    private final UnitSet units;

    /** For one profile in a reader's units. */
    public ChallengeWords(Profile profile, UnitSet units) {
        this.profile = profile;
        this.units = units;
    }

    /** Where the range begins and ends: "knee flexion from 90° to 10°". */
    public String range() {
        Measure measure = profile.driver().isPresent() ? Measure.ANGLE : Measure.LENGTH;
        String name = profile.driver().map(Joint::angleWords).orElse("travel");
        return name + " from "
                + SetupWords.trimmed(measure, profile.driving(0), units) + " to "
                + SetupWords.trimmed(measure, profile.driving(profile.positions() - 1), units);
    }

    /** "42°". */
    public String place(int position) {
        Measure measure = profile.driver().isPresent() ? Measure.ANGLE : Measure.LENGTH;
        return SetupWords.trimmed(measure, profile.driving(position), units);
    }

    /** "knee flexion 42°". */
    public String at(int position) {
        Measure measure = profile.driver().isPresent() ? Measure.ANGLE : Measure.LENGTH;
        return profile.driver().map(Joint::angleWords).orElse("travel") + " "
                + SetupWords.trimmed(measure, profile.driving(position), units);
    }

    /** The largest effort in a few words: "Left knee extension: 64 % of what it has, at knee flexion 10°". */
    public String headline() {
        Spot most = most();
        if (most == null) {
            return "No effort is known for this exercise";
        }
        Limiting limiting = most.limiting();
        return sentence(limiting.side().words() + " " + limiting.action().words()) + ": "
                + Measure.EFFORT.words(limiting.effort(), units) + " of what it has, at " + at(most.position());
    }

    /** Where the largest known effort of both moving phases is, how sure that is, and whether it is there at all. */
    public String hardest() {
        Spot most = most();
        return most == null
                ? "No effort is known anywhere in this range: strength was neither tested nor published for it."
                : hardest(most);
    }

    private Spot most() {
        Spot most = null;
        for (Phase phase : MOVING) {
            for (int i = 0; i < profile.positions(); i++) {
                Optional<Limiting> found = profile.limiting(profile.joints(), phase, i);
                if (found.isPresent()
                        && (most == null
                                || found.get().effort() > most.limiting().effort())) {
                    most = new Spot(found.get(), phase, i);
                }
            }
        }
        return most;
    }

    private record Spot(Limiting limiting, Phase phase, int position) {}

    private String hardest(Spot most) {
        Limiting limiting = most.limiting();
        String beyond = limiting.effort() > 1 ? " That is more than it has: as set, this cannot be done." : "";
        return "Hardest: " + limiting.side().words() + " " + limiting.action().words() + ", "
                + most.phase().words() + ", at " + at(most.position()) + ": "
                + Measure.EFFORT.words(limiting.effort(), units) + " of what it has" + band(most) + "." + beyond;
    }

    private String band(Spot most) {
        return profile.limbs().stream()
                .filter(limb -> limb.side() == most.limiting().side())
                .map(limb -> limb.effortBand(most.limiting().joint(), most.phase(), most.position()))
                .filter(band -> band.high() > 0)
                .map(band -> " (" + Decimals.fixed(100 * band.low(), 0) + " to "
                        + Measure.EFFORT.words(band.high(), units) + " within the strength's 90\u00A0% band)")
                .findFirst()
                .orElse("");
    }

    /** Which chosen weights bring the hardest place to plain shares of what the person has; empty where none can be said. */
    public static String weights(ExerciseTask task, UnitSet units) {
        List<String> words = new ArrayList<>();
        for (double effort : new double[] {0.5, 0.65, 0.8, 1}) {
            LoadForEffort.most(task, effort)
                    .ifPresent(mass -> words.add(Measure.EFFORT.words(effort, units) + " at "
                            + Decimals.fixed(Measure.MASS.in(units).from(mass), 1) + "\u00A0"
                            + Measure.MASS.in(units).unit()));
        }
        return words.isEmpty()
                ? ""
                : "Chosen weight that brings the hardest place to a share of what it has: " + String.join(", ", words)
                        + "; as sure as the strength behind it.";
    }

    /** A sentence for each joint: where it is asked most while lifting, how much, of which action. */
    public List<String> joints() {
        List<String> words = new ArrayList<>();
        for (Joint joint : profile.joints()) {
            words.add(joint(joint));
        }
        return words;
    }

    private String joint(Joint joint) {
        Challenge challenge = Challenge.of(profile, joint, Phase.LIFTING);
        if (challenge.peak() < NEARLY_NOTHING) {
            return sentence(joint.words()) + ": next to nothing is asked.";
        }
        LimbProfile limb = mostAsked(joint, challenge.peakAt());
        String turns = reverses(joint) ? "; what is asked changes to the opposite action within the range" : "";
        return sentence(joint.words()) + ": " + challenge.thirds().hardest() + "; up to "
                + Measure.TORQUE.words(challenge.peak(), units) + " of "
                + limb.asked(joint, Phase.LIFTING, challenge.peakAt()).words() + " at " + at(challenge.peakAt()) + turns
                + ".";
    }

    private LimbProfile mostAsked(Joint joint, int position) {
        LimbProfile most = profile.limbs().get(0);
        for (LimbProfile limb : profile.limbs()) {
            if (Math.abs(limb.torque(joint, Phase.LIFTING, position))
                    > Math.abs(most.torque(joint, Phase.LIFTING, position))) {
                most = limb;
            }
        }
        return most;
    }

    private boolean reverses(Joint joint) {
        for (LimbProfile limb : profile.limbs()) {
            boolean named = false;
            boolean opposite = false;
            for (int i = 0; i < profile.positions(); i++) {
                named |= limb.torque(joint, Phase.LIFTING, i) > NEARLY_NOTHING;
                opposite |= limb.torque(joint, Phase.LIFTING, i) < -NEARLY_NOTHING;
            }
            if (named && opposite) {
                return true;
            }
        }
        return false;
    }

    /** Joints of which no effort is known somewhere in the range, a sentence each. */
    public List<String> unknown() {
        List<String> words = new ArrayList<>();
        for (Joint joint : profile.joints()) {
            int unknown = 0;
            for (int i = 0; i < profile.positions(); i++) {
                unknown += Double.isNaN(profile.effort(joint, Phase.LIFTING, i)) ? 1 : 0;
            }
            if (unknown == profile.positions()) {
                words.add("Strength of the " + joint.words() + " is not known anywhere in this range.");
            } else if (unknown > 0) {
                words.add("Strength of the " + joint.words() + " is not known at " + unknown + " of "
                        + profile.positions() + " positions: outside what its source or tests cover.");
            }
        }
        return words;
    }

    private static String sentence(String words) {
        return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
    }
}
