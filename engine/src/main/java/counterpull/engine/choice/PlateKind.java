package counterpull.engine.choice;

import counterpull.engine.Require;

/**
 * Plates of one mass on hand.
 *
 * @param name what is written on them ("20 kg", "45 lb")
 * @param mass of one, kg, above zero
 * @param count how many there are
 */
public record PlateKind(String name, double mass, int count) {
    public PlateKind {
        Require.positive(mass, "plate mass", "kg");
        Require.within(count, new Require.Limits(0, 200), "number of plates", "");
    }
}
