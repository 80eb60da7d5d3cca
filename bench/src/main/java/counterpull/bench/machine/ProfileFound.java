package counterpull.bench.machine;

import counterpull.bench.Estimate;
import counterpull.bench.Way;
import counterpull.engine.load.MeasuredProfile;
import java.util.ArrayList;
import java.util.List;

/** An unknown machine's smooth curves with their bands, between its first and last position. Read-only. */
public final class ProfileFound implements MachineFound {
    private static final int STEPS = 10;

    private final ProfileBench bench;
    private final SweepCurves curves;

    ProfileFound(ProfileBench bench, SweepCurves curves) {
        this.bench = bench;
        this.curves = curves;
    }

    /** The readings. */
    public ProfileBench bench() {
        return bench;
    }

    /** First position, m or rad. */
    public double first() {
        return curves.first();
    }

    /** Last position, m or rad. */
    public double last() {
        return curves.last();
    }

    /** Half way between up and down: what is held, N or N·m. */
    public Estimate mean(double position) {
        return curves.mean(position);
    }

    /** Half the difference of up and down: friction, N or N·m, not below 0. */
    public Estimate half(double position) {
        Estimate half = curves.half(position);
        boolean below = half.value() < 0;
        return new Estimate(
                Math.max(0, half.value()),
                half.standardError(),
                Math.max(0, half.low()),
                Math.max(0, half.high()),
                below ? Estimate.Standing.AT_LIMIT : Estimate.Standing.FREE);
    }

    /** One way, N or N·m. */
    public Estimate way(Way way, double position) {
        return curves.way(way, position);
    }

    /** One standard deviation of one reading. */
    public double noise() {
        return curves.noise();
    }

    /** Reading number {@code i} from 0 less its curve. */
    public double residual(int i) {
        Seen seen = bench.readings().get(i);
        return seen.size() - way(seen.way(), seen.position()).value();
    }

    /** Eleven equal steps of the smooth curve as the engine takes them; nothing below zero, down nowhere above up. */
    public List<MeasuredProfile.Reading> readings() {
        List<MeasuredProfile.Reading> readings = new ArrayList<>();
        for (double at : curves.grid(STEPS)) {
            double mean = Math.max(0, mean(at).value());
            double half = Math.min(mean, half(at).value());
            readings.add(new MeasuredProfile.Reading(at, mean + half, mean - half));
        }
        return readings;
    }
}
