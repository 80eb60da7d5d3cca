package counterpull.engine.load;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;
import counterpull.engine.body.Joint;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Course;
import counterpull.engine.motion.Phase;
import java.util.ArrayList;
import java.util.List;

/**
 * A machine known only by what a scale read on it: force or torque against position, once moving slowly up, once slowly down.
 *
 * <p>Formula: held (up + down)/2, lifting up, lowering down, N or N·m, against the motion toward the top; what lies between two readings
 * by a monotone cubic through their means and one through their half differences, which nowhere passes the mean. Stored: the integral of the mean; lost: half the
 * difference × speed. Sign: positive works against lifting. Range: from the first reading's position to the last one's, never beyond: a
 * refusal names the position. Source: Fritsch and Carlson 1980 for the curve; the mean of both ways is what is left without a friction that
 * is the same both ways (common practice, no source).
 *
 * <p>Not in it: the machine's inertia, which slow readings do not show. Forces of a fast stroke are larger at its start: see {@link
 * #notKnown}.
 *
 * @param name as a person says it ("pulldown machine, 8th pin")
 * @param acts where it acts and what its positions count
 * @param readings two or more, positions rising
 */
public record MeasuredProfile(String name, Acts acts, List<Reading> readings) implements Resistance {
    /**
     * One place that was measured.
     *
     * @param position an anatomical angle, rad, or travel, m, as {@link Acts} says
     * @param up moving slowly toward the top there, N or N·m, {@code down} or more
     * @param down moving slowly back, zero or more
     */
    public record Reading(double position, double up, double down) {
        private static final Require.Limits SIZE = new Require.Limits(0, 1e5);

        public Reading {
            Require.finite(position, "position of a reading", "rad or m");
            Require.within(down, SIZE, "reading on the way down", "N or N·m");
            Require.within(
                    up, new Require.Limits(down, 1e5), "reading on the way up (not below the one down)", "N or N·m");
        }
    }

    /** Where a measured machine acts. */
    public sealed interface Acts permits Force, Torque {
        /** How position and motion run on it over one limb's range. */
        MeasuredRun run(ChainPath path);
    }

    /**
     * A force on a point of the body, against its motion toward the top: along the tangent of its track.
     *
     * @param at where hand or foot meets the machine
     * @param position what the readings' positions count
     */
    public record Force(BodyPoint at, Position position) implements Acts {
        @Override
        public MeasuredRun run(ChainPath path) {
            return position.counted(path, at).againstMotion(path);
        }
    }

    /**
     * A torque on the segment after a joint, against its turning toward the top; positions are that joint's anatomical angle.
     *
     * @param joint the joint that the machine's axis is at
     */
    public record Torque(Joint joint) implements Acts {
        @Override
        public MeasuredRun run(ChainPath path) {
            return MeasuredRun.againstTurning(path, joint);
        }
    }

    /** What the positions of a measured force count. */
    public sealed interface Position permits Angle, Travel {
        /** The positions over one limb's range, for a force on a point of it. */
        MeasuredRun counted(ChainPath path, BodyPoint at);
    }

    /**
     * Positions are a joint's anatomical angle, rad: for a movement that this joint drives.
     *
     * @param joint the driving joint
     */
    public record Angle(Joint joint) implements Position {
        @Override
        public MeasuredRun counted(ChainPath path, BodyPoint at) {
            return MeasuredRun.byAngle(path, at, joint);
        }
    }

    /**
     * Positions are travel along the path, m, rising toward the top: for a movement that is timed by travel.
     *
     * @param start position, as measured, at which this range's bottom lies, m
     */
    public record Travel(double start) implements Position {
        public Travel {
            Require.finite(start, "measured position of the bottom of the range", "m");
        }

        @Override
        public MeasuredRun counted(ChainPath path, BodyPoint at) {
            return MeasuredRun.byTravel(path, at, start);
        }
    }

    public MeasuredProfile {
        readings = List.copyOf(readings);
        Require.within(readings.size(), new Require.Limits(2, 1000), "readings of " + name, "");
        for (int i = 1; i < readings.size(); i++) {
            requireRise(readings.get(i - 1).position(), readings.get(i).position(), "position of reading " + (i + 1));
        }
    }

    private static void requireRise(double before, double position, String quantity) {
        if (position <= before) {
            throw new Refusal(
                    Fault.OUTSIDE_LIMITS,
                    quantity,
                    position,
                    before,
                    "rad or m",
                    quantity + " must be above that of the reading before it");
        }
    }

    @Override
    public String words() {
        return name;
    }

    /** What these readings cannot say, for whoever shows its numbers. */
    public String notKnown() {
        return "the inertia of " + name
                + " is not known: slow readings do not show it, so moving faster asks more at the start of a "
                + "stroke and less at its end than is said here";
    }

    @Override
    public List<Pull> on(ChainPath path, double gravity) {
        Course course = path.course();
        MeasuredRun run = acts.run(path);
        MeasuredCurves curves = new MeasuredCurves(name, readings);
        double[] mean = new double[course.cells()];
        double[] rubbing = new double[course.cells()];
        for (int i = 0; i < path.positions(); i++) {
            double position = curves.inside(run.position[i], run.unit);
            for (Phase phase : Phase.values()) {
                int cell = course.cell(phase, i);
                mean[cell] = run.sign * curves.mean(position);
                rubbing[cell] = run.sign * phase.sense() * curves.half(position);
            }
        }
        return List.of(run.pull(
                name,
                List.of(
                        new Share(Part.GRAVITY, name, Amount.ONE, mean),
                        new Share(Part.FRICTION, "friction, " + name, Amount.ONE, rubbing))));
    }

    @Override
    public Ledger ledger(ChainPath path, double gravity, double plates) {
        Course course = path.course();
        MeasuredRun run = acts.run(path);
        MeasuredCurves curves = new MeasuredCurves(name, readings);
        double[] stored = stored(course, run, curves);
        Ledger ledger = Ledger.empty(course);
        for (int i = 0; i < path.positions(); i++) {
            double half = curves.half(curves.inside(run.position[i], run.unit));
            for (Phase phase : Phase.values()) {
                int cell = course.cell(phase, i);
                ledger.stored()[cell] = stored[i];
                ledger.lost()[cell] = half * run.way[i] * Math.abs(course.speed(phase, i));
            }
        }
        return ledger;
    }

    /** ∫ mean · d(way), J, from the bottom. */
    private static double[] stored(Course course, MeasuredRun run, MeasuredCurves curves) {
        double[] value = new double[run.way.length];
        double[] slope = new double[run.way.length];
        for (int i = 0; i < value.length; i++) {
            double position = curves.inside(run.position[i], run.unit);
            value[i] = curves.mean(position) * run.way[i];
            slope[i] = curves.meanSlope(position) * run.positionSlope[i] * run.way[i]
                    + curves.mean(position) * run.waySlope[i];
        }
        return RunningTotal.of(course, value, slope);
    }

    @Override
    public boolean takesPlates() {
        return false;
    }

    @Override
    public List<Knob> knobs() {
        return List.of(new Knob("readings of the " + name, Knob.Kind.READINGS, this::times));
    }

    private MeasuredProfile times(double factor) {
        List<Reading> scaled = new ArrayList<>();
        for (Reading reading : readings) {
            scaled.add(new Reading(reading.position(), factor * reading.up(), factor * reading.down()));
        }
        return new MeasuredProfile(name, acts, scaled);
    }
}
