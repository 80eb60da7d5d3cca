package counterpull.report.result;

import counterpull.engine.motion.Phase;
import counterpull.engine.profile.PressProfile;
import counterpull.report.table.Csv;
import counterpull.report.table.Table;
import counterpull.report.table.TextTable;
import counterpull.report.table.UnitSet;
import java.util.ArrayList;
import java.util.List;

/** Everything that a profile says, as tables. */
public final class ProfileTables {
    private ProfileTables() {}

    /** One long table: a row for every limb, phase and position, a column for everything that is said there. */
    public static Table everything(PressProfile profile) {
        List<Field> fields = new ArrayList<>(PlaceFields.whose());
        fields.addAll(PlaceFields.where());
        fields.addAll(Group.everything(profile));
        return table("everything", fields, Spot.all(profile), 7);
    }

    /** One group of one limb in one phase, all positions, led by knee bend and tape mark. */
    public static Table of(PressProfile profile, Group group, int limb, Phase phase) {
        List<Field> fields = new ArrayList<>(PlaceFields.shortly());
        int leading = fields.size();
        fields.addAll(group.fields(profile));
        String title = profile.limbs().get(limb).side().words() + " leg, " + phase.words() + ": " + group.words();
        return table(title, fields, Spot.along(profile, limb, phase), leading);
    }

    /** {@link #everything} as CSV. */
    public static String csv(PressProfile profile, UnitSet units) {
        return Csv.of(everything(profile), units);
    }

    /** What the columns of {@link #csv} are, as CSV. */
    public static String dictionary(PressProfile profile, UnitSet units) {
        return Csv.dictionary(everything(profile), units);
    }

    /** The tables for a terminal. */
    public static String text(PressProfile profile, TextChoice choice) {
        StringBuilder out = new StringBuilder();
        int[] rows = evenly(profile.positions(), choice.positions());
        for (int limb = 0; limb < profile.limbs().size(); limb++) {
            for (Phase phase : Phase.values()) {
                if (choice.whose().sides().contains(profile.limbs().get(limb).side())
                        && choice.whose().phases().contains(phase)) {
                    groups(profile, choice, new Spot(profile, limb, phase, 0))
                            .forEach(table -> out.append(out.isEmpty() ? "" : "\n")
                                    .append(TextTable.of(
                                            table.only(rows).withoutEmpty(), choice.units(), choice.width())));
                }
            }
        }
        return out.toString();
    }

    private static List<Table> groups(PressProfile profile, TextChoice choice, Spot at) {
        List<Table> tables = new ArrayList<>();
        for (Group group : Group.values()) {
            if (choice.groups().contains(group) && !group.fields(profile).isEmpty()) {
                tables.add(of(profile, group, at.limb(), at.phase()));
            }
        }
        return tables;
    }

    /** {@code wanted} of {@code all} places, first and last among them, as evenly spread as whole numbers allow. */
    public static int[] evenly(int all, int wanted) {
        int count = Math.min(all, Math.max(2, wanted));
        int[] chosen = new int[count];
        for (int i = 0; i < count; i++) {
            chosen[i] = (int) Math.round((double) i * (all - 1) / (count - 1));
        }
        return chosen;
    }

    private static Table table(String title, List<Field> fields, List<Spot> spots, int leading) {
        return new Table(
                title, fields.stream().map(field -> field.column(spots)).toList(), leading);
    }
}
