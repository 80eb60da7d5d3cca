package counterpull.engine.load;

import counterpull.engine.Require;

/**
 * What rides on a sled's rail before plates and person.
 *
 * @param mass kg, zero or more
 * @param counterweight what balances part of it
 * @param friction friction on the rail
 * @param mostPlates what horns and carriage are rated for, kg of plates in all; infinite where not stated
 */
public record Carriage(double mass, Counterweight counterweight, Friction friction, double mostPlates) {
    public Carriage {
        Require.within(mass, new Require.Limits(0, 2000), "carriage mass", "kg");
        if (mostPlates != Double.POSITIVE_INFINITY) {
            Require.within(mostPlates, new Require.Limits(0, Double.MAX_VALUE), "rating of the horns for plates", "kg");
        }
    }

    /** The same carriage with another mass, kg. */
    public Carriage ofMass(double other) {
        return new Carriage(other, counterweight, friction, mostPlates);
    }

    /** The same carriage with other friction. */
    public Carriage with(Friction other) {
        return new Carriage(mass, counterweight, other, mostPlates);
    }
}
