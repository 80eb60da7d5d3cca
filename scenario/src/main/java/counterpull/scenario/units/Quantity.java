package counterpull.scenario.units;

/**
 * A number with its unit, as a person wrote it.
 *
 * @param value the number, in {@code unit}; finite
 * @param unit its unit
 */
public record Quantity(double value, Unit unit) {

    /** The value in SI (radians for an angle, years for an age). */
    public double si() {
        return unit.toSi(value);
    }

    /** What kind of quantity it is. */
    public Dimension dimension() {
        return unit.dimension();
    }

    /** The shortest text that reads back as this quantity: {@code 38 cm}, {@code 0.5}. */
    @Override
    public String toString() {
        return (Digits.exact(value) + " " + unit.symbol()).strip();
    }

    /**
     * An SI value as a quantity that reads back to exactly that SI value, in the wanted unit where a number of at most 17
     * digits does so and in the SI unit otherwise.
     */
    public static Quantity exactly(double si, Unit wanted) {
        for (int digits = 6; digits <= 17; digits++) {
            double candidate = Digits.rounded(wanted.fromSi(si), digits);
            if (wanted.toSi(candidate) == si) {
                return new Quantity(candidate, wanted);
            }
        }
        return new Quantity(si, Unit.si(wanted.dimension()));
    }
}
