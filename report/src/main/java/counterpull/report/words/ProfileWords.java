package counterpull.report.words;

import counterpull.engine.body.Joint;
import counterpull.engine.choice.Goal;
import counterpull.engine.jointload.Kneecap;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.PressLimb;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.PushCheck;
import counterpull.engine.profile.Turnaround;
import counterpull.report.table.Decimals;
import counterpull.report.table.Measure;
import counterpull.report.table.UnitSet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What has to be said about a profile beside its numbers: the push, the turn, what is not known. */
public final class ProfileWords {
    private static final double MOST_TIMES = 20;
    private final PressProfile profile;
    private final Goal goal;
    private final UnitSet units;

    /** For one profile against one goal in a reader's units. */
    public ProfileWords(PressProfile profile, Goal goal, UnitSet units) {
        this.profile = profile;
        this.goal = goal;
        this.units = units;
    }

    /** Whether the answer depends on how they push. */
    public String push() {
        PushCheck check = PushCheck.of(profile, goal.joints());
        String told = profile.task().pushing().push().words();
        if (check.looked() == 0) {
            return "No effort is known, so it cannot be said how much the way they push (" + told + ") changes.";
        }
        if (check.spread() == 0) {
            return "These numbers hold for one way of pushing (" + told + "); no straying from it was asked about.";
        }
        return stray(check, told + ", give or take " + SetupWords.trimmed(Measure.ANGLE, check.spread(), units));
    }

    private String stray(PushCheck check, String told) {
        String most = Measure.EFFORT.words(check.peak(), units);
        if (!check.matters(goal.ceiling())) {
            return "However they push (" + told
                    + "), the limiting joint stays the same and the ceiling is kept: at most " + most + ".";
        }
        String changes = check.changes() > 0
                ? " In " + share(check) + " of the range, another joint may become the limiting one."
                : "";
        String ceiling = check.peak() > goal.ceiling()
                ? " Effort may reach " + most + ", past the ceiling of " + Measure.EFFORT.words(goal.ceiling(), units)
                        + "."
                : "";
        return "This answer depends on how they push (" + told + ")." + changes + ceiling
                + " Watch their first repetition.";
    }

    private static String share(PushCheck check) {
        long percent = Math.round(100.0 * check.changes() / check.looked());
        return percent == 0 ? "less than 1\u00A0%" : percent + "\u00A0%";
    }

    /** What starting and stopping the mass adds near the bottom. */
    public String turn() {
        Turnaround turn = profile.turnaround();
        return "Starting and stopping the mass near the bottom takes "
                + Measure.FORCE.words(turn.inertialForce(), units) + " at most; the largest push there is "
                + Measure.FORCE.words(turn.total(), units) + "." + moving(turn.movingOverHeld());
    }

    /** Moving against held: a percentage where that says something, a multiple where it is large, else nothing. */
    private static String moving(double ratio) {
        if (!(ratio > 1 && ratio < MOST_TIMES)) {
            return "";
        }
        String how = ratio < 2
                ? Math.round(100 * (ratio - 1)) + "\u00A0% more"
                : Decimals.fixed(ratio, 1) + " times as much";
        return " Moving takes up to " + how + (ratio < 2 ? " than" : " as") + " holding still at the same place.";
    }

    /** Where strength, and so effort, is not known; a sentence for each joint that has such a place, alike legs together. */
    public List<String> unknown() {
        List<String> words = new ArrayList<>();
        if (!uncheckedKneecap().isEmpty()) {
            words.add(uncheckedKneecap());
        }
        for (Joint joint : goal.joints()) {
            Map<String, List<String>> alike = new LinkedHashMap<>();
            for (PressLimb limb : profile.limbs()) {
                String where = unknown(limb, joint);
                if (!where.isEmpty()) {
                    alike.computeIfAbsent(where, first -> new ArrayList<>())
                            .add(limb.side().words());
                }
            }
            alike.forEach((where, sides) -> words.add(
                    "Strength of the " + String.join(" and ", sides) + " " + joint.words() + " is not known " + where));
        }
        return words;
    }

    private String unknown(PressLimb limb, Joint joint) {
        int first = -1;
        int last = -1;
        int count = 0;
        for (int i = 0; i < profile.positions(); i++) {
            if (Double.isNaN(limb.effort(joint, Phase.HELD, i))) {
                first = first < 0 ? i : first;
                last = i;
                count++;
            }
        }
        if (count == 0) {
            return "";
        }
        if (count == profile.positions()) {
            return "anywhere in this range, so it counts in no effort; limits on its torque still hold.";
        }
        String holes = count < last - first + 1 ? "at some places between knee " : "between knee ";
        return holes
                + Measure.ANGLE.words(profile.driving(first), units) + " and "
                + Measure.ANGLE.words(profile.driving(last), units)
                + ": outside what its source or tests cover, so it counts in no effort there.";
    }

    /** Where a stated limit on kneecap stress could not be checked, because nothing is published that deep; else empty. */
    private String uncheckedKneecap() {
        if (goal.caps().kneecapStress() == Double.POSITIVE_INFINITY) {
            return "";
        }
        int unchecked = 0;
        for (int i = 0; i < profile.positions(); i++) {
            boolean absent = false;
            for (PressLimb limb : profile.limbs()) {
                absent |= limb.kneecapReach(i) == Kneecap.Reach.ABSENT;
            }
            unchecked += absent ? 1 : 0;
        }
        return unchecked == 0
                ? ""
                : "The kneecap joint stress limit was not checked at the deepest " + unchecked + " of "
                        + profile.positions() + " positions: nothing is published for a knee bent that far.";
    }

    /** Opposite actions that are asked for and of which nothing is known: their effort counts as 0. */
    public List<String> unjudged() {
        List<String> words = new ArrayList<>();
        for (PressLimb limb : profile.limbs()) {
            for (Joint joint : goal.joints()) {
                if (limb.limb().strength().of(joint.opposite()).isEmpty() && asksOpposite(limb, joint)) {
                    words.add("The " + limb.side().words() + " leg is asked for "
                            + joint.opposite().words() + ", of which nothing is known: it counts as no effort.");
                }
            }
        }
        return words;
    }

    private boolean asksOpposite(PressLimb limb, Joint joint) {
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < profile.positions(); i++) {
                if (limb.torque(joint, phase, i) < 0) {
                    return true;
                }
            }
        }
        return false;
    }
}
