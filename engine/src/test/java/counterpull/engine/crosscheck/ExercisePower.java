package counterpull.engine.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.body.Joint;
import counterpull.engine.load.Ledger;
import counterpull.engine.load.Resistance;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Course;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.PointTrack;
import counterpull.engine.planar.Chain;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.ExerciseLimb;
import counterpull.engine.profile.ExerciseProfile;

/**
 * What the muscles of a limb put in, Σ torque × joint speed, against where it goes: d(energy of the segments)/dt + the limb's share
 * of d(energy of what resists)/dt + what is lost there. The right side knows energies alone, differentiated along the range by an
 * 8th-order central stencil (step: one position of 401).
 */
final class ExercisePower {
    /** Positions of a profile that is looked at this way. */
    static final int POSITIONS = 401;

    private static final double[] STENCIL = {4.0 / 5, -1.0 / 5, 4.0 / 105, -1.0 / 280};
    private final ExerciseProfile profile;
    private final ExerciseLimb limb;
    private final Course course;
    private final double gravity;

    private ExercisePower(ExerciseProfile profile, ExerciseLimb limb) {
        this.profile = profile;
        this.limb = limb;
        course = profile.course();
        gravity = profile.task().exercise().motion().gravity();
    }

    /**
     * Checks every limb in the middle part of the range; returns how many places were compared.
     *
     * @param profile at {@link #POSITIONS} positions
     * @param tolerance relative to the largest power
     * @param kinks whether the law has a kink near a position
     */
    static int check(ExerciseProfile profile, double tolerance, java.util.function.IntPredicate kinks) {
        int compared = 0;
        for (ExerciseLimb limb : profile.limbs()) {
            compared += new ExercisePower(profile, limb).check(tolerance, kinks);
        }
        return compared;
    }

    private int check(double tolerance, java.util.function.IntPredicate kinks) {
        double[] energy = energy();
        double[] lost = lost();
        double largest = 1e-3;
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < POSITIONS; i++) {
                largest = Math.max(largest, Math.abs(muscles(phase, i)));
            }
        }
        int compared = 0;
        for (Phase phase : new Phase[] {Phase.LIFTING, Phase.LOWERING}) {
            for (int i = POSITIONS / 4; i < POSITIONS * 3 / 4; i++) {
                if (!kinks.test(i)) {
                    double taken = slope(energy, phase, i) * course.speed(phase, i) + lost[course.cell(phase, i)];
                    assertThat(muscles(phase, i))
                            .as(
                                    "power while %s at %d of %s",
                                    phase.words(), i, profile.task().exercise())
                            .isCloseTo(taken, within(tolerance * largest));
                    compared++;
                }
            }
        }
        return compared;
    }

    private double muscles(Phase phase, int i) {
        double power = 0;
        for (Joint joint : limb.joints()) {
            power += limb.torque(joint, phase, i) * limb.path().actionSpeed(joint, phase, i);
        }
        return power;
    }

    private double[] energy() {
        double[] energy = new double[course.cells()];
        ChainPath path = limb.path();
        for (int k = 0; k < path.segments(); k++) {
            add(energy, k);
        }
        for (Resistance resistance : profile.task().exercise().resists()) {
            Ledger ledger = resistance.ledger(path, gravity, profile.task().plates());
            for (int cell = 0; cell < energy.length; cell++) {
                energy[cell] += limb.share() * (ledger.stored()[cell] + ledger.kinetic()[cell]);
            }
        }
        return energy;
    }

    private void add(double[] energy, int segment) {
        Chain chain = limb.path().chain();
        Vec com = new Vec(chain.comAlong(segment), chain.comAcross(segment));
        PointTrack track = limb.path().track(new BodyPoint("centre of mass", segment, com));
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < POSITIONS; i++) {
                Vec v = track.velocity(course, phase, i);
                double turning = limb.path().slope(segment, i) * course.speed(phase, i);
                energy[course.cell(phase, i)] +=
                        chain.mass(segment) * (gravity * track.at(i).y() + v.dot(v) / 2)
                                + chain.inertia(segment) * turning * turning / 2;
            }
        }
    }

    private double[] lost() {
        double[] lost = new double[course.cells()];
        for (Resistance resistance : profile.task().exercise().resists()) {
            Ledger ledger =
                    resistance.ledger(limb.path(), gravity, profile.task().plates());
            for (int cell = 0; cell < lost.length; cell++) {
                lost[cell] += limb.share() * ledger.lost()[cell];
            }
        }
        return lost;
    }

    private double slope(double[] values, Phase phase, int i) {
        double h = course.travel() / (POSITIONS - 1);
        double sum = 0;
        for (int k = 1; k <= STENCIL.length; k++) {
            sum += STENCIL[k - 1] * (values[course.cell(phase, i + k)] - values[course.cell(phase, i - k)]);
        }
        return sum / h;
    }
}
