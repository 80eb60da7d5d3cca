package counterpull.bench.machine;

import counterpull.bench.Answer;
import counterpull.bench.fit.Noise;
import java.util.List;
import java.util.Optional;

/**
 * A lever with weights: its own moment, friction at the pivot, and where its horn really is.
 *
 * <p>Law: torque in the way of the lift s(K cos(φ + β) + m g r cos(φ + γ)) ± f; K the lever's own moment m g r, β the angle of its centre of mass
 * from the line pivot → pad, r and γ the horn's; s = ±1 the turning while the limb lifts. As K cos β, K sin β it is linear. What
 * is not seen: the lever's mass and its centre's distance apart (only their product), and its inertia. Source: moments about the pivot; the
 * engine's lever.
 *
 * @param name what the floor calls it
 * @param hold how it was read
 * @param readings in the order in which they were read
 * @param horn the horn by tape; may be empty
 * @param scale how far one reading may lie from the truth, N or N·m
 */
public record LeverBench(String name, LeverHold hold, List<LeverReading> readings, Optional<HornTape> horn, Noise scale)
        implements MachineBench {
    public LeverBench {
        readings = List.copyOf(readings);
    }

    /** Whether readings with different plates tell where the horn is. */
    boolean tellsHorn() {
        return readings.stream().mapToDouble(LeverReading::plates).distinct().count() > 1;
    }

    @Override
    public Answer<LeverFound> answer() {
        return Asking.answer(
                new LeverReadings(this).remarks(),
                () -> new LeverEstimator(this).found(),
                found -> new LeverChecks(found).remarks());
    }
}
