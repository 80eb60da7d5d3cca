package counterpull.bench.machine;

import counterpull.bench.Answer;
import counterpull.bench.fit.Noise;
import java.util.List;

/**
 * A cam by how far its line runs: radius r = dy/dφ, the slope of a smooth curve through the readings.
 *
 * <p>What is expected before reading: the drawn line bends away from that of a cam whose radius grows or shrinks evenly by about 6 % of all that is drawn in (ours, no
 * source). Source: {@link counterpull.bench.fit.SmoothCurves}; a Gaussian process's slope is one too.
 *
 * @param name what the floor calls it
 * @param travels in the order in which they were read; several at one angle are repeats
 * @param lifts which way the lever turns while the limb lifts
 * @param tape how far one reading of the line may lie from the truth, m
 */
public record CamTravelBench(String name, List<CamTravel> travels, LeverHold.Turn lifts, Noise tape)
        implements MachineBench {
    public CamTravelBench {
        travels = List.copyOf(travels);
    }

    @Override
    public Answer<CamFound> answer() {
        return Asking.answer(
                new CamReadings(this).remarks(),
                () -> CamFound.of(this),
                found -> CamReadings.radii(found, "reading 1"));
    }
}
