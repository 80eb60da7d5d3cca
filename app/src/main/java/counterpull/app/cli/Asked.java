package counterpull.app.cli;

import counterpull.scenario.units.Dimension;
import counterpull.scenario.units.QuantityText;
import counterpull.scenario.units.Reading;
import java.util.List;

/** Quantities given as options. */
final class Asked {
    private Asked() {}

    /** An angle with its unit, rad. */
    static double angle(String option, String text) {
        return read(option, text, Dimension.ANGLE, "75 deg");
    }

    /** A length with its unit, m. */
    static double length(String option, String text) {
        return read(option, text, Dimension.LENGTH, "12 cm");
    }

    /** A time with its unit, more than nothing, s. */
    static double seconds(String option, String text) {
        double seconds = read(option, text, Dimension.TIME, "30 s");
        if (!(seconds > 0)) {
            throw new BadInput(List.of(option + ": " + text + " must be more than 0 s"));
        }
        return seconds;
    }

    private static double read(String option, String text, Dimension wanted, String example) {
        if (QuantityText.read(text, wanted) instanceof Reading.Read read) {
            return read.quantity().si();
        }
        throw new BadInput(List.of(option + ": \"" + text + "\" is not read; write for instance \"" + example + "\""));
    }
}
