package counterpull.engine.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.elastic.LinearLaw;
import counterpull.engine.elastic.LossFraction;
import counterpull.engine.elastic.Rubber;
import counterpull.engine.elastic.Strand;
import counterpull.engine.planar.Vec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Rubber from an anchor at distance D from a joint to a point of the limb at distance r, the angle t between the two: torque = F(s) r D
 * sin t / s with s² = r² + D² − 2 r D cos t. K = 150 N/m, r = 0.35 m, D = 0.60 m.
 */
class ElasticOnLimbValidationTest {
    private static final String SOURCE =
            "Biscarini 2012, Med Eng Phys 34:9, geometry of elastic resistance; abstract looked up, values computed by hand";
    private static final double STIFFNESS = 150;
    private static final double ON_LIMB = 0.35;
    private static final double ANCHOR = 0.60;

    /** What the joint must give against a rubber of this natural length, N·m. */
    private static double torque(double degrees, double naturalLength) {
        LinearLaw law = LinearLaw.ofStiffness(STIFFNESS, naturalLength);
        Strand strand = new Rubber("rubber", naturalLength, law, LossFraction.NONE, 2, 0, 0).single();
        Vec toAnchor =
                new Vec(ANCHOR, 0).minus(Vec.unit(Math.toRadians(degrees)).times(ON_LIMB));
        double length = toAnchor.norm();
        return new StillSegment(1, 0, degrees, 0)
                .force(ON_LIMB, toAnchor.times(strand.force(length) / length))
                .torque();
    }

    /** A rubber that would be of no length when slack pulls as a spring to the anchor itself: K r D sin t. */
    @ParameterizedTest
    @CsvSource({"30, 15.75", "60, 27.2798", "90, 31.5", "120, 27.2798", "150, 15.75"})
    void withoutNaturalLengthTheTorqueIsASine(double degrees, double value) {
        Published.of("torque of rubber without natural length, at " + degrees + "°", "N·m")
                .source(SOURCE)
                .value(value)
                .ours(torque(degrees, 1e-9))
                .within(0.000051, "given to four decimals; a natural length of 1 nm stands for none");
    }

    @ParameterizedTest
    @CsvSource({"30, 4.3247", "60, 14.2151", "90, 20.1629", "120, 19.0844", "150, 11.4697"})
    void withANaturalLengthOfAQuarterMetre(double degrees, double value) {
        Published.of("torque of rubber 0.25 m long, at " + degrees + "°", "N·m")
                .source(SOURCE)
                .value(value)
                .ours(torque(degrees, 0.25))
                .within(0.000051, "given to four decimals");
    }

    /** In line with the joint rubber turns nothing, however hard it pulls. */
    @Test
    void inLineItTurnsNothing() {
        // 1e-15 rad of rounding times 150 N/m and half a metre
        assertThat(torque(0, 0.2)).isCloseTo(0, within(1e-12));
        assertThat(torque(180, 0.2)).isCloseTo(0, within(1e-12));
    }

    /** The longer the rubber, the farther the limb has gone when it asks most: from 90° toward 180°. */
    @Test
    void theHardestPlaceMovesOutWithNaturalLength() {
        double before = 89.9;
        for (double natural : new double[] {1e-9, 0.2, 0.4, 0.6, 0.8}) {
            double place = hardest(natural);
            assertThat(place).as("rubber of %s m", natural).isGreaterThan(before);
            before = place;
        }
        assertThat(before).isLessThan(180);
    }

    private static double hardest(double natural) {
        double best = 0;
        for (double degrees = 0; degrees <= 180; degrees += 0.25) {
            best = torque(degrees, natural) > torque(best, natural) ? degrees : best;
        }
        return best;
    }
}
