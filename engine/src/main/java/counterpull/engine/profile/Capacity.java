package counterpull.engine.profile;

import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;
import counterpull.engine.motion.LimbPath;
import counterpull.engine.motion.Phase;
import counterpull.engine.strength.LimbStrength;
import counterpull.engine.strength.StrengthCurve;
import java.util.List;
import java.util.Optional;

/**
 * What a person has at every joint, phase and position of a range: the strength of each joint's named action and of its
 * opposite at that angle and speed, N·m. NaN where it is not known; infinite for an opposite action without a curve whose
 * named action has one: its effort then counts as 0 and is said so. A joint with no curve at all is not known.
 */
public final class Capacity {
    private static final Phase[] PHASES = Phase.values();
    private final Grid grid;
    private final List<Limb> limbs;
    private final double[][] named;
    private final double[][] opposite;

    private Capacity(Grid grid, List<Limb> limbs) {
        this.grid = grid;
        this.limbs = limbs;
        named = new double[limbs.size()][grid.jointCells()];
        opposite = new double[limbs.size()][grid.jointCells()];
    }

    /**
     * For limbs in movement.
     *
     * @param limbs the limbs
     * @param paths what the joints of each do, in the same order
     * @param grid positions and the joints looked at
     */
    static Capacity of(List<Limb> limbs, List<? extends LimbPath> paths, Grid grid) {
        Capacity capacity = new Capacity(grid, limbs);
        Fill fill = new Fill(capacity.grid);
        for (int k = 0; k < limbs.size(); k++) {
            LimbStrength strength = limbs.get(k).strength();
            for (Joint joint : grid.joints()) {
                Optional<StrengthCurve> named = strength.of(joint.action());
                double absent = named.isPresent() ? Double.POSITIVE_INFINITY : Double.NaN;
                fill.look(paths.get(k), joint);
                fill.into(capacity.named[k], named, Double.NaN);
                fill.turnRound();
                fill.into(capacity.opposite[k], strength.of(joint.opposite()), absent);
            }
        }
        return capacity;
    }

    /** Writes one joint's strength after the other into flat arrays, with the same working rows for all. */
    private static final class Fill {
        private final Grid grid;
        private final double[][] speed;
        private final double[][] torque;
        private double[] angle;
        private Joint joint;

        Fill(Grid grid) {
            this.grid = grid;
            speed = new double[PHASES.length][grid.positions()];
            torque = new double[PHASES.length][grid.positions()];
        }

        /** Takes the angles of a joint and how fast its named action shortens. */
        void look(LimbPath path, Joint which) {
            joint = which;
            angle = path.angles(which);
            for (Phase phase : PHASES) {
                for (int i = 0; i < angle.length; i++) {
                    speed[phase.ordinal()][i] = path.actionSpeed(which, phase, i);
                }
            }
        }

        /** The opposite action shortens while the named one lengthens. */
        void turnRound() {
            for (double[] row : speed) {
                for (int i = 0; i < row.length; i++) {
                    row[i] = -row[i];
                }
            }
        }

        /** Writes a curve, or what stands where there is none. */
        void into(double[] out, Optional<StrengthCurve> curve, double absent) {
            if (curve.isEmpty()) {
                for (int at = grid.index(joint); at < out.length; at += grid.stride()) {
                    out[at] = absent;
                }
                return;
            }
            curve.get().fill(angle, speed, torque);
            for (Phase phase : PHASES) {
                for (int i = 0; i < angle.length; i++) {
                    out[grid.jointCell(joint, phase, i)] = torque[phase.ordinal()][i];
                }
            }
        }
    }

    Grid grid() {
        return grid;
    }

    /** Strength of the joint's named action, N·m; NaN where not known. */
    public double named(int limb, Joint joint, Phase phase, int position) {
        return named[limb][grid.jointCell(joint, phase, position)];
    }

    /** Strength of the opposite action, N·m, positive; NaN where not known, infinite where only the named action has a curve. */
    public double opposite(int limb, Joint joint, Phase phase, int position) {
        return opposite[limb][grid.jointCell(joint, phase, position)];
    }

    /** Whether nothing at all is known of this limb's action. */
    public boolean absent(int limb, Action action) {
        return limbs.get(limb).strength().of(action).isEmpty();
    }

    /** Effort of a torque: its share of what the person has in the action it asks for; NaN where that is not known. */
    double effort(int limb, int jointCell, double torque) {
        return torque >= 0 ? torque / named[limb][jointCell] : -torque / opposite[limb][jointCell];
    }

    /** 1 / strength² of the action that this torque asks for, 0 where that is not known. */
    double inverseSquare(int limb, int jointCell, double torque) {
        double strength = torque >= 0 ? named[limb][jointCell] : opposite[limb][jointCell];
        return strength > 0 ? 1 / (strength * strength) : 0;
    }
}
