package counterpull.report.bench;

import counterpull.bench.Answer;
import counterpull.bench.Kind;
import counterpull.bench.trace.Effort;
import counterpull.bench.trace.Plateau;
import counterpull.bench.trace.Rest;
import counterpull.bench.trace.Rise;
import counterpull.bench.trace.Trace;
import counterpull.bench.trace.TraceBench;
import counterpull.bench.trace.TraceFindings;
import counterpull.report.table.Column;
import counterpull.report.table.Measure;
import counterpull.report.table.NumberColumn;
import counterpull.report.table.Table;
import counterpull.scenario.units.Dimension;
import counterpull.scenario.units.Quantity;
import counterpull.scenario.units.Unit;
import counterpull.scenario.units.Units;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** What a force–time trace says, for people. */
public final class TraceSection {
    /** Which force of an effort is taken for a strength test. */
    public enum Take {
        /** The largest mean over a second; where an effort was shorter, its peak. */
        PLATEAU("best second"),
        /** The highest sample. */
        PEAK("peak");

        private final String words;

        Take(String words) {
            this.words = words;
        }
    }

    /** Whether the limb's own weight is in the forces. */
    public enum Gravity {
        /** It is, as the device showed them. */
        AS_SHOWN,
        /** It is not. */
        TAKEN_OFF
    }

    /**
     * A trace with how it is to be read.
     *
     * @param name the file's name
     * @param trace samples
     * @param take which force is for a strength test
     * @param gravity whether the limb's weight was taken off
     */
    public record Read(String name, Trace trace, Take take, Gravity gravity) {}

    private static final double RESTS_HEAVILY = 0.05;
    private static final int WINDOWS = 4;

    private final Read read;
    private final Units units;
    private final BenchWords words;

    private TraceSection(Read read, Units units) {
        this.read = read;
        this.units = units;
        words = new BenchWords(units);
    }

    /** The section of a trace. */
    public static BenchSection of(Read read, Units units) {
        Answer<TraceFindings> answer = TraceBench.of(read.trace());
        TraceSection section = new TraceSection(read, units);
        return answer.result()
                .map(findings -> section.found(findings, answer))
                .orElseGet(() -> BenchSection.refused(section.title(), answer.remarks()));
    }

    private String title() {
        return "Trace " + read.name();
    }

    private BenchSection found(TraceFindings findings, Answer<TraceFindings> answer) {
        return new BenchSection(
                title(),
                headline(findings),
                sentences(findings),
                List.of(forces(findings), rises(findings)),
                new TraceCharts(read.trace(), findings).all(),
                answer.remarks(),
                "");
    }

    private String headline(TraceFindings findings) {
        Effort best = findings.best();
        String effort = findings.efforts().size() == 1 ? "The effort" : "The best effort, " + best.number() + ",";
        String peak = "peaked at " + words.say(best.peak().force(), Kind.FORCE);
        return effort + " "
                + best.plateau()
                        .map(plateau ->
                                "held " + words.say(plateau.mean(), Kind.FORCE) + " over its best second and " + peak)
                        .orElse(peak);
    }

    private List<String> sentences(TraceFindings findings) {
        List<String> sentences = new ArrayList<>();
        sentences.add(findings.rest()
                .map(rest -> rest(rest, findings.best().peak().force()))
                .orElse("The trace shows no rest before the first effort."));
        best(findings, sentences);
        sentences.add(
                "Efforts are told apart like this: one begins where the force passes half the way from its low level to its"
                        + " highest, and ends where it then stays below a quarter of that way for half a second. An onset is where the force"
                        + " last passes the resting mean by three of its standard deviations, or by 2 % of the rise where that is more.");
        return sentences;
    }

    private String rest(Rest rest, double peak) {
        String said = "At rest the device shows " + words.say(rest.mean(), Kind.FORCE) + " (standard deviation "
                + words.say(rest.sd(), Kind.FORCE) + ", " + rest.samples() + " samples). ";
        if (read.gravity() == Gravity.AS_SHOWN) {
            return said
                    + "That is the limb's own weight on the pad, or a device that was not set to zero; it is still in every force"
                    + " here.";
        }
        boolean heavy = Math.abs(rest.mean()) > RESTS_HEAVILY * peak;
        return said
                + (heavy
                        ? "The limb's weight is said to be taken off, and yet this is more than 5 % of the peak: check it."
                        : "The limb's weight is said to be taken off.");
    }

    private void best(TraceFindings findings, List<String> sentences) {
        OptionalDouble scatter = findings.scatter();
        if (scatter.isPresent()) {
            sentences.add("The best seconds of " + findings.efforts().size() + " efforts scatter by "
                    + words.say(scatter.getAsDouble(), Kind.SHARE)
                    + " (standard deviation over mean). The best of several is a little"
                    + " above what the person usually does.");
        }
    }

