package counterpull.benchmarks;

import counterpull.crosscheck.LibraryChain;
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
 * One inverse-dynamics evaluation of a three-segment leg with its foot load, in ns. Engine and hand-written loop start from the
 * same posture with sines and cosines already taken, so that their ratio is of mechanics alone; the library starts from joint
 * angles, because it knows no other way.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class InverseDynamicsBenchmark {
    private static final double GX = -6.9343;
    private static final double GY = -6.9343;
    private final double[] torque = new double[Postures.SEGMENTS];
    private Postures postures;
    private ChainMotion[] motions;
    private PointLoads loads;
    private NewtonEuler pass;
    private HandWrittenLeg hand;
    private LibraryChain library;
    private final Vector3D arm = new Vector3D();
    private final Vector3D push = new Vector3D();

    /** Lays the postures out. */
    @Setup
    public void setUp() {
        postures = new Postures();
        motions = new ChainMotion[Postures.COUNT];
        for (int i = 0; i < Postures.COUNT; i++) {
            motions[i] = motion(i);
        }
        loads = new PointLoads(Postures.SEGMENTS);
        pass = new NewtonEuler(postures.chain).gravity(GX, GY);
        hand = new HandWrittenLeg(postures, GX, GY);
        library = new LibraryChain(postures.chain, GX, GY);
        arm.set(postures.armX, postures.armY, 0);
        check();
    }

    private ChainMotion motion(int i) {
        ChainMotion motion = new ChainMotion(Postures.SEGMENTS);
        for (int k = 0; k < Postures.SEGMENTS; k++) {
            int at = i * Postures.SEGMENTS + k;
            motion.direction(k, postures.direction[at]);
            motion.turning(k, postures.rate[at], postures.acceleration[at]);
        }
        return motion;
    }

    private void check() {
        for (int i = 0; i < Postures.COUNT; i++) {
            double ours = engineAt(i);
            double byHand = hand.torques(i, torque);
            double theirs = libraryAt(i);
            if (Math.abs(ours - byHand) > 1e-9 || Math.abs(ours - theirs) > 1e-9) {
                throw new IllegalStateException("contestants disagree: " + ours + ", " + byHand + ", " + theirs);
            }
        }
    }

    /** The engine. */
    @Benchmark
    @OperationsPerInvocation(Postures.COUNT)
    public double engine() {
        double sum = 0;
        for (int i = 0; i < Postures.COUNT; i++) {
            sum += engineAt(i);
        }
        return sum;
    }

    private double engineAt(int i) {
        loads.clear();
        loads.add(2, postures.armX, postures.armY, -postures.force[i], 0);
        pass.torques(motions[i], loads, torque);
        return torque[0] + torque[1] + torque[2];
    }

    /** The same formulas written out for three segments. */
    @Benchmark
    @OperationsPerInvocation(Postures.COUNT)
    public double handWritten() {
        double sum = 0;
        for (int i = 0; i < Postures.COUNT; i++) {
            sum += hand.torques(i, torque);
        }
        return sum;
    }

    /** The multibody library. */
    @Benchmark
    @OperationsPerInvocation(Postures.COUNT)
    public double library() {
        double sum = 0;
        for (int i = 0; i < Postures.COUNT; i++) {
            sum += libraryAt(i);
        }
        return sum;
    }

    private double libraryAt(int i) {
        library.begin(0, 0);
        for (int k = 0; k < Postures.SEGMENTS; k++) {
            int at = i * Postures.SEGMENTS + k;
            library.segment(k, postures.direction[at], postures.rate[at], postures.acceleration[at]);
        }
        push.set(-postures.force[i], 0, 0);
        library.load(2, arm, push);
        library.torques(torque);
        return torque[0] + torque[1] + torque[2];
    }
}
