package counterpull.engine.crosscheck;

import counterpull.engine.motion.Phase;
import java.util.function.DoubleUnaryOperator;

/**
 * One moment of one stroke on a plain sled: energies as functions of time, differentiated by a stencil of step seconds/1000,
 * and forces and torques from positions differentiated twice.
 */
final class PlainMoment {
    private static final double STEPS = 1000;
    private static final double RAIL_STEP = 5e-4;

    /** Two stencils inside each other and one step to spare. */
    private static final int NEEDED = 2 * Stencil.REACH + 1;

    final PlainSled sled;
    final PlainStroke stroke;
    final Phase phase;
    final double time;
    private final double step;

    PlainMoment(PlainSled sled, Phase phase, double share) {
        this.sled = sled;
        this.phase = phase;
        stroke = PlainStroke.of(sled.task.tempo(), phase, sled.top - sled.bottom);
        time = share * stroke.seconds();
        step = stroke.seconds() / STEPS;
    }

    double plate(double at) {
        return sled.bottom + stroke.at(at);
    }

    double plate() {
        return plate(time);
    }

    /** Whether no corner of the movement and no kink of a line lies within the stencils' reach. */
    boolean smooth() {
        double reach = NEEDED * step;
        if (stroke.clearance(time) < reach) {
            return false;
        }
        double inTime = Math.abs(plate(time + reach) - plate(time - reach));
        double inPlace = Math.max(inTime, Stencil.REACH * RAIL_STEP);
        for (PlainLine line : sled.lines) {
            double before = sled.linePath(line, plate() - inPlace);
            double at = sled.linePath(line, plate());
            double after = sled.linePath(line, plate() + inPlace);
            boolean turns = (at - before) * (after - at) <= 0;
            boolean kink = line.tightness(before) * line.tightness(after) <= 0;
            if (turns || kink) {
                return false;
            }
        }
        return true;
    }

    private double rate(DoubleUnaryOperator f, double at) {
        return Stencil.first(f, at, step);
    }

    /** How fast a joint turns in the sense of its named action, rad/s: how fast its anatomical angle falls. */
    double jointRate(int leg, int joint) {
        return -rate(t -> sled.angles(sled.legs.get(leg), plate(t))[joint], time);
    }

    /** d/dt of kinetic, gravitational and elastic energy, plus what friction takes, W. */
    double powerStored() {
        double speed = Math.abs(rate(this::plate, time));
        return rate(this::energy, time) + (sled.friction() + stackFriction()) * speed;
    }

    /** What the stack's line loses to friction, N: a share of what the stack itself weighs and takes to speed up. */
    private double stackFriction() {
        double upward = acceleration(this::plate) * sled.stackRise();
        return sled.stackFriction() * sled.stackMass() * (PlainSled.G + upward) * sled.stackRise();
    }

    /** Mass of stack and line as a rider feels it, kg, from their kinetic energy. */
    private double stackFelt() {
        return sled.stackMass() * sled.stackRise() * sled.stackRise() + sled.stackMoving();
    }

    /** How high the stack's energy stands, J. */
    private double stackHeight(double plate) {
        return sled.stackMass() * PlainSled.G * plate * sled.stackRise();
    }

    double energy(double at) {
        double speed = rate(this::plate, at);
        double sum = (sled.dead() + sled.carriage.counterweight().mass() + stackFelt()) * speed * speed / 2
                + stackHeight(plate(at))
                + sled.weightEnergy(sled.ridden(plate(at)))
                + lineEnergy(plate(at));
        for (PlainLeg leg : sled.legs) {
            for (int segment = 0; segment < 3; segment++) {
                sum += segmentEnergy(leg, segment, at);
            }
        }
        return sum;
    }

    private double segmentEnergy(PlainLeg leg, int segment, double at) {
        double turning = rate(t -> sled.directions(leg, plate(t))[segment], at);
        double along = rate(t -> sled.com(leg, segment, plate(t))[0], at);
        double across = rate(t -> sled.com(leg, segment, plate(t))[1], at);
        double height = sled.height(sled.com(leg, segment, plate(at)));
        return leg.mass[segment] * ((along * along + across * across) / 2 + PlainSled.G * height)
                + leg.inertia[segment] * turning * turning / 2;
    }

    /** Energy of the lines that counts in this phase: less where a line gives back less than it took. */
    double lineEnergy(double plate) {
        double sum = 0;
        for (PlainLine line : sled.lines) {
            double path = sled.linePath(line, plate);
            sum += line.energy(path) * (shortens(line) ? line.returned() : 1);
        }
        return sum;
    }

    private boolean shortens(PlainLine line) {
        double growth = Stencil.first(p -> sled.linePath(line, p), plate(), RAIL_STEP);
        return phase.sense() * growth < 0;
    }

    private double acceleration(DoubleUnaryOperator f) {
        return phase == Phase.HELD ? 0 : Stencil.second(f, time, step);
    }

    /** Contact force along the rail, N: what moves the riding end on by a little, everything on it held rigid. */
    double force() {
        double mass = sled.dead() + sled.carriage.counterweight().mass() + stackFelt();
        double force = mass * acceleration(this::plate)
                + Stencil.first(this::energyOfPlace, plate(), RAIL_STEP)
                + phase.sense() * (sled.friction() + stackFriction());
        return sled.plateRides ? force : force + ridingLegs();
    }

    private double energyOfPlace(double plate) {
        return sled.weightEnergy(sled.ridden(plate)) + stackHeight(plate) + lineEnergy(plate);
    }

    private double ridingLegs() {
        double force = 0;
        for (PlainLeg leg : sled.legs) {
            for (int segment = 0; segment < 3; segment++) {
                int part = segment;
                double along = acceleration(t -> sled.com(leg, part, plate(t))[0]);
                force -= leg.mass[segment] * (along + PlainSled.G * Math.sin(sled.rail.angle()));
            }
        }
        return force;
    }

    /**
     * Torque that a joint must give in the sense of its named action, N·m: −m(a − g) at every centre of mass beyond it and
     * the plate's push back, about the joint.
     *
     * @param push force of this limb on the plate, along and across the rail, N
     */
    double torque(int leg, int joint, double[] push) {
        PlainLeg body = sled.legs.get(leg);
        double[] centre = sled.joints(body, plate())[joint];
        double[] contact = sled.pressurePoint(body, plate());
        double torque = cross(centre, contact, push);
        double[] up = {Math.sin(sled.rail.angle()), Math.cos(sled.rail.angle())};
        for (int segment = joint; segment < 3; segment++) {
            int part = segment;
            double[] need = new double[2];
            for (int axis = 0; axis < 2; axis++) {
                int which = axis;
                double a = acceleration(t -> sled.com(body, part, plate(t))[which]);
                need[axis] = body.mass[segment] * (a + PlainSled.G * up[axis]);
            }
            torque += cross(centre, sled.com(body, segment, plate()), need)
                    + body.inertia[segment] * acceleration(t -> sled.directions(body, plate(t))[part]);
        }
        // counter-clockwise on the distal segment: extension of the knee, but flexion of hip and ankle
        return joint == 1 ? torque : -torque;
    }

    private static double cross(double[] from, double[] to, double[] force) {
        return (to[0] - from[0]) * force[1] - (to[1] - from[1]) * force[0];
    }
}
