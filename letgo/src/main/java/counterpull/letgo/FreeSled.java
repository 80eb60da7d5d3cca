package counterpull.letgo;

import counterpull.engine.Constants;
import counterpull.engine.load.Carriage;
import counterpull.engine.load.Counterweight;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.SledFrame;
import counterpull.engine.load.StackLine;
import counterpull.engine.motion.LegOnPlate;
import counterpull.engine.motion.Ride;
import counterpull.engine.profile.Limb;
import counterpull.engine.profile.PressTask;
import java.util.ArrayList;
import java.util.List;

/**
 * A loaded sled that nobody pushes. Its coordinate is the hip-to-plate distance above the bottom of the range, m.
 *
 * <p>Where the plate rides the person is not part of it: their legs neither hold it nor lie on it. Where the seat rides the whole
 * person rides with it, legs limp: all of their mass counts as weight, in friction and as inertia, though the feet stay behind.
 *
 * <p>weight = −g(m sin θ − c), friction f₀ + μ m g cos θ, inertia m + counterweight, as in the profile: m carriage and plates, with
 * the person where the seat rides, c the counterweight's share. A stack adds its pull m g/R to the weight, m/R² and its line to the inertia,
 * and its line's share of all that the stack pulls, m (g + l̈/R)/R, to the friction; it never runs out of line. Friction holds at rest up to what first moves the carriage where that was
 * measured, else what it is in motion.
 *
 * <p>Ends: the stop at the bottom of the range; without stops the pain-free depth, or the bottom where that is as deep. Upward, where the first leg is straight.
 */
public final class FreeSled implements LoneMachine {
    private final double bottom;
    private final double inertia;
    private final double weight;
    private final double rubbedInertia;
    private final double friction;
    private final double holding;
    private final List<SledLine> lines;
    private final Ends ends;

    private FreeSled(PressTask task, double bottom) {
        this.bottom = bottom;
        Carriage carriage = task.sled().carriage();
        Counterweight counter = carriage.counterweight();
        boolean seatRides = task.sled().rail().ride() == Ride.SEAT;
        double angle = task.sled().rail().angle();
        double sin = seatRides ? -Math.sin(angle) : Math.sin(angle);
        double plates = task.loading().plates();
        double mass = carriage.mass()
                + (task.sled().platesRide() ? plates : 0)
                + (seatRides ? task.person().mass() : 0);
        double stackPull = task.sled()
                .stack()
                .map(line -> line.stack().mass(plates) * line.perKilogram(0))
                .orElse(0.0);
        double counterShare = counter.run() == Counterweight.Run.HANGING ? 1 : sin;
        inertia = mass
                + counter.mass()
                + task.sled().stack().map(line -> line.feltMass(plates)).orElse(0.0);
        rubbedInertia = task.sled()
                .stack()
                .map(line -> line.friction() * (line.feltMass(plates) - line.moving()))
                .orElse(0.0);
        weight = -Constants.STANDARD_GRAVITY * (mass * sin - counter.mass() * counterShare) - stackPull;
        friction = carriage.friction().constant()
                + carriage.friction().coefficient() * mass * Constants.STANDARD_GRAVITY * Math.cos(angle)
                + stackPull * task.sled().stack().map(StackLine::friction).orElse(0.0);
        holding = Math.max(friction, carriage.friction().breakaway());
        lines = lines(task);
        ends = ends(task, bottom);
    }

    /**
     * The sled of a task with what is loaded on it.
     *
     * @param task whose sled; its own range and stops say where the ends are
     */
    public static FreeSled of(PressTask task) {
        return of(task, task.stroke().bottom());
    }

    /**
     * The same over a range that starts at a stated place.
     *
     * @param task whose sled
     * @param bottom hip-to-plate distance where the range starts, m: the stop where the sled has stops
     */
    public static FreeSled of(PressTask task, double bottom) {
        return new FreeSled(task, bottom);
    }

    private static List<SledLine> lines(PressTask task) {
        SledFrame frame = new SledFrame(task.sled().rail(), task.stance().seat());
        List<SledLine> lines = new ArrayList<>();
        for (ElasticLine line : task.loading().lines()) {
            lines.add(new SledLine(line, frame));
        }
        return List.copyOf(lines);
    }

    private static Ends ends(PressTask task, double bottom) {
        double straight = Double.POSITIVE_INFINITY;
        for (LegOnPlate leg : task.legs()) {
            straight = Math.min(straight, leg.plateAt(0));
        }
        return task.sled().stops().any()
                ? new Ends(0, Ends.Bottom.STOP, straight - bottom)
                : new Ends(Math.min(0, painFree(task) - bottom), Ends.Bottom.NOTHING, straight - bottom);
    }

    /**
     * The first pain-free depth that a sinking plate passes, as hip-to-plate distance, m; the person's own bottom where no leg can
     * fold that far in this row.
     */
    private static double painFree(PressTask task) {
        List<LegOnPlate> legs = task.legs();
        double first = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < legs.size(); k++) {
            Limb limb = task.person().limbs().get(k);
            double knee = limb.range().painFree();
            if (reaches(limb, legs.get(k), knee)) {
                first = Math.max(first, legs.get(k).plateAt(knee));
            }
        }
        return first == Double.NEGATIVE_INFINITY ? task.ownStroke().bottom() : first;
    }

    private static boolean reaches(Limb limb, LegOnPlate leg, double knee) {
        double thigh = limb.leg().thigh().length();
        double shank = limb.leg().shank().length();
        double square = thigh * thigh + shank * shank + 2 * thigh * shank * Math.cos(knee);
        return square > leg.ankleAcross() * leg.ankleAcross();
    }

    /** Where a hip-to-plate distance lies in this machine's coordinate, m. */
    public double placeOf(double plate) {
        return plate - bottom;
    }

    /** Hip-to-plate distance at a place, m. */
    public double plateAt(double x) {
        return bottom + x;
    }

    @Override
    public double inertia(double x) {
        return inertia;
    }

    @Override
    public double inertiaSlope(double x) {
        return 0;
    }

    @Override
    public double rubbedInertia(double x) {
        return rubbedInertia;
    }

    @Override
    public double weight(double x) {
        return weight;
    }

    @Override
    public double rubber(double x, Sense sense) {
        double sum = 0;
        for (SledLine line : lines) {
            sum += line.pull(bottom + x, sense);
        }
        return sum;
    }

    @Override
    public double storing(double x) {
        double sum = 0;
        for (SledLine line : lines) {
            sum += line.heldPull(bottom + x);
        }
        return sum;
    }

    @Override
    public double friction(double x) {
        return friction;
    }

    @Override
    public double holding(double x) {
        return holding;
    }

    @Override
    public double weightEnergy(double x) {
        return -weight * x;
    }

    @Override
    public double rubberEnergy(double x) {
        double sum = 0;
        for (SledLine line : lines) {
            sum += line.energy(bottom + x);
        }
        return sum;
    }

    @Override
    public double testedRoom(double x) {
        double least = Double.POSITIVE_INFINITY;
        for (SledLine line : lines) {
            least = Math.min(least, line.testedRoom(bottom + x));
        }
        return least;
    }

    @Override
    public Ends ends() {
        return ends;
    }
}
