package counterpull.bench.machine;

import counterpull.bench.Answer;
import counterpull.bench.Estimate;
import counterpull.bench.fit.Noise;
import java.util.List;

/**
 * A cam by the torque that a known mass asks for: radius r = R (up + down)/2 / (m g).
 *
 * @param name what the floor calls it
 * @param readings torque on the way up and down by the lever's angle, N·m
 * @param mass on the pin, kg, with its uncertainty
 * @param ratio R of the line after the cam, with its uncertainty
 * @param scale how far one reading may lie from the truth, N·m
 */
public record CamTorqueBench(String name, List<Seen> readings, Estimate mass, Estimate ratio, Noise scale)
        implements MachineBench {
    public CamTorqueBench {
        readings = List.copyOf(readings);
    }

    @Override
    public Answer<CamFound> answer() {
        return Asking.answer(
                new SweepReadings(Quantity.TORQUE_BY_ANGLE, readings, scale).remarks(),
                () -> CamFound.of(this),
                found -> CamReadings.radii(found, "reading 1"));
    }
}
