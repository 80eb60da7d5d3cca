package counterpull.report.result;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.ExerciseProfile;
import counterpull.report.table.Csv;
import counterpull.report.table.Table;
import counterpull.report.table.TextTable;
import counterpull.report.table.UnitSet;
import java.util.ArrayList;
import java.util.List;

/** Everything that the profile of an exercise says, as tables. */
public final class ExerciseTables {
    private ExerciseTables() {}

    /** One long table: a row for every limb, phase and position. */
    public static Table everything(ExerciseProfile profile) {
        List<Field> fields = new ArrayList<>(PlaceFields.whose());
        fields.addAll(ExerciseFields.place(profile));
        fields.addAll(ExerciseFields.angles(profile));
        fields.addAll(ExerciseFields.loads(profile));
        fields.addAll(TorqueFields.asked(profile));
        fields.addAll(TorqueFields.parts(profile));
        if (profile.joints().contains(Joint.KNEE)) {
            fields.addAll(KneecapFields.of(profile));
        }
        return table("everything", fields, Spot.all(profile), 5);
    }

    /** The few columns that matter of one limb in one phase: what pulls, torque and effort of each joint, kneecap stress. */
    public static Table summary(ExerciseProfile profile, int limb, Phase phase) {
        List<Field> fields = new ArrayList<>(List.of(ExerciseFields.driving(profile)));
        fields.addAll(ExerciseFields.loads(profile));
        fields.addAll(new ReadFields(profile).briefly());
        if (profile.joints().contains(Joint.KNEE)) {
            fields.add(KneecapFields.stress());
        }
        String title = title(profile, limb, phase) + ", from the bottom (first line) to the top";
        return table(title, fields, Spot.along(profile, limb, phase), 1);
    }

    /** Loads, torques, strength and effort of one limb in one phase, all positions. */
    public static Table asked(ExerciseProfile profile, int limb, Phase phase) {
        List<Field> fields = new ArrayList<>(List.of(ExerciseFields.driving(profile)));
        fields.addAll(ExerciseFields.loads(profile));
        fields.addAll(new ReadFields(profile).asked());
        return table(title(profile, limb, phase), fields, Spot.along(profile, limb, phase), 1);
    }

    /** What each torque of one limb is made of in one phase. */
    public static Table parts(ExerciseProfile profile, int limb, Phase phase) {
        List<Field> fields = new ArrayList<>(List.of(ExerciseFields.driving(profile)));
        fields.addAll(new ReadFields(profile).parts());
        String title = title(profile, limb, phase) + ": what each torque is made of";
        return table(title, fields, Spot.along(profile, limb, phase), 1);
    }

    private static String title(ExerciseProfile profile, int limb, Phase phase) {
        return profile.limbs().get(limb).side().words() + ", " + phase.words();
    }

    /** {@link #everything} as CSV. */
    public static String csv(ExerciseProfile profile, UnitSet units) {
        return Csv.of(everything(profile), units);
    }

    /** What the columns of {@link #csv} are, as CSV. */
    public static String dictionary(ExerciseProfile profile, UnitSet units) {
        return Csv.dictionary(everything(profile), units);
    }

    /** The tables for a terminal, at so many positions. */
    public static String text(ExerciseProfile profile, TextChoice choice) {
        StringBuilder out = new StringBuilder();
        int[] rows = ProfileTables.evenly(profile.positions(), choice.positions());
        for (int limb = 0; limb < profile.limbs().size(); limb++) {
            for (Phase phase : Phase.values()) {
                if (choice.whose().sides().contains(profile.limbs().get(limb).side())
                        && choice.whose().phases().contains(phase)) {
                    Table table = asked(profile, limb, phase).only(rows).withoutEmpty();
                    out.append(out.isEmpty() ? "" : "\n").append(TextTable.of(table, choice.units(), choice.width()));
                    if (choice.groups().contains(Group.PARTS)) {
                        Table parts = parts(profile, limb, phase).only(rows).withoutEmpty();
                        out.append('\n').append(TextTable.of(parts, choice.units(), choice.width()));
                    }
                }
            }
        }
        return out.toString();
    }

    private static Table table(String title, List<Field> fields, List<Spot> spots, int leading) {
        return new Table(
                title, fields.stream().map(field -> field.column(spots)).toList(), leading);
    }
}
