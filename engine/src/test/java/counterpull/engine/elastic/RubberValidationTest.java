package counterpull.engine.elastic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.validation.Published;
import org.junit.jupiter.api.Test;

/** Tubes, moduli and the two-constant law beside published values. */
class RubberValidationTest {
    /** Outer diameter 10 mm, inner 6 mm. */
    private static final double TUBE_AREA = Math.PI / 4 * (0.010 * 0.010 - 0.006 * 0.006);

    private static final Rubber TUBE =
            new Rubber("tube 10/6", 0.5, TreloarRubber.of(TUBE_AREA), LossFraction.NONE, 2.0, 0, 0);

    @Test
    void marckmannAndVerron() {
        MooneyRivlin law = new MooneyRivlin(1, 0.162e6, 0.0059e6);
        double[] stretches = {1.5, 2, 3, 4, 5};
        double[] stresses = {0.3503, 0.5773, 0.9474, 1.2874, 1.6187};
        for (int i = 0; i < stretches.length; i++) {
            Published.of("Mooney–Rivlin stress at stretch " + stretches[i], "MPa")
                    .source(
                            "Marckmann & Verron 2006, Rubber Chem Technol 79:835; constants from memory; computed from the"
                                    + " stated equation, apart from this code")
                    .value(stresses[i])
                    .ours(law.tension(stretches[i]) / 1e6)
                    .within(0.51e-4, "printed to four decimals");
        }
    }

    @Test
    void forceOfATube() {
        double[] stretches = {1.25, 1.5, 2, 2.5, 3, 3.5, 4};
        double[] forces = {12.311, 20.187, 30.296, 37.528, 44.230, 51.648, 60.719};
        for (int i = 0; i < stretches.length; i++) {
            tube("force of a 10/6 mm tube at stretch " + stretches[i], "N")
                    .value(forces[i])
                    .ours(TUBE.single().force(0.5 * stretches[i]))
                    .within(0.00051, "printed to three decimals");
        }
        tube("cross-section of a 10/6 mm tube", "mm²")
                .value(50.2655)
                .ours(TUBE_AREA * 1e6)
                .within(0.51e-4, "printed to four decimals");
        tube("energy of 0.5 m of it at stretch 2", "J")
                .value(9.30875)
                .ours(TUBE.single().energy(1.0))
                .within(0.51e-5, "printed to five decimals");
    }

    private static Published tube(String quantity, String unit) {
        return Published.of(quantity, unit)
                .source(
                        "Ogden 1972, Proc R Soc A 326:565–584, set in MPa; constants from memory; computed from the stated"
                                + " equation, apart from this code");
    }

    /** Two tubes end to end are one of twice the length: the same force at the same stretch, half the stiffness. */
    @Test
    void tubesInSeriesHalveTheStiffness() {
        Strand one = TUBE.single();
        Strand two = new Strand(TUBE, 1.0);
        assertThat(two.force(1.7)).isCloseTo(one.force(0.85), within(1e-12));
        assertThat(two.stiffness(1.7)).isCloseTo(one.stiffness(0.85) / 2, within(1e-12));
    }

    /**
     * ASTM D412 and ISO 37: the stress at an elongation, colloquially the modulus, is force over the original
     * cross-section at that elongation, not the slope there.
     */
    @Test
    void aModulusIsAStressAndNoSlope() {
        double m100 = TreloarRubber.ROUNDED.tension(2);
        assertThat(TUBE.single().force(1.0)).as("M100 × original area").isCloseTo(m100 * TUBE_AREA, within(1e-9));
        assertThat(TreloarRubber.ROUNDED.slope(2)).as("the slope at 100 %").isLessThan(0.6 * m100);
        assertThat(TreloarRubber.ROUNDED.slope(1)).as("the slope at rest").isGreaterThan(2 * m100);
    }

    /** A-A-50247C, dipped latex tubing, looked up: modulus at 100 % at most 125 psi. A plausible gum rubber keeps it. */
    @Test
    void gumRubberKeepsTheTubingSpecification() {
        double psi = 0.45359237 * 9.80665 / (0.0254 * 0.0254);
        Published.of("125 psi", "MPa")
                .source("A-A-50247C, modulus at 100 % elongation; looked up")
                .value(0.862)
                .ours(125 * psi / 1e6)
                .within(0.00051, "printed to three decimals");
        assertThat(TreloarRubber.ROUNDED.tension(2)).isBetween(0.5 * 125 * psi, 125 * psi);
        assertThat(new MooneyRivlin(1, 0.162e6, 0.0059e6).tension(2)).isBetween(0.5 * 125 * psi, 125 * psi);
    }

    /**
     * A limb of length r about a joint, a strand to an anchor at distance D: torque = F r D sin t / s. Computed; the work
     * of the torque is the energy of the strand. Step of the central difference 1e-5 rad.
     */
    @Test
    void theWorkOfAStrandOnALimbIsItsEnergy() {
        Strand strand = new Strand(TUBE, 0.25);
        double step = 1e-5;
        for (double angle = 0.3; angle < 3.0; angle += 0.1) {
            double length = limb(angle);
            double torque = strand.force(length) * 0.3 * 0.5 * Math.sin(angle) / length;
            double work = (strand.energy(limb(angle + step)) - strand.energy(limb(angle - step))) / (2 * step);
            assertThat(work).as("at %s rad", angle).isCloseTo(torque, within(1e-6));
        }
    }

    private static double limb(double angle) {
        return Math.sqrt(0.3 * 0.3 + 0.5 * 0.5 - 2 * 0.3 * 0.5 * Math.cos(angle));
    }
}
