package counterpull.engine.choice;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.elastic.LinearLaw;
import counterpull.engine.elastic.LossFraction;
import counterpull.engine.elastic.Rubber;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.LineSeries;
import counterpull.engine.load.SledFrame;
import counterpull.engine.motion.Rail;
import counterpull.engine.motion.Ride;
import counterpull.engine.motion.SeatSetting;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.Trials;
import java.util.EnumSet;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a line does over the plate's way from 0.6 to 0.9 m. */
class LineEffectTest {
    private static final int POSITIONS = 16;

    private static LineEffect effect(Ride ride, double natural, Vec anchor) {
        // tested to thirty times its length: past that a line is refused before its effect is asked for
        Rubber rubber =
                new Rubber("r", natural, LinearLaw.ofStiffness(100, natural), LossFraction.NONE, 30 * natural, 0, 0);
        ElasticLine line = Trials.line(rubber, anchor, new Vec(0, 0));
        double[] plate = new double[POSITIONS];
        for (int i = 0; i < POSITIONS; i++) {
            plate[i] = 0.6 + 0.3 * i / (POSITIONS - 1);
        }
        SledFrame frame = new SledFrame(new Rail(0.7, ride, 0, 1), new SeatSetting("s", 1, 1, 0, 2));
        return LineEffect.of(LineSeries.of(line, plate, frame), POSITIONS);
    }

    @Test
    void hungAboveItRelievesLow() {
        assertThat(effect(Ride.PLATE, 0.5, new Vec(1.6, 0.2))).isEqualTo(LineEffect.RELIEVES_LOW);
        // slack from halfway
        assertThat(effect(Ride.PLATE, 0.8, new Vec(1.55, 0))).isEqualTo(LineEffect.RELIEVES_LOW);
        // a seat that rides is relieved from up the rail, that is from behind the plate point
        assertThat(effect(Ride.SEAT, 0.5, new Vec(-1.6, 0.2))).isEqualTo(LineEffect.RELIEVES_LOW);
    }

    @Test
    void anchoredLowItAddsHigh() {
        assertThat(effect(Ride.PLATE, 0.5, new Vec(0, 0.2))).isEqualTo(LineEffect.ADDS_HIGH);
        // loose at the bottom
        assertThat(effect(Ride.PLATE, 0.7, new Vec(0, 0))).isEqualTo(LineEffect.ADDS_HIGH);
        assertThat(effect(Ride.SEAT, 0.5, new Vec(0.3, 0.2))).isEqualTo(LineEffect.ADDS_HIGH);
    }

    @Test
    void tooLongItNeverTightens() {
        assertThat(effect(Ride.PLATE, 1.2, new Vec(1.6, 0))).isEqualTo(LineEffect.NEVER_TIGHTENS);
    }

    @Test
    void anchoredBesideTheWayItChangesSides() {
        assertThat(effect(Ride.PLATE, 0.3, new Vec(0.75, 0.4))).isEqualTo(LineEffect.CHANGES_SIDES);
    }

    @Test
    void aLineThatPullsOneWayAlwaysPullsMostAtThatWaysEnd() {
        // along = T(P) x/P rises with the distance x along the rail for every pull that does not fall with stretch, so
        // the
        // two effects "elsewhere" cannot come from rubber on a rail; the classes stand for completeness
        Random random = new Random(3);
        Set<LineEffect> seen = EnumSet.noneOf(LineEffect.class);
        for (int t = 0; t < 3000; t++) {
            Vec anchor = new Vec(3 * random.nextDouble() - 0.8, 2 * random.nextDouble() - 1);
            Ride ride = random.nextBoolean() ? Ride.PLATE : Ride.SEAT;
            seen.add(effect(ride, 0.4 + random.nextDouble(), anchor));
        }
        assertThat(seen)
                .containsExactlyInAnyOrder(
                        LineEffect.RELIEVES_LOW,
                        LineEffect.ADDS_HIGH,
                        LineEffect.NEVER_TIGHTENS,
                        LineEffect.CHANGES_SIDES);
    }
}
