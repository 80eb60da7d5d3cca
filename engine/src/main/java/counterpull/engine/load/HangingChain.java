package counterpull.engine.load;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Course;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.PointTrack;
import java.util.List;

/**
 * A chain that hangs from a point of the body and lies on the floor: the higher the point, the more of it hangs.
 *
 * <p>Formula: force = λ h (g + ÿ), N, downward; λ mass per metre, kg/m; h = height of the top above the floor, at most the chain's
 * length, m; ÿ upward acceleration of the top, m/s². Once the whole chain is clear of the floor it is a constant mass. Range: the top at
 * or above the floor, in an upright plane. Only up and down counts: a free chain does not follow to and fro (its swing is neglected).
 * Source: Newton's second law for the part that hangs; linear gain with height as McMaster, Cronin and McGuigan 2010 measured it
 * (from memory). A chain doubled over (both ends at the top) is one of twice the mass per metre and half the length.
 *
 * <p>Starting the links that leave the floor takes λẏ² more while the top rises: {@link #pickedUp}, shown apart, in no total. So the
 * ledger's kinetic energy is that of what hangs less what links got by being picked up, ∫ λ ẏ²/2 dh; links laid down lose theirs, λ|ẏ|³/2
 * per second, to the floor. Not in the ledger: λẏ³ per second while rising, half of it energy of the links picked up, half lost in
 * jerking them off the floor. A balanced stand leans as if it were not there: what hangs changes on the way. Check: worked example K.
 *
 * @param name as a person says it ("chains")
 * @param top where it hangs
 * @param perMetre λ, kg per metre of height, of all chains together, above zero
 * @param length of chain that can come clear of the floor, m, above zero
 * @param floor height of the floor over the fixed joint, m; negative where the floor is below it
 */
public record HangingChain(String name, BodyPoint top, double perMetre, double length, double floor)
        implements Resistance {
    private static final Require.Limits MASS = new Require.Limits(0, 200);
    private static final Require.Limits LENGTH = new Require.Limits(0, 10);
    private static final Require.Limits FLOOR = new Require.Limits(-5, 5);
    private static final double TOUCH = 1e-9;

    public HangingChain {
        Require.within(Require.positive(perMetre, "mass of " + name, "kg/m"), MASS, "mass of " + name, "kg/m");
        Require.within(Require.positive(length, "length of " + name, "m"), LENGTH, "length of " + name, "m");
        Require.within(floor, FLOOR, "floor under " + name + ", over the fixed joint", "m");
    }

    @Override
    public String words() {
        return name;
    }

    /** How much of it hangs clear of the floor at each position, m. */
    public double[] clear(ChainPath path) {
        PointTrack track = path.track(top);
        double[] clear = new double[path.positions()];
        for (int i = 0; i < clear.length; i++) {
            clear[i] = Math.min(length, aboveFloor(track.at(i).y()));
        }
        return clear;
    }

    private double aboveFloor(double y) {
        if (y < floor - TOUCH) {
            throw new Refusal(
                    Fault.OUTSIDE_LIMITS,
                    "height over the fixed joint of where " + name + " hangs",
                    y,
                    floor,
                    "m",
                    "the top of the chain would be below the floor: measure again how high the floor is from the fixed joint");
        }
        return Math.max(0, y - floor);
    }

    @Override
    public List<Pull> on(ChainPath path, double gravity) {
        Require.positive(gravity, "gravity in the plane of " + name, "m/s²");
        Course course = path.course();
        PointTrack track = path.track(top);
        double[] clear = clear(path);
        double[] weight = new double[course.cells()];
        double[] inertia = new double[course.cells()];
        double[][] down = new double[path.positions()][];
        for (int i = 0; i < path.positions(); i++) {
            down[i] = new double[] {0, -1};
            for (Phase phase : Phase.values()) {
                int cell = course.cell(phase, i);
                double mass = perMetre * clear[i];
                weight[cell] = mass * gravity;
                inertia[cell] = mass * track.acceleration(course, phase, i).y();
            }
        }
        List<Share> shares = List.of(
                new Share(Part.GRAVITY, name, Amount.ONE, weight), new Share(Part.INERTIA, name, Amount.ONE, inertia));
        return List.of(Pull.force(name, top, down, Pull.Holds.ONE_WAY, shares));
    }

    /**
     * Force that starts the links leaving the floor, λẏ² while the top rises and part of the chain still lies, else 0, N downward, by phase ×
     * position. Shown apart: it is in no pull and no ledger.
     */
    public double[] pickedUp(ChainPath path) {
        Course course = path.course();
        double[] force = new double[course.cells()];
        for (Phase phase : Phase.values()) {
            double[] rising = rising(path, phase, 1);
            for (int i = 0; i < rising.length; i++) {
                force[course.cell(phase, i)] = perMetre * rising[i] * rising[i];
            }
        }
        return force;
    }

    /** ẏ where the top moves in this sense (1 up, −1 down) and part of the chain still lies on the floor, else 0, m/s. */
    private double[] rising(ChainPath path, Phase phase, int sense) {
        PointTrack track = path.track(top);
        double[] clear = clear(path);
        double[] speed = new double[clear.length];
        for (int i = 0; i < speed.length; i++) {
            double v = track.velocity(path.course(), phase, i).y();
            speed[i] = clear[i] < length && v * sense > 0 ? v : 0;
        }
        return speed;
    }

    @Override
    public Ledger ledger(ChainPath path, double gravity, double plates) {
        Course course = path.course();
        PointTrack track = path.track(top);
        double[] clear = clear(path);
        Ledger ledger = Ledger.empty(course);
        for (Phase phase : Phase.values()) {
            double[] pickedUp = energyPickedUp(path, phase);
            double[] laidDown = rising(path, phase, -1);
            for (int i = 0; i < path.positions(); i++) {
                int cell = course.cell(phase, i);
                double v = track.velocity(course, phase, i).y();
                double middle = track.at(i).y() - clear[i] / 2;
                ledger.stored()[cell] = perMetre * clear[i] * gravity * (middle - floor);
                ledger.kinetic()[cell] = perMetre * (clear[i] * v * v / 2 - pickedUp[i]);
                ledger.lost()[cell] = perMetre * Math.abs(Math.pow(laidDown[i], 3)) / 2;
            }
        }
        return ledger;
    }

    /** ∫ (ẏ²/2) dh over the links that leave the floor, J per kg/m, from the bottom to each position. */
    private double[] energyPickedUp(ChainPath path, Phase phase) {
        Course course = path.course();
        PointTrack track = path.track(top);
        double[] rising = rising(path, phase, 1);
        double[] value = new double[rising.length];
        double[] slope = new double[rising.length];
        for (int i = 0; i < rising.length; i++) {
            double up = track.slope(i).y();
            double energy = rising[i] * rising[i] / 2;
            value[i] = energy * up;
            // d(ẏ²/2)/dx = ÿ y′
            double gained =
                    rising[i] == 0 ? 0 : track.acceleration(course, phase, i).y() * up;
            slope[i] = gained * up + energy * track.curve(i).y();
        }
        return RunningTotal.of(course, value, slope);
    }

    @Override
    public boolean takesPlates() {
        return false;
    }

    @Override
    public List<Knob> knobs() {
        return List.of(Knob.mass(name, factor -> new HangingChain(name, top, factor * perMetre, length, floor)));
    }
}
