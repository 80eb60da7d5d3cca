package counterpull.report.page;

import counterpull.engine.motion.Phase;
import counterpull.engine.profile.PressProfile;
import counterpull.report.Setup;
import counterpull.report.result.Group;
import counterpull.report.result.ProfileTables;
import counterpull.report.table.Table;

/** The numbers themselves at nine positions; all of them are in the machine-readable results. */
final class Numbers implements Section {
    private static final int POSITIONS = 9;

    @Override
    public void write(Desk desk) {
        desk.html().open("section").put("h2", "Numbers");
        for (Setup setup : desk.findings().chosen()) {
            numbers(desk, setup.profile());
        }
        desk.html().put("p.small", "A dash: not known, or not asked. A negative torque asks for the opposite action.");
        desk.html().close().line();
    }

    private static void numbers(Desk desk, PressProfile profile) {
        for (Phase phase : Phase.values()) {
            put(desk, profile, ProfileTables.of(profile, Group.FORCE, 0, phase).titled("Force, " + phase.words()));
        }
        for (int limb = 0; limb < profile.limbs().size(); limb++) {
            put(desk, profile, ProfileTables.of(profile, Group.POSTURE, limb, Phase.HELD));
            for (Phase phase : Phase.values()) {
                put(desk, profile, ProfileTables.of(profile, Group.TORQUE, limb, phase));
            }
            put(desk, profile, ProfileTables.of(profile, Group.KNEECAP, limb, Phase.LIFTING));
        }
        if (!profile.lines().isEmpty()) {
            put(
                    desk,
                    profile,
                    ProfileTables.of(profile, Group.RUBBER, 0, Phase.LIFTING).titled("Rubber, lifting"));
        }
    }

    private static void put(Desk desk, PressProfile profile, Table table) {
        desk.table(
                table.only(ProfileTables.evenly(profile.positions(), POSITIONS)).withoutEmpty());
    }
}
