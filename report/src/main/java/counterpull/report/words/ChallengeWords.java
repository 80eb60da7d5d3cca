package counterpull.report.words;

import counterpull.engine.Require;
import counterpull.engine.body.Action;
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
        return name + " from " + number(measure, 0) + " to " + number(measure, profile.positions() - 1);
    }

    /** "42°". */
    public String place(int position) {
        Measure measure = profile.driver().isPresent() ? Measure.ANGLE : Measure.LENGTH;
        return SetupWords.trimmed(measure, profile.driving(position), units);
    }

    /** "knee flexion 42°". */
    public String at(int position) {
        Measure measure = profile.driver().isPresent() ? Measure.ANGLE : Measure.LENGTH;
        return profile.driver().map(Joint::angleWords).orElse("travel") + " " + number(measure, position);
    }

    private String number(Measure measure, int position) {
        return SetupWords.trimmed(measure, profile.driving(position), units).replace('-', '\u2212');
    }

    /**
     * The largest effort in a few words: "Left knee extension: 64 % of what it has, at knee flexion 10°", or where it is more than
     * there is "Too heavy as set: left knee extension, 120 % of what it has, ...".
     */
    public String headline() {
        Spot most = most();
        if (most == null) {
            return "No effort is known for this exercise";
        }
        Limiting limiting = most.limiting();
        String who = named(limiting);
        return (limiting.effort() > 1 ? "Too heavy as set: " + who + ", " : sentence(who) + ": ")
                + Measure.EFFORT.words(limiting.effort(), units) + " of what it has, at " + at(most.position());
    }

    /** In which phase the headline's effort is reached and how sure it is, in sentences. */
    public String sureness() {
        Spot most = most();
        if (most == null) {
            return hardest();
        }
        Require.Limits band = bandOf(most);
        String weak = most.limiting().effort() <= 1 && band.high() > 1
                ? " If their strength lies at the low end of that band, this is more than there is."
                : "";
        String how = band.high() > 0 ? "; " + within(band) : "";
        return "That is while " + most.phase().words() + how + "." + beyond(most) + weak;
    }

    /**
     * What is asked at a position of the joint with the largest known effort, "left knee extension 32.8 N·m, 45 % of what it has"; and of
     * a joint that is asked for more torque than that one and whose strength is not known there.
     */
    public String asked(Phase phase, int position) {
        Optional<Limiting> found = profile.limiting(profile.joints(), phase, position);
        String known = found.map(limiting -> named(limiting) + " "
                        + newtonMetres(torque(limiting, phase, position)) + ", "
                        + Measure.EFFORT.words(limiting.effort(), units) + " of what it has")
                .orElse("no effort is known");
        double least = found.map(limiting -> Math.abs(torque(limiting, phase, position)))
                .orElse(NEARLY_NOTHING);
        return known + unknown(least, phase, position);
    }

    private String unknown(double least, Phase phase, int position) {
        String words = "";
        double most = least;
        for (LimbProfile limb : profile.limbs()) {
            for (Joint joint : profile.joints()) {
                double torque = limb.torque(joint, phase, position);
                if (Double.isNaN(limb.effort(joint, phase, position)) && Math.abs(torque) > most) {
                    most = Math.abs(torque);
                    words = "; " + limb.side().words() + " "
                            + limb.asked(joint, phase, position).words() + " " + newtonMetres(torque)
                            + ", of a strength that is not known here";
                }
            }
        }
        return words;
    }

    private String newtonMetres(double torque) {
        return Measure.TORQUE.words(Math.abs(torque), units);
    }

    private double torque(Limiting found, Phase phase, int position) {
        return profile.limbs().stream()
                .filter(limb -> limb.side() == found.side())
                .mapToDouble(limb -> limb.torque(found.joint(), phase, position))
                .findFirst()
                .orElseThrow();
    }

    private static String named(Limiting limiting) {
        return limiting.side().words() + " " + limiting.action().words();
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
        Require.Limits band = bandOf(most);
        return "Hardest: " + named(limiting) + ", "
                + most.phase().words() + ", at " + at(most.position()) + ": "
                + Measure.EFFORT.words(limiting.effort(), units) + " of what it has"
                + (band.high() > 0 ? " (" + within(band) + ")" : "") + "." + beyond(most);
    }

    private static String beyond(Spot most) {
        return most.limiting().effort() > 1 ? " That is more than there is: as set, this cannot be done." : "";
    }

    private String within(Require.Limits band) {
        return Decimals.fixed(100 * band.low(), 0) + " to " + Measure.EFFORT.words(band.high(), units)
                + " within the strength's 90\u00A0% band";
    }

    private Require.Limits bandOf(Spot most) {
        return profile.limbs().stream()
                .filter(limb -> limb.side() == most.limiting().side())
                .map(limb -> limb.effortBand(most.limiting().joint(), most.phase(), most.position()))
                .findFirst()
                .orElseThrow();
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
        Action asked = limb.asked(joint, Phase.LIFTING, challenge.peakAt());
        Action other = asked == joint.action() ? joint.opposite() : joint.action();
        String turns = reverses(joint) ? "; part of the range asks for " + other.words() + " instead" : "";
        return sentence(joint.words()) + ": " + challenge.thirds().hardest() + "; up to "
                + Measure.TORQUE.words(challenge.peak(), units) + " of " + asked.words() + " at "
                + at(challenge.peakAt()) + turns + ".";
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

    /** Joints of which no effort is known somewhere in the range, a sentence each that says from where to where. */
    public List<String> unknown() {
        List<String> words = new ArrayList<>();
        for (Joint joint : profile.joints()) {
            List<String> stretches = unknown(joint);
            if (!stretches.isEmpty()) {
                words.add(
                        "Strength of the " + joint.words() + " is not known " + String.join(" and ", stretches) + ".");
            }
        }
        return words;
    }

    private List<String> unknown(Joint joint) {
        List<String> stretches = new ArrayList<>();
        int from = -1;
        for (int i = 0; i <= profile.positions(); i++) {
            boolean gap = i < profile.positions() && Double.isNaN(profile.effort(joint, Phase.LIFTING, i));
            if (gap && from < 0) {
                from = i;
            } else if (!gap && from >= 0) {
                stretches.add(stretch(from, i - 1));
                from = -1;
            }
        }
        return stretches;
    }

    private String stretch(int from, int to) {
        if (from == 0 && to == profile.positions() - 1) {
            return "anywhere in this range";
        }
        return from == to ? "at " + at(from) : "from " + at(from) + " to " + at(to).replaceFirst("^[^0-9\u2212]* ", "");
    }

    private static String sentence(String words) {
        return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
    }
}
