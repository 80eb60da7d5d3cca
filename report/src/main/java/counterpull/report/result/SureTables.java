package counterpull.report.result;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.Profile;
import counterpull.engine.uncertainty.Band;
import counterpull.engine.uncertainty.Contribution;
import counterpull.engine.uncertainty.Contributions;
import counterpull.engine.uncertainty.HowSure;
import counterpull.engine.uncertainty.NextReading;
import counterpull.report.table.Column;
import counterpull.report.table.Measure;
import counterpull.report.table.NumberColumn;
import counterpull.report.table.Table;
import counterpull.report.table.UnitSet;
import counterpull.report.table.WordColumn;
import counterpull.report.words.SpreadWords;
import counterpull.report.words.SureWords;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.IntToDoubleFunction;
import java.util.function.ToDoubleFunction;

/** How sure an answer is, as tables. */
public final class SureTables {
    private static final double WORTH_A_ROW = 0.005;

    private SureTables() {}

    /** Bands of one phase along the range, for each joint with a known effort: low, middle, high. */
    public static Table bands(HowSure sure, Phase phase) {
        Profile profile = sure.profile();
        List<Column> columns = new ArrayList<>();
        Measure driving = profile.driver().isPresent() ? Measure.ANGLE : Measure.LENGTH;
        String name = profile.driver().map(Joint::angleWords).orElse("travel");
        columns.add(along(profile, name, driving, profile::driving));
        int leading = 1;
        if (profile instanceof PressProfile press) {
            columns.add(along(profile, "tape mark", Measure.LENGTH, press::mark));
            leading = 2;
        }
        for (Joint joint : profile.joints()) {
            columns.addAll(bands(sure, joint, phase));
        }
        return new Table(
                "effort " + phase.words()
                        + ", from the bottom (first line) to the top: one draw in twenty lies below low,"
                        + " one in twenty above high",
                columns,
                leading);
    }

    private static List<Column> bands(HowSure sure, Joint joint, Phase phase) {
        IntToDoubleFunction middle = i -> sure.bands().effort(joint, phase, i).middle();
        boolean known = false;
        for (int i = 0; i < sure.profile().positions(); i++) {
            known |= !Double.isNaN(middle.applyAsDouble(i));
        }
        if (!known) {
            return List.of();
        }
        Profile profile = sure.profile();
        String of = joint.words() + " ";
        return List.of(
                along(
                        profile,
                        of + "low",
                        Measure.EFFORT,
                        i -> sure.bands().effort(joint, phase, i).low()),
                along(profile, of + "middle", Measure.EFFORT, middle),
                along(
                        profile,
                        of + "high",
                        Measure.EFFORT,
                        i -> sure.bands().effort(joint, phase, i).high()));
    }

    private static Column along(Profile profile, String title, Measure measure, IntToDoubleFunction value) {
        double[] values = new double[profile.positions()];
        for (int i = 0; i < values.length; i++) {
            values[i] = value.applyAsDouble(i);
        }
        return new NumberColumn(new Column.Head(title.replace(' ', '_'), title, title), measure, values);
    }

