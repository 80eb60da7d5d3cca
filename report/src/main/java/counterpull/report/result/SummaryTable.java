package counterpull.report.result;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.Limiting;
import counterpull.engine.profile.PressLimb;
import counterpull.engine.profile.PressProfile;
import counterpull.report.table.Column;
import counterpull.report.table.Column.Head;
import counterpull.report.table.Measure;
import counterpull.report.table.NumberColumn;
import counterpull.report.table.Table;
import counterpull.report.table.TextTable;
import counterpull.report.table.WordColumn;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.function.IntToDoubleFunction;

/** A profile on one small table: the push in each phase, what limits while lifting, the kneecap joint's stress. */
public final class SummaryTable {
    private final PressProfile profile;
    private final List<Joint> named;
    private final int[] rows;

    private SummaryTable(PressProfile profile, List<Joint> named, int positions) {
        this.profile = profile;
        this.named = named;
        rows = ProfileTables.evenly(profile.positions(), positions);
    }

    /**
     * The table as text.
     *
     * @param profile what is shown
     * @param named the joints that are looked at
     * @param shown in which units, how wide, at how many positions
     */
    public static String text(PressProfile profile, List<Joint> named, TextChoice shown) {
        return TextTable.of(new SummaryTable(profile, named, shown.positions()).table(), shown.units(), shown.width());
    }

    private Table table() {
        List<Column> columns = new ArrayList<>();
        columns.add(number("knee bend", Measure.ANGLE, profile::driving));
        columns.add(number("tape mark", Measure.LENGTH, profile::mark));
        for (Phase phase : Phase.values()) {
            columns.add(number("push " + phase.words(), Measure.FORCE, i -> profile.force(phase, i)));
        }
        columns.add(number("effort lifting", Measure.EFFORT, this::effort));
        columns.add(words("joint that limits", this::limits));
        columns.add(number("kneecap stress", Measure.STRESS, this::stress));
        return new Table(
                "from the bottom (first line) to the top; effort is the share of what that joint has there",
                columns,
                2);
    }

    private Column number(String title, Measure measure, IntToDoubleFunction value) {
        double[] values = new double[rows.length];
        for (int k = 0; k < rows.length; k++) {
            values[k] = value.applyAsDouble(rows[k]);
        }
        return new NumberColumn(head(title), measure, values);
    }

    private Column words(String title, IntFunction<String> value) {
        List<String> values = new ArrayList<>();
        for (int row : rows) {
            values.add(value.apply(row));
        }
        return new WordColumn(head(title), values);
    }

    private static Head head(String title) {
        return new Head(title.replace(' ', '_'), title, title);
    }

    private double effort(int position) {
        return limiting(position).map(Limiting::effort).orElse(Double.NaN);
    }

    private String limits(int position) {
        return limiting(position)
                .map(l -> l.side().words() + " " + l.action().words())
                .orElse("");
    }

    private Optional<Limiting> limiting(int position) {
        return profile.limiting(named, Phase.LIFTING, position);
    }

    private double stress(int position) {
        double most = Double.NaN;
        for (PressLimb limb : profile.limbs()) {
            double stress = limb.kneecapStress(Phase.LIFTING, position);
            most = stress <= most ? most : Double.isNaN(stress) ? most : stress;
        }
        return most;
    }
}
