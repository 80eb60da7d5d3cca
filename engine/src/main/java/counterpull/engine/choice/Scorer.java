package counterpull.engine.choice;

import counterpull.engine.body.Joint;
import counterpull.engine.jointload.BrechterPowers2002;
import counterpull.engine.load.AnchorLoads;
import counterpull.engine.load.LineSeries;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.Ride;
import counterpull.engine.profile.Groundwork;
import counterpull.engine.profile.Levers;
import counterpull.engine.profile.Loading;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.PressTask;
import java.util.List;

/**
 * Scores loadings on one ground without building a profile for each: forces are base + plates × per-kilogram + strands ×
 * per-strand, torques own + force × lever, all laid out once. It says the same as {@link Judge} on the full profile; a test
 * holds the two together.
 *
 * <p>A push of least effort is not affine in the load: there every loading is judged by its full profile.
 */
final class Scorer {
    private static final int JOINTS = Joint.LEG.size();
    private static final int PHASES = Phase.values().length;
    private static final int KNEE = Joint.KNEE.ordinal();
    private final Groundwork ground;
    private final Goal goal;
    private final int n;
    private final int limbs;
    private final double[] bare;
    private final double[] perKilogram;
    private final double[] target;
    private final int[] named;
    private final boolean[] isNamed = new boolean[JOINTS];
    private final double[] mostTorque = new double[2 * JOINTS];
    private final boolean capped;
    private final LimbScale[] scales;
    private final double turnPerKilogram;
    private final double turnBare;
    private final boolean affine;
    private final double[] withLines;
    private final double[] force;
    private double anchorExcess;

    Scorer(Groundwork ground, Goal goal) {
        this.ground = ground;
        this.goal = goal;
        n = ground.motion().positions();
        affine = Levers.fixed(ground.task());
        bare = ground.terms().contact(Loading.plates(0));
        perKilogram = ground.terms().contact(Loading.plates(1));
        for (int cell = 0; cell < bare.length; cell++) {
            perKilogram[cell] -= bare[cell];
        }
        limbs = ground.motion().legs();
        target = target();
        named = new int[goal.joints().size()];
        capped = caps();
        scales = affine ? scales() : new LimbScale[0];
        double peak =
                ground.task().tempo().peakNearBottom(ground.motion().stroke().travel());
        turnPerKilogram = peak * ground.task().sled().feltPerKilogram();
        turnBare = peak * ridingMass(ground.task());
        withLines = bare.clone();
        force = new double[bare.length];
    }

    private static double ridingMass(PressTask task) {
        double person = task.sled().rail().ride() == Ride.SEAT ? task.person().restOfBody() : 0;
        return task.sled().feltMass(0) + person;
    }

    /** Lays out which joints are named and what their torques may be; whether any limit but the ceiling is stated. */
    private boolean caps() {
        boolean any = goal.caps().kneecapStress() < Double.POSITIVE_INFINITY;
        for (Joint joint : Joint.LEG) {
            int j = joint.ordinal();
            isNamed[j] = goal.joints().contains(joint);
            mostTorque[2 * j] = goal.caps().torque(joint.action());
            mostTorque[2 * j + 1] = goal.caps().torque(joint.opposite());
            any |= Math.min(mostTorque[2 * j], mostTorque[2 * j + 1]) < Double.POSITIVE_INFINITY;
        }
        for (int k = 0; k < named.length; k++) {
            named[k] = goal.joints().get(k).ordinal();
        }
        return any;
    }

    private double[] target() {
        double[] wanted = new double[n];
        int reference = ground.motion().stroke().reference();
        for (int i = 0; i < n; i++) {
            wanted[i] = goal.target().at(ground.motion().path(reference).angle(Joint.KNEE, i));
        }
        return wanted;
    }

    /** One limb's levers and what its torques are measured by, in flat arrays. */
    private static final class LimbScale {
        double[] own;
        double[][] levers;
        double[] told;
        double[] named;
        double[] opposite;
        double[] stress;
    }

