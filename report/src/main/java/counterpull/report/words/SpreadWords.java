package counterpull.report.words;

import counterpull.engine.uncertainty.Spread;
import counterpull.report.table.Decimals;
import counterpull.report.table.Measure;
import counterpull.report.table.UnitSet;

/** Standard uncertainties, shares and chances as a person reads them. */
public final class SpreadWords {
    private SpreadWords() {}

    /** "±0.5°". */
    public static String of(Spread spread, UnitSet units) {
        double value = spread.value();
        return "\u00B1"
                + switch (spread.kind()) {
                    case ANGLE -> SetupWords.trimmed(Measure.ANGLE, value, units);
                    case LENGTH -> SetupWords.trimmed(Measure.LENGTH, value, units);
                    case MASS -> SetupWords.trimmed(Measure.MASS, value, units);
                    case FORCE -> SetupWords.trimmed(Measure.FORCE, value, units);
                    case SHARE -> share(value);
                    case NUMBER -> Decimals.exact(Double.parseDouble(Decimals.fixed(value, 3)));
                };
    }

    /** A share as a percentage: whole from 10 % on, else with a tenth, without a zero at the end. */
    public static String share(double value) {
        String digits = Decimals.fixed(100 * value, value < 0.0995 ? 1 : 0);
        return (digits.endsWith(".0") ? digits.substring(0, digits.length() - 2) : digits) + "\u00A0%";
    }

    /** Where an uncertainty comes from, short: of strength what stands before the details. */
    public static String source(String whole) {
        int end = whole.length();
        for (String detail : new String[] {": published", " (Anderson", "; "}) {
            int cut = whole.indexOf(detail);
            end = cut > 0 ? Math.min(end, cut) : end;
        }
        return whole.substring(0, end);
    }
}
