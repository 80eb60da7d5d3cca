package counterpull.report.bench;

import counterpull.bench.Estimate;
import counterpull.bench.Kind;
import counterpull.bench.Remark;
import counterpull.scenario.units.Dimension;
import counterpull.scenario.units.Units;
import counterpull.scenario.units.Written;

/** The bench's numbers and remarks in a reader's units. */
public final class BenchWords {
    private final Units units;

    /** For a reader of these units. */
    public BenchWords(Units units) {
        this.units = units;
    }

    /** A number with its unit, three significant digits or its whole part. */
    public String say(double si, Kind kind) {
        return switch (kind) {
            case COUNT -> String.valueOf(Math.round(si));
            case NUMBER -> Units.METRIC.written(si / 100, Dimension.RATIO).number();
            case FORCE_RATE -> units.written(si, Dimension.FORCE) + " in a second";
            default -> units.written(si, dimension(kind)).toString();
        };
    }

    /** A value with its standard error: "38.4 ± 0.6 kg". */
    public String say(Estimate estimate, Kind kind) {
        Written written = kind == Kind.NUMBER
                ? new Written(
                        Units.METRIC
                                .writtenWithin(estimate.value() / 100, estimate.standardError() / 100, Dimension.RATIO)
                                .number(),
                        "")
                : units.writtenWithin(estimate.value(), estimate.standardError(), dimension(kind));
        return written.toString();
    }

    /** The interval that holds the truth 95 times in 100: "37.1 to 39.7 kg". */
    public String interval(Estimate estimate, Kind kind) {
        return say(estimate.low(), kind) + " to " + say(estimate.high(), kind);
    }

    /** A share as a whole percentage: "12 %". */
    static String percent(double share) {
        return Math.round(100 * share) + "\u2009%";
    }

    /** A share as a whole percentage with its sign: "+12 %", "−3 %". */
    static String signed(double share) {
        long percent = Math.round(100 * share);
        return (percent > 0 ? "+" : percent < 0 ? "−" : "") + Math.abs(percent) + "\u2009%";
    }

    /** A change of an angle in whole degrees with its sign. */
    static String turned(double radians) {
        long degrees = Math.round(Math.toDegrees(radians));
        return (degrees > 0 ? "+" : degrees < 0 ? "−" : "") + Math.abs(degrees) + "°";
    }

    /** An angle in whole degrees. */
    static String degrees(double radians) {
        return Math.round(Math.toDegrees(radians)) + "°";
    }

    /** A remark as a whole sentence. */
    public String say(Remark remark) {
        StringBuilder words = new StringBuilder();
        for (Remark.Piece piece : remark.sentence()) {
            if (piece instanceof Remark.Text text) {
                words.append(text.words());
            } else if (piece instanceof Remark.Amount amount) {
                words.append(say(amount.value(), amount.kind()));
            }
        }
        String sentence = words.toString();
        String whole = Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
        return whole.endsWith(".") || whole.endsWith("?") ? whole : whole + ".";
    }

    private static Dimension dimension(Kind kind) {
        return switch (kind) {
            case LENGTH -> Dimension.LENGTH;
            case FORCE, FORCE_RATE -> Dimension.FORCE;
            case MASS -> Dimension.MASS;
            case ANGLE -> Dimension.ANGLE;
            case TORQUE -> Dimension.TORQUE;
            case STIFFNESS -> Dimension.STIFFNESS;
            case STRESS -> Dimension.STRESS;
            case TIME -> Dimension.TIME;
            case SHARE, NUMBER, COUNT -> Dimension.RATIO;
        };
    }
}
