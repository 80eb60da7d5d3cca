package counterpull.engine.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Course;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.PointTrack;
import counterpull.engine.planar.Vec;
import java.util.List;

/**
 * The contract of everything that resists: power put in by the limb = d(stored + kinetic)/dt + lost. The left side comes from forces
 * and velocities, the right one from energies alone, differentiated along the range by an 8th-order central stencil.
 */
final class PowerBalance {
    /** Relative to the largest power of the range; the stencil's own error at 401 positions is below 1e-10 (h⁸). */
    private static final double TOLERANCE = 1e-8;

    private static final double[] STENCIL = {4.0 / 5, -1.0 / 5, 4.0 / 105, -1.0 / 280};

    private PowerBalance() {}

    /** Checks one member on one path, in the middle part of the range, where speed is smooth in the coordinate. */
    static void check(Resistance resistance, Setting setting) {
        check(resistance, setting, List.of());
    }

    /**
     * The same, but not next to positions where the law has a kink (a line that tightens there).
     *
     * @param resistance the member
     * @param setting where it is tried
     * @param kinks positions near which nothing is compared
     */
    static void check(Resistance resistance, Setting setting, List<Integer> kinks) {
        ChainPath path = setting.path();
        Ledger ledger = resistance.ledger(path, setting.gravity(), setting.plates());
        double[] put = new double[path.course().cells()];
        double largest = 1e-3;
        for (Pull pull : resistance.on(path, setting.gravity())) {
            add(put, pull, setting);
        }
        for (double power : put) {
            largest = Math.max(largest, Math.abs(power));
        }
        int compared = 0;
        for (Phase phase : new Phase[] {Phase.LIFTING, Phase.LOWERING}) {
            for (int i = path.positions() / 4; i < path.positions() * 3 / 4; i++) {
                if (near(kinks, i)) {
                    continue;
                }
                double taken = rate(ledger, path.course(), phase, i)
                        + ledger.lost()[path.course().cell(phase, i)];
                assertThat(put[path.course().cell(phase, i)])
                        .as("%s, power while %s at %d", resistance.words(), phase.words(), i)
                        .isCloseTo(taken, within(TOLERANCE * largest));
                assertThat(ledger.lost()[path.course().cell(phase, i)])
                        .as("power lost")
                        .isNotNegative();
                compared++;
            }
        }
        assertThat(compared).as("places compared").isGreaterThan(20);
        held(resistance, setting);
    }

    /** Held, nothing is in motion and nothing rubs. */
    private static void held(Resistance resistance, Setting setting) {
        for (Pull pull : resistance.on(setting.path(), setting.gravity())) {
            for (Share share : pull.shares()) {
                if (share.part() == Part.INERTIA || share.part() == Part.FRICTION) {
                    for (int i = 0; i < setting.path().positions(); i++) {
                        assertThat(share.perUnit()[setting.path().course().cell(Phase.HELD, i)])
                                .as("%s of %s, held", share.part(), resistance.words())
                                .isZero();
                    }
                }
            }
        }
    }

    /**
     * Where a member is tried.
     *
     * @param path the limb over its range, at many positions
     * @param gravity m/s²
     * @param plates kg
     */
    record Setting(ChainPath path, double gravity, double plates) {}

    private static boolean near(List<Integer> kinks, int i) {
        return kinks.stream().anyMatch(kink -> Math.abs(kink - i) <= STENCIL.length);
    }

    private static void add(double[] put, Pull pull, Setting setting) {
        ChainPath path = setting.path();
        Course course = path.course();
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < path.positions(); i++) {
                int cell = course.cell(phase, i);
                put[cell] -= pull.size(cell, setting.plates()) * speedAlong(pull, path, phase, i);
            }
        }
    }

    private static double speedAlong(Pull pull, ChainPath path, Phase phase, int i) {
        if (pull.isCouple()) {
            return path.slope(pull.at().segment(), i) * path.course().speed(phase, i);
        }
        return pull.direction(i).dot(velocity(pull.at(), path, phase, i));
    }

    // from positions along the range, not from the track's own derivatives
    private static Vec velocity(BodyPoint at, ChainPath path, Phase phase, int i) {
        PointTrack track = path.track(at);
        double h = path.course().travel() / (path.positions() - 1);
        Vec slope = new Vec(0, 0);
        if (i < STENCIL.length || i >= path.positions() - STENCIL.length) {
            return track.velocity(path.course(), phase, i);
        }
        for (int k = 1; k <= STENCIL.length; k++) {
            slope = slope.plus(track.at(i + k).minus(track.at(i - k)).times(STENCIL[k - 1] / h));
        }
        return slope.times(path.course().speed(phase, i));
    }

    private static double rate(Ledger ledger, Course course, Phase phase, int i) {
        double h = course.travel() / (course.positions() - 1);
        double sum = 0;
        for (int k = 1; k <= STENCIL.length; k++) {
            sum += STENCIL[k - 1]
                    * (energy(ledger, course.cell(phase, i + k)) - energy(ledger, course.cell(phase, i - k)));
        }
        return sum / h * course.speed(phase, i);
    }

    private static double energy(Ledger ledger, int cell) {
        return ledger.stored()[cell] + ledger.kinetic()[cell];
    }
}
