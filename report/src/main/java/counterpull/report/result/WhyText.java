package counterpull.report.result;

import counterpull.engine.profile.Why;
import counterpull.report.table.Decimals;
import counterpull.report.table.Measure;
import counterpull.report.table.Scale;
import counterpull.report.table.UnitSet;
import counterpull.report.table.Wrap;
import java.util.List;

/** Why a number is what it is, in lines that add up to it. */
public final class WhyText {
    private static final int AMOUNT_DIGITS = 3;

    private WhyText() {}

    /**
     * The number, its formula, its summands and their sum.
     *
     * @param title what the number is ("right knee extension, lifting, at 90°")
     * @param why what it is made of
     * @param units in which units
     * @param width characters in a line
     */
    public static String of(String title, Why why, UnitSet units, int width) {
        StringBuilder out = new StringBuilder();
        out.append(title)
                .append(": ")
                .append(measure(why.unit()).words(why.value(), units))
                .append('\n');
        out.append(Wrap.block(why.formula(), width, "  "));
        for (Why.Input input : why.inputs()) {
            out.append(Wrap.block(
                    input.label() + ": " + measure(input.unit()).words(input.value(), units), width, "    "));
        }
        if (!why.summands().isEmpty()) {
            summands(why, units, width, out);
        }
        return out.append(Wrap.block("Source: " + why.source(), width, "  ")).toString();
    }

    private static void summands(Why why, UnitSet units, int width, StringBuilder out) {
        Scale scale = measure(why.unit()).in(units);
        int digits = digits(why, scale);
        List<Why.Summand> some =
                why.summands().stream().filter(summand -> summand.value() != 0).toList();
        for (Why.Summand summand : some) {
            out.append(line(summand, scale, digits, width));
        }
        if (some.size() < why.summands().size()) {
            out.append(Wrap.block("(left out: what adds exactly nothing here)", width, "  "));
        }
        out.append("  ").append("─".repeat(digits)).append('\n');
        out.append("  ").append(right(scale.fixed(sum(why.summands())), digits));
        out.append(' ').append(scale.unit()).append("  sum\n");
    }

    private static Measure measure(String unit) {
        return switch (unit) {
            case "N" -> Measure.FORCE;
            case "N·m" -> Measure.TORQUE;
            case "m" -> Measure.LENGTH;
            case "m²" -> Measure.AREA;
            case "m/s" -> Measure.SPEED;
            case "m/s²" -> Measure.ACCELERATION;
            case "rad" -> Measure.ANGLE;
            case "rad/s" -> Measure.ANGULAR_SPEED;
            case "share" -> Measure.EFFORT;
            case "Pa" -> Measure.STRESS;
            default -> Measure.NUMBER;
        };
    }

    private static int digits(Why why, Scale scale) {
        int most = scale.fixed(why.value()).length();
        for (Why.Summand summand : why.summands()) {
            most = Math.max(most, scale.fixed(summand.value()).length());
        }
        return most;
    }

    private static String line(Why.Summand summand, Scale scale, int digits, int width) {
        String part = summand.part().words();
        String what = part.equals(summand.label()) ? part : part + ": " + summand.label();
        String how = summand.amount() == 1
                ? what
                : what + ", " + trimmed(summand.amount()) + " × " + scale.fixed(summand.perUnit()) + " " + scale.unit();
        String lead = "  " + right(scale.fixed(summand.value()), digits) + " " + scale.unit() + "  ";
        List<String> lines = Wrap.lines(how, Math.max(20, width - lead.length()));
        return lead + String.join("\n" + " ".repeat(lead.length()), lines) + "\n";
    }

    private static String trimmed(double amount) {
        return Decimals.exact(Double.parseDouble(Decimals.fixed(amount, AMOUNT_DIGITS)));
    }

    private static String right(String text, int width) {
        return " ".repeat(Math.max(0, width - text.length())) + text;
    }

    private static double sum(List<Why.Summand> summands) {
        double sum = 0;
        for (Why.Summand summand : summands) {
            sum += summand.value();
        }
        return sum;
    }
}
