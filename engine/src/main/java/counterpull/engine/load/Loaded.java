package counterpull.engine.load;

import counterpull.engine.Require;
import java.util.ArrayList;
import java.util.List;

/**
 * A mass that is always there, and whether the chosen plates come on top of it.
 *
 * @param own kg, zero or more
 * @param plates whether the chosen plates go here
 */
public record Loaded(double own, Plates plates) {
    private static final Require.Limits MASS = new Require.Limits(0, 2000);

    /** Whether the plates that a person chooses go here. */
    public enum Plates {
        /** They go elsewhere, or there are none. */
        ELSEWHERE,
        /** They go here. */
        HERE
    }

    public Loaded {
        Require.within(own, MASS, "mass that is always there", "kg");
    }

    /** Always this mass, kg. */
    public static Loaded always(double mass) {
        return new Loaded(mass, Plates.ELSEWHERE);
    }

    /** The chosen plates on top of this mass, kg. */
    public static Loaded with(double own) {
        return new Loaded(own, Plates.HERE);
    }

    /** Mass for so many kilograms of chosen plates. */
    public double mass(double chosen) {
        return plates == Plates.HERE ? own + chosen : own;
    }

    /**
     * What a force per kilogram adds up to: a summand for the mass that is always there, one for the plates.
     *
     * @param part what it comes from
     * @param label what it is, in words
     * @param perKilogram N or N·m per kilogram, by phase × position
     */
    public List<Share> shares(Part part, String label, double[] perKilogram) {
        List<Share> shares = new ArrayList<>();
        if (own > 0) {
            shares.add(new Share(part, label, Amount.ONE, scaled(perKilogram, own)));
        }
        if (plates == Plates.HERE) {
            shares.add(new Share(part, label + ", chosen kilograms", Amount.PLATES, perKilogram));
        }
        return shares;
    }

    private static double[] scaled(double[] values, double factor) {
        double[] scaled = values.clone();
        for (int at = 0; at < scaled.length; at++) {
            scaled[at] *= factor;
        }
        return scaled;
    }

    /** The same with so many times the mass that is always there; factor zero or more. */
    public Loaded times(double factor) {
        return new Loaded(factor * own, plates);
    }
}
