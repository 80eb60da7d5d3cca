package counterpull.report.result;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.Challenge;
import counterpull.engine.profile.LimbProfile;
import counterpull.engine.profile.Profile;
import counterpull.report.table.Column;
import counterpull.report.table.Measure;
import counterpull.report.table.NumberColumn;
import counterpull.report.table.Table;
import counterpull.report.table.WordColumn;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Several exercises or setups of one person beside each other: for each joint, where in the range it is challenged while lifting.
 *
 * @param entries what is laid side by side, two or more
 */
public record ChallengeTable(List<Entry> entries) {
    public ChallengeTable {
        entries = List.copyOf(entries);
        if (entries.size() < 2) {
            throw new IllegalArgumentException("side by side takes two or more, not " + entries.size());
        }
    }

    /**
     * One of them.
     *
     * @param name what a person calls it
     * @param profile what it asks
     */
    public record Entry(String name, Profile profile) {}

    private record Row(Entry entry, Joint joint, Challenge challenge) {
        double angle() {
            return mostAsked().angle(joint, challenge.peakAt());
        }

        LimbProfile mostAsked() {
            LimbProfile most = entry.profile().limbs().get(0);
            for (LimbProfile limb : entry.profile().limbs()) {
                if (torque(limb) > torque(most)) {
                    most = limb;
                }
            }
            return most;
        }

        private double torque(LimbProfile limb) {
            return Math.abs(limb.torque(joint, challenge.phase(), challenge.peakAt()));
        }

        String asks() {
            return mostAsked()
                    .asked(joint, challenge.phase(), challenge.peakAt())
                    .words();
        }
    }

    /** Every joint that any of them computes, in the order of the body. */
    public List<Joint> joints() {
        List<Joint> joints = new ArrayList<>();
        for (Joint joint : Joint.values()) {
            if (entries.stream().anyMatch(entry -> entry.profile().joints().contains(joint))) {
                joints.add(joint);
            }
        }
        return joints;
    }

    /** One table: rows by joint, then by exercise. */
    public Table table() {
        List<Row> rows = new ArrayList<>();
        for (Joint joint : joints()) {
            for (Entry entry : entries) {
                if (entry.profile().joints().contains(joint)) {
                    rows.add(new Row(entry, joint, Challenge.of(entry.profile(), joint, Phase.LIFTING)));
                }
            }
        }
        return table(rows);
    }

    private static Table table(List<Row> rows) {
        List<Column> columns = new ArrayList<>();
        columns.add(words("joint", rows.stream().map(row -> row.joint().words()).toList()));
        columns.add(
                words("exercise", rows.stream().map(row -> row.entry().name()).toList()));
        columns.add(words(
                "where",
                rows.stream().map(row -> row.challenge().thirds().hardest()).toList()));
        columns.add(
                numbers("at most", Measure.TORQUE, rows, row -> row.challenge().peak()));
        columns.add(words("of", rows.stream().map(Row::asks).toList()));
        columns.add(numbers("joint angle there", Measure.ANGLE, rows, Row::angle));
        columns.add(numbers(
                "effort bottom",
                Measure.EFFORT,
                rows,
                row -> row.challenge().efforts().bottom()));
        columns.add(numbers(
                "effort middle",
                Measure.EFFORT,
                rows,
                row -> row.challenge().efforts().middle()));
        columns.add(numbers(
                "effort top",
                Measure.EFFORT,
                rows,
                row -> row.challenge().efforts().top()));
        return new Table("where in the range each joint is challenged, lifting", columns, 2);
    }

    private static Column words(String title, List<String> values) {
        return new WordColumn(head(title), values);
    }

    private static Column numbers(String title, Measure measure, List<Row> rows, ToDoubleFunction<Row> value) {
        return new NumberColumn(
                head(title), measure, rows.stream().mapToDouble(value).toArray());
    }

    private static Column.Head head(String title) {
        return new Column.Head(title.replace(' ', '_'), title, title);
    }
}