    private LimbScale[] scales() {
        Levers levers = Levers.of(ground);
        LimbScale[] found = new LimbScale[limbs];
        for (int k = 0; k < limbs; k++) {
            LimbScale scale = new LimbScale();
            scale.own = levers.own(k);
            scale.told = levers.told(k);
            boolean whole = goal.straying() == Goal.Straying.WHOLE_INTERVAL;
            scale.levers = whole ? new double[][] {levers.low(k), levers.high(k)} : new double[][] {levers.told(k)};
            scale.named = new double[PHASES * n * JOINTS];
            scale.opposite = new double[PHASES * n * JOINTS];
            strengths(scale, k);
            scale.stress = stress(k);
            found[k] = scale;
        }
        return found;
    }

    private void strengths(LimbScale scale, int limb) {
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < n; i++) {
                for (Joint joint : Joint.LEG) {
                    int at = (phase.ordinal() * n + i) * JOINTS + joint.ordinal();
                    scale.named[at] = 1 / ground.capacity().named(limb, joint, phase, i);
                    scale.opposite[at] = -1 / ground.capacity().opposite(limb, joint, phase, i);
                }
            }
        }
    }

    private double[] stress(int limb) {
        double[] perTorque = new double[n];
        BrechterPowers2002 kneecap = new BrechterPowers2002();
        for (int i = 0; i < n; i++) {
            perTorque[i] = kneecap.stress(ground.motion().path(limb).angle(Joint.KNEE, i), 1);
        }
        return perTorque;
    }

    /** Puts these lines on for the scores to come. */
    void hang(List<LineSeries> lines) {
        System.arraycopy(bare, 0, withLines, 0, bare.length);
        for (LineSeries line : lines) {
            double strands = line.line().strands();
            for (Phase phase : Phase.values()) {
                for (int i = 0; i < n; i++) {
                    withLines[phase.ordinal() * n + i] += strands * line.push(phase, i);
                }
            }
        }
        anchorExcess = Double.NEGATIVE_INFINITY;
        for (AnchorLoads load : AnchorLoads.of(lines, n)) {
            double rating = load.anchor().rating();
            if (rating < Double.POSITIVE_INFINITY) {
                anchorExcess = Math.max(anchorExcess, (load.most() - rating) / rating);
            }
        }
    }

    /** Scores a total of plates with the lines hung last. */
    void score(Loading loading, Groundwork laid, Tally tally) {
        tally.clear();
        if (!affine) {
            judged(Judge.of(PressProfile.onGround(laid, loading), goal), tally);
            return;
        }
        double least = Double.POSITIVE_INFINITY;
        for (int cell = 0; cell < force.length; cell++) {
            force[cell] = withLines[cell] + loading.plates() * perKilogram[cell];
            least = Math.min(least, force[cell]);
        }
        tally.lower(LimitKind.FLOOR, least, goal.floor());
        efforts(tally);
        if (goal.straying() == Goal.Straying.AS_TOLD) {
            tally.upper(LimitKind.CEILING, tally.peak, goal.ceiling());
        }
        if (capped || goal.straying() == Goal.Straying.WHOLE_INTERVAL) {
            limits(tally);
        }
        tally.excess[LimitKind.ANCHOR_LOAD.ordinal()] = anchorExcess;
        if (goal.caps().turnForce() < Double.POSITIVE_INFINITY) {
            double turn = turnBare + turnPerKilogram * loading.plates();
            tally.upper(LimitKind.TURN_FORCE, turn, goal.caps().turnForce());
        }
    }

    private static void judged(Verdict verdict, Tally tally) {
        tally.shortfall = verdict.shortfall();
        tally.peak = verdict.peak().map(p -> p.limiting().effort()).orElse(Double.NaN);
        for (Breach breach : verdict.nearest()) {
            int kind = breach.kind().ordinal();
            tally.excess[kind] = Math.max(tally.excess[kind], breach.excess());
        }
    }

    private void efforts(Tally tally) {
        double sum = 0;
        int counted = 0;
        double peak = Double.NEGATIVE_INFINITY;
        for (int cell = 0; cell < force.length; cell++) {
            double most = effort(cell, force[cell]);
            peak = Math.max(peak, most);
            if (cell >= n && most > Double.NEGATIVE_INFINITY) {
                double miss = target[cell % n] - most;
                sum += miss > 0 ? miss * miss : 0;
                counted++;
            }
        }
        tally.shortfall = counted == 0 ? Double.NaN : Math.sqrt(sum / counted);
        tally.peak = peak > Double.NEGATIVE_INFINITY ? peak : Double.NaN;
    }

    /** The limiting effort of one cell, −∞ where none is known. */
    private double effort(int cell, double push) {
        double most = Double.NEGATIVE_INFINITY;
        for (LimbScale scale : scales) {
            for (int joint : named) {
                int at = cell * JOINTS + joint;
                double torque = scale.own[at] + push * scale.told[at];
                double effort = torque * (torque >= 0 ? scale.named[at] : scale.opposite[at]);
                if (effort > most) {
                    most = effort;
                }
            }
        }
        return most;
    }

    private void limits(Tally tally) {
        for (LimbScale scale : scales) {
            for (double[] lever : scale.levers) {
                for (int cell = 0; cell < force.length; cell++) {
                    limits(scale, lever, cell, tally);
                }
            }
        }
    }

    private void limits(LimbScale scale, double[] lever, int cell, Tally tally) {
        for (int joint = 0; joint < JOINTS; joint++) {
            int at = cell * JOINTS + joint;
            double torque = scale.own[at] + force[cell] * lever[at];
            if (isNamed[joint]) {
                double effort = torque * (torque >= 0 ? scale.named[at] : scale.opposite[at]);
                tally.upper(LimitKind.CEILING, effort, goal.ceiling());
            }
            double most = mostTorque[2 * joint + (torque >= 0 ? 0 : 1)];
            if (most < Double.POSITIVE_INFINITY) {
                tally.upper(LimitKind.JOINT_TORQUE, Math.abs(torque), most);
            }
            if (joint == KNEE && goal.caps().kneecapStress() < Double.POSITIVE_INFINITY) {
                double stress = Math.max(0, torque) * scale.stress[cell % n];
                tally.upper(LimitKind.KNEECAP_STRESS, stress, goal.caps().kneecapStress());
            }
        }
    }

    /**
     * Squared shortfall at each position of a deeper range, lifting then lowering; infinite below this range, NaN where no effort
     * is known. Of the latest score.
     *
     * @param skipped how many positions of the deeper range lie below this one
     * @param apart how many of this range's first positions are none of the deeper one's
     */
    double[] missed(int skipped, int apart, Loading loading, Groundwork laid) {
        int whole = n - apart + skipped;
        double[] missed = new double[2 * whole];
        java.util.Arrays.fill(missed, Double.POSITIVE_INFINITY);
        PressProfile profile = affine ? null : PressProfile.onGround(laid, loading);
        for (int cell = n; cell < PHASES * n; cell++) {
            Phase phase = Phase.values()[cell / n];
            double most = affine
                    ? effort(cell, force[cell])
                    : profile.limiting(goal.joints(), phase, cell % n)
                            .map(found -> found.effort())
                            .orElse(Double.NEGATIVE_INFINITY);
            double miss = Math.max(0, target[cell % n] - most);
            if (cell % n >= apart) {
                int at = (phase.ordinal() - 1) * whole + skipped + cell % n - apart;
                missed[at] = most > Double.NEGATIVE_INFINITY ? miss * miss : Double.NaN;
            }
        }
        return missed;
    }
}