    private Table forces(TraceFindings findings) {
        return table(
                "Forces, as the device showed them",
                findings,
                List.of(
                        new Shown("onset", "onset", "when the force leaves rest", Measure.TIME, this::onset),
                        new Shown(
                                "peak",
                                "peak",
                                "highest sample",
                                Measure.FORCE,
                                effort -> effort.peak().force()),
                        new Shown(
                                "best_second",
                                "best second",
                                "largest mean over one second",
                                Measure.FORCE,
                                effort -> plateau(effort, Plateau::mean)),
                        new Shown(
                                "from",
                                "from",
                                "when that second begins",
                                Measure.TIME,
                                effort -> plateau(effort, Plateau::from)
                                        - read.trace().begin()),
                        new Shown(
                                "swing",
                                "swing",
                                "standard deviation inside that second over its mean",
                                Measure.EFFORT_FINE,
                                effort -> plateau(effort, Plateau::steadiness))));
    }

    private double onset(Effort effort) {
        return effort.onset().map(onset -> onset.time() - read.trace().begin()).orElse(Double.NaN);
    }

    private static Table rises(TraceFindings findings) {
        List<Shown> columns = new ArrayList<>();
        for (int i = 0; i < WINDOWS; i++) {
            int window = i;
            int ms = 50 * (i + 1);
            columns.add(new Shown(
                    "rise_" + ms + "_ms",
                    ms + " ms",
                    "mean rate of rise over so long from the onset",
                    Measure.FORCE_RATE,
                    effort -> effort.rises().isEmpty()
                            ? Double.NaN
                            : rate(effort.rises().get(window))));
        }
        columns.add(new Shown(
                "steepest",
                "steepest",
                "largest rate of rise over 20 ms",
                Measure.FORCE_RATE,
                effort -> rate(effort.steepest())));
        return table("Rate of rise: over so long from the onset, and the steepest 20 ms anywhere", findings, columns);
    }

    private static double rate(Rise rise) {
        return rise.known() ? rise.rate() : Double.NaN;
    }

    private static double plateau(Effort effort, ToDoubleFunction<Plateau> what) {
        return effort.plateau().map(what::applyAsDouble).orElse(Double.NaN);
    }

    /** A column of the efforts' numbers. */
    private record Shown(String key, String title, String meaning, Measure measure, ToDoubleFunction<Effort> value) {
        Column column(List<Effort> efforts) {
            return new NumberColumn(
                    new Column.Head(key, title, meaning),
                    measure,
                    efforts.stream().mapToDouble(value).toArray());
        }
    }

    private static Table table(String title, TraceFindings findings, List<Shown> more) {
        List<Shown> shown = new ArrayList<>();
        shown.add(new Shown("effort", "effort", "which effort, in order of time", Measure.COUNT, Effort::number));
        shown.addAll(more);
        return new Table(
                title,
                shown.stream().map(each -> each.column(findings.efforts())).toList(),
                1);
    }

    /**
     * The lines for a strength test in a file of readings: the force of each effort, and the limb's weight as the trace has it; empty where
     * the trace says nothing.
     */
    public static String forTest(Read read, Units units) {
        return TraceBench.of(read.trace())
                .result()
                .map(findings -> new TraceSection(read, units).lines(findings))
                .orElse("");
    }

    private String lines(TraceFindings findings) {
        String forces = findings.efforts().stream()
                .map(effort -> "{force: " + short4(taken(effort)) + "}")
                .collect(Collectors.joining(", "));
        StringBuilder lines = new StringBuilder("efforts: [" + forces + "]   # each its " + read.take().words + "\n");
        if (read.gravity() == Gravity.TAKEN_OFF) {
            lines.append("limb: borne   # its weight was taken off already\n");
        } else {
            findings.rest()
                    .ifPresent(rest -> lines.append("resting: ")
                            .append(short4(rest.mean()))
                            .append("   # the relaxed limb on the device, before the first effort\n"));
        }
        return lines.toString();
    }

    private double taken(Effort effort) {
        return read.take() == Take.PLATEAU && effort.plateau().isPresent()
                ? effort.plateau().get().mean()
                : effort.peak().force();
    }

    /** Four digits: more than any device bears, and none lost. */
    private String short4(double newton) {
        Unit unit = units.unit(Dimension.FORCE);
        double digits =
                new BigDecimal(unit.fromSi(newton)).round(new MathContext(4)).doubleValue();
        return new Quantity(digits, unit).toString();
    }
}
