package counterpull.engine.profile;

import counterpull.engine.body.Joint;
import counterpull.engine.load.Pull;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.JointSense;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.PointTrack;
import counterpull.engine.planar.Chain;
import counterpull.engine.planar.ChainMotion;
import counterpull.engine.planar.NewtonEuler;
import counterpull.engine.planar.PointLoads;
import counterpull.engine.planar.Vec;
import java.util.List;

/**
 * The terms of one limb of an exercise over its range: its own weight and inertia as joint torques (N·m, in the sense of each joint's
 * named action), and for each pull how much torque one newton (or one N·m of a couple) makes at each joint.
 *
 * <p>Own weight and inertia come from one Newton–Euler pass each; a pull enters through its moment arms alone, because torques are
 * linear in every force: chain torque about joint k = −(P − J_k) × F for every k at or before the segment that is pulled.
 */
final class ChainTerms {
    private final ChainPath path;
    private final Grid grid;
    private final List<Pull> pulls;
    private final double[] weight;
    private final double[] inertia;
    private final double[][] arms;

    private ChainTerms(ChainPath path, Grid grid, List<Pull> pulls) {
        this.path = path;
        this.grid = grid;
        this.pulls = List.copyOf(pulls);
        weight = new double[grid.jointCells()];
        inertia = new double[grid.jointCells()];
        arms = new double[pulls.size()][grid.positions() * grid.stride()];
    }

    /**
     * Lays them out.
     *
     * @param path the limb over its range
     * @param grid positions and joints
     * @param pulls what resists
     * @param gravity acceleration of gravity in the plane, m/s²
     */
    static ChainTerms of(ChainPath path, Grid grid, List<Pull> pulls, double gravity) {
        ChainTerms terms = new ChainTerms(path, grid, pulls);
        terms.ownTorques(gravity);
        for (int p = 0; p < pulls.size(); p++) {
            terms.arms(pulls.get(p), terms.arms[p]);
        }
        return terms;
    }

    private void ownTorques(double gravity) {
        Chain chain = path.chain();
        ChainMotion motion = new ChainMotion(chain.size());
        NewtonEuler weighing = new NewtonEuler(chain).gravity(0, -gravity);
        NewtonEuler moving = new NewtonEuler(chain);
        PointLoads nothing = new PointLoads(chain.size());
        double[] torque = new double[chain.size()];
        for (int i = 0; i < grid.positions(); i++) {
            for (Phase phase : Phase.values()) {
                path.put(motion, phase, i);
                moving.torques(motion, nothing, torque);
                store(torque, inertia, phase, i);
            }
            motion.rest();
            weighing.torques(motion, nothing, torque);
            for (Phase phase : Phase.values()) {
                store(torque, weight, phase, i);
            }
        }
    }

    private void store(double[] torque, double[] into, Phase phase, int i) {
        for (Joint joint : grid.joints()) {
            int k = path.index(joint);
            into[grid.jointCell(joint, phase, i)] = path.senses().get(k).torqueSign() * torque[k];
        }
    }

    private void arms(Pull pull, double[] into) {
        PointTrack track = path.track(pull.at());
        for (int i = 0; i < grid.positions(); i++) {
            for (Joint joint : grid.joints()) {
                int k = path.index(joint);
                if (k <= pull.at().segment()) {
                    JointSense sense = path.senses().get(k);
                    into[i * grid.stride() + grid.index(joint)] = -sense.torqueSign() * turning(pull, track, k, i);
                }
            }
        }
    }

    private double turning(Pull pull, PointTrack track, int segment, int i) {
        if (pull.isCouple()) {
            return 1;
        }
        Vec arm = track.at(i).minus(path.joint(segment, i));
        return arm.cross(pull.direction(i));
    }

    ChainPath path() {
        return path;
    }

    /** What resists, in the order of the exercise. */
    List<Pull> pulls() {
        return pulls;
    }

    /** Own weight as a torque, N·m. */
    double weight(Joint joint, Phase phase, int position) {
        return weight[grid.jointCell(joint, phase, position)];
    }

    /** Own inertia as a torque, N·m. */
    double inertia(Joint joint, Phase phase, int position) {
        return inertia[grid.jointCell(joint, phase, position)];
    }

    /** Torque per unit of a pull's size, m (a pure number for a couple), in the sense of the joint's named action. */
    double arm(int pull, Joint joint, int position) {
        return arms[pull][position * grid.stride() + grid.index(joint)];
    }

    /**
     * Torques asked, N·m, by phase × position × joint.
     *
     * @param share fraction of every pull that this limb bears
     * @param plates chosen plates, kg
     */
    double[] torques(double share, double plates) {
        double[] torque = new double[grid.jointCells()];
        for (int at = 0; at < torque.length; at++) {
            torque[at] = weight[at] + inertia[at];
        }
        for (int p = 0; p < pulls.size(); p++) {
            add(torque, p, share, plates);
        }
        return torque;
    }

    private void add(double[] torque, int pull, double share, double plates) {
        int stride = grid.stride();
        for (int cell = 0; cell < grid.cells(); cell++) {
            double size = share * pulls.get(pull).size(cell, plates);
            int arm = cell % grid.positions() * stride;
            for (int j = 0; j < stride; j++) {
                torque[cell * stride + j] += size * arms[pull][arm + j];
            }
        }
    }
}
