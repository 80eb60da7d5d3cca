package counterpull.bench.machine;

import counterpull.bench.Estimate;
import counterpull.bench.fit.Noise;
import counterpull.bench.fit.SmoothCurves;
import counterpull.bench.fit.SmoothCurves.Bend;
import counterpull.bench.fit.SmoothCurves.Expected;
import counterpull.bench.fit.SmoothCurves.Repeats;
import counterpull.bench.fit.SmoothCurves.Sight;
import counterpull.engine.Constants;
import counterpull.engine.load.CamRadius;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/** A cam's radius against the lever's angle with its band, between the first and the last angle read. Read-only. */
public final class CamFound implements MachineFound {
    private static final int STEPS = 10;
    private static final double BENDS = 0.06;

    private final MachineBench bench;
    private final double first;
    private final double last;
    private final DoubleFunction<Estimate> radius;

    private CamFound(MachineBench bench, double[] angles, DoubleFunction<Estimate> radius) {
        this.bench = bench;
        first = angles[0];
        last = angles[angles.length - 1];
        this.radius = radius;
    }

    static CamFound of(CamTravelBench bench) {
        double[] angles = bench.travels().stream()
                .mapToDouble(CamTravel::angle)
                .distinct()
                .sorted()
                .toArray();
        List<Sight> sights = new ArrayList<>();
        double squares = 0;
        int degrees = 0;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double angle : angles) {
            double[] here = bench.travels().stream()
                    .filter(each -> each.angle() == angle)
                    .mapToDouble(CamTravel::line)
                    .toArray();
            double mean = SweepCurves.mean(here);
            sights.add(new Sight(angle, new double[] {1}, mean, here.length));
            squares += SweepCurves.squares(here, mean);
            degrees += here.length - 1;
            low = Math.min(low, mean);
            high = Math.max(high, mean);
        }
        Expected expected = new Expected(List.of(new Bend(2, BENDS * (high - low))), List.of(1.0, 1.4));
        Noise tape = squares == 0 && degrees > 0 && bench.tape() instanceof Noise.FromScatter
                ? new Noise.Stated(FINEST_TAPE)
                : bench.tape();
        SmoothCurves curves = SmoothCurves.of(sights, expected, new Repeats(squares, degrees), tape);
        int sense = bench.lifts().sense();
        return new CamFound(bench, angles, at -> curves.slope(at, sense));
    }

    /** Repeats that agree to the last digit are not believed further than half a millimetre. */
    private static final double FINEST_TAPE = 5e-4;

    static CamFound of(CamTorqueBench bench) {
        SweepCurves curves = SweepCurves.of(bench.readings(), bench.scale());
        double factor = bench.ratio().value() / (bench.mass().value() * Constants.STANDARD_GRAVITY);
        double relative = Math.hypot(bench.ratio().relative(), bench.mass().relative());
        return new CamFound(
                bench,
                new double[] {curves.first(), curves.last()},
                at -> unsure(curves.mean(at).times(factor), relative));
    }

    /** A factor that is itself unsure, as a normal share. */
    private static Estimate unsure(Estimate estimate, double relative) {
        double share = Math.abs(estimate.value()) * relative;
        double half = Math.hypot(estimate.halfWidth(), counterpull.bench.Student.TWO_SIDED_95 * share);
        return new Estimate(
                estimate.value(),
                Math.hypot(estimate.standardError(), share),
                estimate.value() - half,
                estimate.value() + half,
                estimate.standing());
    }

    /** The readings. */
    public MachineBench bench() {
        return bench;
    }

    /** First angle, rad. */
    public double first() {
        return first;
    }

    /** Last angle, rad. */
    public double last() {
        return last;
    }

    /** Radius at an angle of the lever, m; positive where the stack rises while the limb lifts. */
    public Estimate radius(double angle) {
        return radius.apply(angle);
    }

    /** Eleven equal steps as the engine takes them. */
    public CamRadius cam() {
        List<CamRadius.Reading> readings = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double angle = first + (last - first) * i / STEPS;
            readings.add(new CamRadius.Reading(angle, radius(angle).value()));
        }
        return new CamRadius(readings);
    }
}
