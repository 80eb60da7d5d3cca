package counterpull.report.page;

import counterpull.engine.choice.Goal;
import counterpull.engine.jointload.Kneecap;
import counterpull.engine.profile.PressLimb;
import counterpull.engine.profile.PressProfile;
import counterpull.report.Setup;
import counterpull.report.table.UnitSet;
import counterpull.report.words.ProfileWords;
import java.util.ArrayList;
import java.util.List;

/** What the numbers do not say. */
final class NotKnown implements Section {
    @Override
    public void write(Desk desk) {
        desk.html().open("section").put("h2", "What is not known");
        for (Setup setup : desk.findings().chosen()) {
            List<String> gaps = gaps(setup, desk.findings().goal(), desk.unitSet());
            desk.html().open("ul");
            gaps.forEach(gap -> desk.html().put("li", gap));
            desk.html().close();
        }
        desk.html().close().line();
    }

    private static List<String> gaps(Setup setup, Goal goal, UnitSet units) {
        List<String> gaps = new ArrayList<>();
        PressProfile profile = setup.profile();
        int looked = 2 * profile.positions();
        if (setup.verdict().unknown() > 0) {
            gaps.add("At " + setup.verdict().unknown() + " of " + looked
                    + " positions and moving phases no effort is known"
                    + " for any named joint: they count in neither target nor ceiling.");
        }
        ProfileWords words = new ProfileWords(profile, goal, units);
        gaps.addAll(words.unknown());
        gaps.addAll(words.unjudged());
        for (PressLimb limb : profile.limbs()) {
            kneecap(gaps, limb, profile.positions());
        }
        gaps.add("A torque is net of all muscles around a joint; muscles that cross two joints, fatigue, and what a"
                + " surgeon has changed are not in it.");
        gaps.add("Friction of the rails follows the weight alone; what pulls or pushes across them is not added.");
        return gaps;
    }

    private static void kneecap(List<String> gaps, PressLimb limb, int positions) {
        int held = 0;
        int absent = 0;
        for (int i = 0; i < positions; i++) {
            held += limb.kneecapReach(i) == Kneecap.Reach.AREA_HELD ? 1 : 0;
            absent += limb.kneecapReach(i) == Kneecap.Reach.ABSENT ? 1 : 0;
        }
        String whose = "Kneecap load, " + limb.side().words() + ": ";
        if (held > 0) {
            gaps.add(whose + "at " + held + " of " + positions
                    + " positions the contact area is held at its last published"
                    + " value (60° of knee bend), so the stress there may be too low.");
        }
        if (absent > 0) {
            gaps.add(whose + "nothing is published for " + absent + " of " + positions + " positions.");
        }
    }
}
