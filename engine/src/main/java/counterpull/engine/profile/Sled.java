package counterpull.engine.profile;

import counterpull.engine.Constants;
import counterpull.engine.load.Carriage;
import counterpull.engine.load.Counterweight;
import counterpull.engine.load.Loaded;
import counterpull.engine.load.StackLine;
import counterpull.engine.motion.Rail;
import counterpull.engine.motion.Ride;
import counterpull.engine.motion.Stops;
import java.util.Optional;

/**
 * The machine: its rail, what rides on it, where its bottom stop can be set, and the weight stack that drives it, if one does.
 *
 * <p>A stack's line draws hip and plate together, whichever end rides: what rides lifts the stack as they move apart, and the line runs as
 * far as the rail does. Chosen kilograms are the stack's where its {@link StackLine#stack()} takes them, else plates on the carriage.
 *
 * @param rail the rail
 * @param carriage carriage, counterweight and friction
 * @param stops the bottom stops
 * @param stack the stack's line, empty where plates alone load the carriage
 */
public record Sled(Rail rail, Carriage carriage, Stops stops, Optional<StackLine> stack) {
    /** A sled loaded with plates alone. */
    public Sled(Rail rail, Carriage carriage, Stops stops) {
        this(rail, carriage, stops, Optional.empty());
    }

    /** The same sled with other bottom stops. */
    public Sled with(Stops other) {
        return new Sled(rail, carriage, other, stack);
    }

    /** The same sled on another rail. */
    public Sled with(Rail other) {
        return new Sled(other, carriage, stops, stack);
    }

    /** The same sled with another carriage. */
    public Sled with(Carriage other) {
        return new Sled(rail, other, stops, stack);
    }

    /** The same sled with another stack's line. */
    public Sled with(StackLine other) {
        return new Sled(rail, carriage, stops, Optional.of(other));
    }

    /** Whether the chosen kilograms ride on the carriage: no stack takes them. */
    public boolean platesRide() {
        return stack.isEmpty() || stack.get().stack().plates() == Loaded.Plates.ELSEWHERE;
    }

    /** Mass that starting and stopping feels along the rail with so many chosen kilograms, kg; the person is not in it. */
    public double feltMass(double plates) {
        double mass = carriage.mass() + carriage.counterweight().mass() + (platesRide() ? plates : 0);
        return stack.isPresent() ? mass + stack.get().feltMass(plates) : mass;
    }

    /** What each chosen kilogram adds to {@link #feltMass}: 1 on the carriage, 1/R² on a stack. */
    public double feltPerKilogram() {
        double ratio = platesRide() ? 1 : stack.orElseThrow().ratio();
        return 1 / (ratio * ratio);
    }

    /**
     * What draws the empty machine toward its bottom end at rest with so many chosen kilograms, N: weight along the rail, counterweight
     * off, and the stack's pull; friction, lines and the person not counted.
     */
    public double restingForce(double plates) {
        double sin = Math.sin(rail.angle()) * (rail.ride() == Ride.PLATE ? 1 : -1);
        Counterweight counter = carriage.counterweight();
        double counterShare = counter.run() == Counterweight.Run.HANGING ? 1 : sin;
        double riding = carriage.mass() + (platesRide() ? plates : 0);
        double weight = Constants.STANDARD_GRAVITY * (riding * sin - counter.mass() * counterShare);
        return stack.isPresent()
                ? weight + stack.get().stack().mass(plates) * stack.get().perKilogram(0)
                : weight;
    }
}