    /** Every band: one row for each phase, position and joint. */
    public static Table everything(HowSure sure) {
        List<Row> rows = new ArrayList<>();
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < sure.profile().positions(); i++) {
                for (Joint joint : sure.profile().joints()) {
                    rows.add(new Row(phase, i, joint, sure.bands().effort(joint, phase, i)));
                }
            }
        }
        Profile profile = sure.profile();
        Measure driving = profile.driver().isPresent() ? Measure.ANGLE : Measure.LENGTH;
        String name = profile.driver().map(Joint::angleWords).orElse("travel");
        return new Table(
                "bands of effort",
                List.of(
                        words(rows, head("phase", "which part of the repetition"), row -> row.phase.words()),
                        numbers(
                                rows,
                                head(name.replace(' ', '_'), "where in the range"),
                                driving,
                                row -> profile.driving(row.position)),
                        words(
                                rows,
                                head("joint", "which joint; the larger of both limbs' efforts"),
                                row -> row.joint.words()),
                        numbers(
                                rows,
                                head("low", "one draw in twenty lies below"),
                                Measure.EFFORT,
                                row -> row.band.low()),
                        numbers(
                                rows,
                                head("middle", "half of the draws lie below"),
                                Measure.EFFORT,
                                row -> row.band.middle()),
                        numbers(
                                rows,
                                head("high", "one draw in twenty lies above"),
                                Measure.EFFORT,
                                row -> row.band.high()),
                        numbers(
                                rows,
                                head("known", "share of the draws that know it"),
                                Measure.FRACTION,
                                row -> row.band.known())),
                3);
    }

    private record Row(Phase phase, int position, Joint joint, Band band) {}

    /** What contributes, ranked; inputs with less than half a percent of the variance are left out. */
    public static Table contributions(Contributions found, UnitSet units) {
        List<Contribution> rows = found.ranked().stream()
                .filter(one -> one.share() >= WORTH_A_ROW)
                .toList();
        return contributions(
                rows, units, "what makes the largest effort unsure; each \u00B1 is one standard uncertainty");
    }

    /** All of what contributes. */
    public static Table allContributions(Contributions found, UnitSet units) {
        return contributions(found.ranked(), units, "contributions to the largest effort");
    }

    private static Table contributions(List<Contribution> rows, UnitSet units, String title) {
        return new Table(
                title,
                List.of(
                        words(rows, new Column.Head("input", "not known exactly", "the input"), Contribution::name),
                        words(
                                rows,
                                new Column.Head("uncertainty", "known to", "its standard uncertainty"),
                                one -> SpreadWords.of(one.spread(), units)),
                        numbers(
                                rows,
                                new Column.Head("low", "moves effort from", "largest effort at one end"),
                                Measure.EFFORT_FINE,
                                Contribution::low),
                        numbers(
                                rows,
                                new Column.Head("high", "to", "largest effort at the other end"),
                                Measure.EFFORT_FINE,
                                Contribution::high),
                        numbers(
                                rows,
                                new Column.Head("share", "share of variance", "share of the variance of its logarithm"),
                                Measure.FRACTION,
                                Contribution::share),
                        words(
                                rows,
                                new Column.Head("source", "where the ± comes from", "where the uncertainty comes from"),
                                one -> SpreadWords.source(one.source()))),
                1);
    }

    /** The sentence about the inputs that are too small for a row; empty where there are none. */
    public static String rest(Contributions found) {
        double share = 0;
        int count = 0;
        for (Contribution one : found.ranked()) {
            if (one.share() < WORTH_A_ROW) {
                share += one.share();
                count++;
            }
        }
        String immovable = found.immovable().isEmpty()
                ? ""
                : " Could not be moved to either side: " + String.join(", ", found.immovable()) + ".";
        if (count == 0) {
            return immovable.trim();
        }
        return "The other " + count + " inputs make " + SpreadWords.share(share) + " of the variance together."
                + immovable;
    }

    /** The readings worth taking next, at most so many. */
    public static Table next(HowSure sure, UnitSet units, int most) {
        SureWords words = new SureWords(sure, units);
        List<NextReading> rows = sure.next().stream().limit(most).toList();
        return new Table(
                "which reading next; how well the largest effort would be known after it",
                List.of(
                        words(
                                rows,
                                new Column.Head("reading", "reading", "what to read"),
                                one -> words.reading(one.what())),
                        numbers(
                                rows,
                                new Column.Head("after", "known to ± after it", "standard uncertainty after it"),
                                Measure.EFFORT_FINE,
                                NextReading::after)),
                1);
    }

    private static Column.Head head(String key, String meaning) {
        return new Column.Head(key, key.replace('_', ' '), meaning);
    }

    private static <R> Column words(List<R> rows, Column.Head head, Function<R, String> value) {
        return new WordColumn(head, rows.stream().map(value).toList());
    }

    private static <R> Column numbers(List<R> rows, Column.Head head, Measure measure, ToDoubleFunction<R> value) {
        return new NumberColumn(head, measure, rows.stream().mapToDouble(value).toArray());
    }
}
