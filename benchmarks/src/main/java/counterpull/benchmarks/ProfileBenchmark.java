package counterpull.benchmarks;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.LegPath;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.PressMotion;
import counterpull.engine.planar.ChainMotion;
import counterpull.engine.planar.NewtonEuler;
import counterpull.engine.planar.PointLoads;
import counterpull.engine.profile.PressLimb;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.PressTask;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * A whole profile of 101 positions × 3 phases × 2 limbs, every torque and effort read, in µs; against nothing but the
 * inverse-dynamics evaluations inside it: for each limb and position the posture set and one pass for weight, one for
 * each moving phase.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class ProfileBenchmark {
    private static final Phase[] MOVING = {Phase.LIFTING, Phase.LOWERING};
    private static final Phase[] PHASES = Phase.values();
    private static final Joint[] JOINTS = Joint.LEG.toArray(new Joint[0]);
    private PressTask task;
    private PressMotion motion;
    private final double[] torque = new double[Postures.SEGMENTS];
    private NewtonEuler weighing;
    private NewtonEuler moving;
    private ChainMotion at;
    private PointLoads loads;

    /** Lays the movement out once for the evaluations alone. */
    @Setup
    public void setUp() {
        task = BenchTask.task();
        motion = PressProfile.of(task).ground().motion();
        Postures postures = new Postures();
        weighing = new NewtonEuler(postures.chain).gravity(-6.9343, -6.9343);
        moving = new NewtonEuler(postures.chain);
        at = new ChainMotion(Postures.SEGMENTS);
        loads = new PointLoads(Postures.SEGMENTS);
    }

    /** From the task to every torque and effort. */
    @Benchmark
    public double wholeProfile() {
        PressProfile profile = PressProfile.of(task);
        double sum = 0;
        for (PressLimb limb : profile.limbs()) {
            for (Phase phase : PHASES) {
                for (int i = 0; i < profile.positions(); i++) {
                    for (Joint joint : JOINTS) {
                        sum += limb.torque(joint, phase, i) + limb.effort(joint, phase, i);
                    }
                }
            }
        }
        return sum;
    }

    /** Its inverse-dynamics evaluations and nothing else. */
    @Benchmark
    public double evaluationsAlone() {
        double sum = 0;
        for (int k = 0; k < motion.legs(); k++) {
            LegPath path = motion.path(k);
            for (int i = 0; i < motion.positions(); i++) {
                sum += evaluate(path, i);
            }
        }
        return sum;
    }

    private double evaluate(LegPath path, int i) {
        at.direction(0, path.thigh(i));
        at.direction(1, path.shank(i));
        at.direction(2, path.foot());
        at.rest();
        weighing.torques(at, loads, torque);
        double sum = torque[0] + torque[1] + torque[2];
        for (Phase phase : MOVING) {
            at.turning(0, path.thighRate(phase, i), path.thighAcceleration(phase, i));
            at.turning(1, path.shankRate(phase, i), path.shankAcceleration(phase, i));
            moving.torques(at, loads, torque);
            sum += torque[0] + torque[1] + torque[2];
        }
        return sum;
    }
}
