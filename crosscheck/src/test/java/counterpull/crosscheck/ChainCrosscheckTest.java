package counterpull.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.planar.Chain;
import counterpull.engine.planar.ChainMotion;
import counterpull.engine.planar.NewtonEuler;
import counterpull.engine.planar.PointLoads;
import counterpull.engine.planar.Vec;
import java.util.Random;
import org.junit.jupiter.api.Test;
import us.ihmc.euclid.tuple3D.Vector3D;

/**
 * Random chains of one to six segments, turning, accelerating and loaded, in the engine and in the multibody library.
 * Tolerance: 1e-9 of the sum of all that acts, far above the rounding of some hundred operations (1e-14) and far below any
 * wrong term.
 */
class ChainCrosscheckTest {
    private static final double CLOSE = 1e-9;
    private static final int CHAINS = 1000;

    private final Random random = new Random(1980);

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    @Test
    void torquesAndBaseForceOfRandomChains() {
        for (int k = 0; k < CHAINS; k++) {
            assertThat(mismatch(1)).as("chain %s", k).isLessThan(CLOSE);
        }
    }

    /** A control: a mass a millionth too large in one of the two is seen. */
    @Test
    void aMillionthOfAMassIsSeen() {
        int seen = 0;
        for (int k = 0; k < CHAINS; k++) {
            seen += mismatch(1 + 1e-6) > CLOSE ? 1 : 0;
        }
        assertThat(seen).isGreaterThan(CHAINS * 9 / 10);
    }

    private double mismatch(double massFactor) {
        int n = 1 + random.nextInt(6);
        Chain.Builder ours = Chain.build();
        Chain.Builder theirs = Chain.build();
        for (int i = 0; i < n; i++) {
            segment(ours, theirs, massFactor);
        }
        Chain chain = ours.done();
        double gravityX = between(-10, 10);
        double gravityY = between(-10, 10);
        LibraryChain library = new LibraryChain(theirs.done(), gravityX, gravityY);
        ChainMotion motion = new ChainMotion(n);
        PointLoads loads = new PointLoads(n);
        move(motion, library, n);
        load(loads, library, n);
        NewtonEuler pass = new NewtonEuler(chain).gravity(gravityX, gravityY);
        double[] torque = new double[n];
        pass.torques(motion, loads, torque);
        return compare(pass, torque, library);
    }

    private void segment(Chain.Builder ours, Chain.Builder theirs, double massFactor) {
        double length = between(0.1, 0.6);
        double mass = between(0.5, 15);
        Vec com = new Vec(between(-0.1, 0.5), between(-0.1, 0.1));
        double inertia = between(0, 0.5);
        ours.segment(length, mass, com, inertia);
        theirs.segment(length, mass * massFactor, com, inertia);
    }

    private void move(ChainMotion motion, LibraryChain library, int n) {
        double baseX = between(-5, 5);
        double baseY = between(-5, 5);
        motion.base(baseX, baseY);
        library.begin(baseX, baseY);
        for (int i = 0; i < n; i++) {
            double direction = between(-Math.PI, Math.PI);
            double rate = between(-6, 6);
            double acceleration = between(-40, 40);
            motion.direction(i, direction);
            motion.turning(i, rate, acceleration);
            library.segment(i, direction, rate, acceleration);
        }
    }

    private void load(PointLoads loads, LibraryChain library, int n) {
        for (int k = 0; k < 3; k++) {
            int i = random.nextInt(n);
            Vector3D arm = new Vector3D(between(-0.5, 0.5), between(-0.5, 0.5), 0);
            Vector3D force = new Vector3D(between(-900, 900), between(-900, 900), 0);
            loads.add(i, arm.getX(), arm.getY(), force.getX(), force.getY());
            library.load(i, arm, force);
        }
    }

    /** Largest difference over the size of what acts: some hundreds of N·m and N. */
    private static double compare(NewtonEuler pass, double[] ours, LibraryChain library) {
        double[] theirs = new double[ours.length];
        library.torques(theirs);
        double size = Math.hypot(pass.baseForceX(), pass.baseForceY());
        double most = Math.max(
                Math.abs(pass.baseForceX() - library.baseForceX()), Math.abs(pass.baseForceY() - library.baseForceY()));
        for (int i = 0; i < ours.length; i++) {
            size = Math.max(size, Math.abs(theirs[i]));
            most = Math.max(most, Math.abs(ours[i] - theirs[i]));
        }
        return most / size;
    }
}
