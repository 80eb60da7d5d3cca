package counterpull.engine.validation;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * A check of one of our numbers against a published one. It asserts, and writes the row down for docs/validation.md:
 *
 * <pre>{@code
 * Published.of("knee extension, held, 60°", "N·m").source("Anderson 2007, Table 3; looked up")
 *         .value(208.65).ours(torque).within(0.01, "published to two decimals");
 * }</pre>
 *
 * <p>The row lands in {@code target/validation/<TestClass>.tsv} of the module whose test calls this; the heading is
 * the test class's name in words unless {@link #section} says otherwise. Within a section a quantity may have only one
 * value for each source.
 */
public final class Published {
    private final String quantity;
    private final String unit;
    private String section = ValidationLog.headingOf(ValidationLog.callingTest());
    private String source = "";
    private double value = Double.NaN;
    private double ours = Double.NaN;

    private Published(String quantity, String unit) {
        this.quantity = quantity;
        this.unit = unit;
    }

    /** Starts a check; the unit is empty for a pure number. */
    public static Published of(String quantity, String unit) {
        return new Published(quantity, unit);
    }

    /** The heading under which the row is printed, in place of the test class's name. */
    public Published section(String heading) {
        section = heading;
        return this;
    }

    /** Author, year, table or equation, and how it was got ("looked up", "from memory", "computed"). */
    public Published source(String text) {
        source = text;
        return this;
    }

    /** The published value. */
    public Published value(double published) {
        value = published;
        return this;
    }

    /** The value computed here. */
    public Published ours(double computed) {
        ours = computed;
        return this;
    }

    /** Asserts |ours − published| ≤ tolerance, in the quantity's unit, and writes the row. */
    public void within(double tolerance, String reason) {
        check(tolerance, Digits.plain(tolerance), reason);
    }

    /** Asserts |ours − published| ≤ fraction × |published| and writes the row. */
    public void withinRelative(double fraction, String reason) {
        check(fraction * Math.abs(value), Digits.plain(100 * fraction) + " %", reason);
    }

    private void check(double tolerance, String printed, String reason) {
        assertThat(source).as("source of: %s", quantity).isNotBlank();
        assertThat(reason).as("reason for the tolerance of: %s", quantity).isNotBlank();
        assertThat(tolerance).as("tolerance of: %s", quantity).isFinite().isNotNegative();
        assertThat(value).as("published value of: %s", quantity).isFinite();
        assertThat(ours).as("our value of: %s", quantity).isFinite();
        assertThat(Math.abs(ours - value))
                .as("%s: published %s, ours %s %s (%s; tolerance: %s)", quantity, value, ours, unit, source, reason)
                .isLessThanOrEqualTo(tolerance);
        ValidationLog.add(new Row(
                section,
                quantity,
                unit,
                Digits.plain(value),
                Digits.ours(ours, value),
                Digits.difference(ours, value),
                printed,
                reason,
                source));
    }
}
