package counterpull.benchmarks;

import counterpull.crosscheck.LibraryChain;
import counterpull.engine.Constants;
import counterpull.engine.planar.ChainMotion;
import counterpull.engine.planar.NewtonEuler;
import counterpull.engine.planar.PointLoads;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import us.ihmc.euclid.tuple3D.Vector3D;

/**
 * One inverse-dynamics evaluation of a six-segment chain with point loads on three of its segments, in ns. Both turn the loads'
 * places with their segments; the engine starts with sines and cosines taken, the library from joint angles, because it knows no
 * other way.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class SixSegmentBenchmark {
    private static final int N = StandingPostures.SEGMENTS;
    private final double[] torque = new double[N];
    private StandingPostures postures;
    private StandingPostures.Load[] hung;
    private ChainMotion[] motions;
    private PointLoads loads;
    private NewtonEuler pass;
    private LibraryChain library;
    private final Vector3D arm = new Vector3D();
    private final Vector3D force = new Vector3D();

    /** Lays the postures out. */
    @Setup
    public void setUp() {
        postures = new StandingPostures();
        hung = postures.loads;
        motions = new ChainMotion[StandingPostures.COUNT];
        for (int i = 0; i < motions.length; i++) {
            motions[i] = motion(i);
        }
        loads = new PointLoads(N);
        pass = new NewtonEuler(postures.chain).gravity(0, -Constants.STANDARD_GRAVITY);
        library = new LibraryChain(postures.chain, 0, -Constants.STANDARD_GRAVITY);
        check();
    }

    private ChainMotion motion(int i) {
        ChainMotion motion = new ChainMotion(N);
        for (int k = 0; k < N; k++) {
            motion.direction(k, postures.direction[i * N + k]);
            motion.turning(k, postures.rate[i * N + k], postures.acceleration[i * N + k]);
        }
        return motion;
    }

    private void check() {
        double[] theirs = new double[N];
        for (int i = 0; i < StandingPostures.COUNT; i++) {
            libraryAt(i);
            System.arraycopy(torque, 0, theirs, 0, N);
            engineAt(i);
            for (int k = 0; k < N; k++) {
                if (Math.abs(torque[k] - theirs[k]) > 1e-9) {
                    throw new IllegalStateException("contestants disagree: " + torque[k] + ", " + theirs[k]);
                }
            }
        }
    }

    /** The engine. */
    @Benchmark
    @OperationsPerInvocation(StandingPostures.COUNT)
    public double sixByEngine() {
        double sum = 0;
        for (int i = 0; i < StandingPostures.COUNT; i++) {
            sum += engineAt(i);
        }
        return sum;
    }

    private double engineAt(int i) {
        ChainMotion motion = motions[i];
        loads.clear();
        for (StandingPostures.Load load : hung) {
            double armX = motion.armX(load.segment(), load.along(), load.across());
            double armY = motion.armY(load.segment(), load.along(), load.across());
            loads.add(load.segment(), armX, armY, load.forceX(), load.forceY());
        }
        pass.torques(motion, loads, torque);
        return total();
    }

    private double total() {
        return torque[0] + torque[1] + torque[2] + torque[3] + torque[4] + torque[5];
    }

    /** The multibody library. */
    @Benchmark
    @OperationsPerInvocation(StandingPostures.COUNT)
    public double sixByLibrary() {
        double sum = 0;
        for (int i = 0; i < StandingPostures.COUNT; i++) {
            sum += libraryAt(i);
        }
        return sum;
    }

    private double libraryAt(int i) {
        library.begin(0, 0);
        for (int k = 0; k < N; k++) {
            int at = i * N + k;
            library.segment(k, postures.direction[at], postures.rate[at], postures.acceleration[at]);
        }
        for (StandingPostures.Load load : hung) {
            arm.set(load.along(), load.across(), 0);
            force.set(load.forceX(), load.forceY(), 0);
            library.loadAt(load.segment(), arm, force);
        }
        library.torques(torque);
        return total();
    }
}
