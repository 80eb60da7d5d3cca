package counterpull.bench.machine;

import counterpull.bench.Answer;
import counterpull.bench.Remark;
import counterpull.bench.Steps;
import counterpull.bench.fit.Noise;
import java.util.List;

/**
 * A machine that is known by its readings alone: force or torque at positions, slowly up and slowly down.
 *
 * <p>Law: up = mean + half difference, down = mean − half difference, both smooth in the position ({@link
 * counterpull.bench.fit.SmoothCurves}). What is expected before reading: mean and half difference bend away from straight lines by
 * about 18 % and 1.1 % of the mean reading (ours, no source); readings at close positions soon outweigh that.
 *
 * @param name what the floor calls it
 * @param quantity what was read against what
 * @param readings in the order in which they were read
 * @param scale how far one reading may lie from the truth
 */
public record ProfileBench(String name, Quantity quantity, List<Seen> readings, Noise scale) implements MachineBench {
    public ProfileBench {
        readings = List.copyOf(readings);
    }

    @Override
    public Answer<ProfileFound> answer() {
        return Asking.answer(
                new SweepReadings(quantity, readings, scale).remarks(),
                () -> new ProfileFound(this, SweepCurves.of(readings, scale)),
                this::steps);
    }

    private List<Remark> steps(ProfileFound found) {
        double[] sizes = readings.stream().mapToDouble(Seen::size).toArray();
        return scale instanceof Noise.FromScatter
                ? Steps.coarse("reading", quantity.size(), sizes, found.noise()).stream()
                        .toList()
                : List.of();
    }
}
