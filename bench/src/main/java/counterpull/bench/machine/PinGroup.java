package counterpull.bench.machine;

import counterpull.bench.Way;
import java.util.List;

/** All pulls at one pin with the same mass added, in both ways. */
record PinGroup(double printed, double added, double[] up, double[] down) {
    static PinGroup of(List<StackPull> pulls, double printed, double added) {
        return new PinGroup(
                printed, added, forces(pulls, printed, added, Way.UP), forces(pulls, printed, added, Way.DOWN));
    }

    private static double[] forces(List<StackPull> pulls, double printed, double added, Way way) {
        return pulls.stream()
                .filter(pull -> pull.way() == way && pull.printed() == printed && pull.added() == added)
                .mapToDouble(StackPull::force)
                .toArray();
    }

    boolean bothWays() {
        return up.length > 0 && down.length > 0;
    }

    double meanUp() {
        return SweepCurves.mean(up);
    }

    double meanDown() {
        return SweepCurves.mean(down);
    }

    /** Variance of U + D, and of U − D, in σ². */
    double shares() {
        return 1.0 / up.length + 1.0 / down.length;
    }

    /** Covariance of U − D with U + D, in σ². */
    double tilt() {
        return 1.0 / up.length - 1.0 / down.length;
    }

    double squares() {
        return SweepCurves.squares(up, meanUp()) + SweepCurves.squares(down, meanDown());
    }

    int repeats() {
        return up.length + down.length - 2;
    }
}
