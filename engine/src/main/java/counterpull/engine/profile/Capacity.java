package counterpull.engine.profile;

import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;
import counterpull.engine.motion.LegPath;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.PressMotion;
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

    static Capacity of(List<Limb> limbs, PressMotion motion) {
        Capacity capacity = new Capacity(new Grid(motion.positions()), limbs);
        for (int k = 0; k < limbs.size(); k++) {
            LimbStrength strength = limbs.get(k).strength();
            for (Joint joint : Joint.values()) {
                Fill fill = new Fill(motion.path(k), joint, capacity.grid);
                Optional<StrengthCurve> named = strength.of(joint.action());
                fill.into(capacity.named[k], named, new Sense(1, Double.NaN));
                double absent = named.isPresent() ? Double.POSITIVE_INFINITY : Double.NaN;
                fill.into(capacity.opposite[k], strength.of(joint.opposite()), new Sense(-1, absent));
            }
        }
        return capacity;
    }

    /** Which way an action shortens, and what stands where there is no curve. */
    private record Sense(int shortening, double absent) {}

    /** Writes one joint's strength into a flat array. */
    private record Fill(LegPath path, Joint joint, Grid grid) {
        void into(double[] out, Optional<StrengthCurve> curve, Sense sense) {
            double[][] torque = new double[Phase.values().length][grid.positions()];
            if (curve.isPresent()) {
                curve.get().fill(path.angles(joint), speeds(sense), torque);
            } else {
                for (double[] row : torque) {
                    java.util.Arrays.fill(row, sense.absent);
                }
            }
            for (Phase phase : Phase.values()) {
                for (int i = 0; i < grid.positions(); i++) {
                    out[grid.jointCell(joint, phase, i)] = torque[phase.ordinal()][i];
                }
            }
        }

        private double[][] speeds(Sense sense) {
            double[][] speed = new double[Phase.values().length][grid.positions()];
            for (Phase phase : Phase.values()) {
                for (int i = 0; i < grid.positions(); i++) {
                    speed[phase.ordinal()][i] = sense.shortening * path.actionSpeed(joint, phase, i);
                }
            }
            return speed;
        }
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

    /** 1 / strength² of the action that this torque asks for, 0 for an absent opposite. */
    double inverseSquare(int limb, int jointCell, double torque) {
        double strength = torque >= 0 ? named[limb][jointCell] : opposite[limb][jointCell];
        return 1 / (strength * strength);
    }

    /** Whether both senses of the joint can be judged here. */
    boolean judged(int limb, int jointCell) {
        return !Double.isNaN(named[limb][jointCell]) && !Double.isNaN(opposite[limb][jointCell]);
    }
}
