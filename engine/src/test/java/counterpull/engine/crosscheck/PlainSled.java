package counterpull.engine.crosscheck;

import counterpull.engine.Constants;
import counterpull.engine.load.Carriage;
import counterpull.engine.load.Counterweight;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.Loaded;
import counterpull.engine.load.StackLine;
import counterpull.engine.motion.Rail;
import counterpull.engine.motion.Ride;
import counterpull.engine.motion.SeatSetting;
import counterpull.engine.profile.Limb;
import counterpull.engine.profile.PressTask;
import java.util.ArrayList;
import java.util.List;

/**
 * A person on a sled as positions and energies, from the same input as the engine but none of its code. The frame stands
 * still; along the rail its zero is where the hip's foot on the reference line is when the plate rides, and the plate point
 * when the seat rides.
 */
final class PlainSled {
    static final double G = Constants.STANDARD_GRAVITY;
    final PressTask task;
    final Rail rail;
    final Carriage carriage;
    final boolean plateRides;
    final List<PlainLeg> legs = new ArrayList<>();
    final List<PlainLine> lines = new ArrayList<>();
    final double bottom;
    final double top;
    private final SeatSetting seat;

    PlainSled(PressTask task) {
        this.task = task;
        rail = task.sled().rail();
        carriage = task.sled().carriage();
        plateRides = rail.ride() == Ride.PLATE;
        seat = task.stance().seat();
        for (ElasticLine line : task.loading().lines()) {
            lines.add(new PlainLine(line));
        }
        double deepest = 0;
        double farthest = Double.POSITIVE_INFINITY;
        for (Limb limb : task.person().limbs()) {
            PlainLeg leg = new PlainLeg(limb.leg());
            legs.add(leg);
            deepest = Math.max(deepest, plateAt(leg, limb.range().bottom()));
            farthest = Math.min(farthest, plateAt(leg, limb.range().top()));
        }
        bottom = deepest;
        top = farthest;
    }

    double share(int limb) {
        return task.person().limbs().get(limb).share();
    }

    // where the ankle is from the plate point: heel up the surface, ankle in front of the sole
    private double[] ankleFromPlate(PlainLeg leg) {
        double d = rail.plateTilt();
        double up = task.stance().row().heel() + leg.ankleFromHeel;
        return new double[] {
            -up * Math.sin(d) - leg.ankleHeight * Math.cos(d), up * Math.cos(d) - leg.ankleHeight * Math.sin(d)
        };
    }

    private double[] hipFromSeat() {
        return new double[] {
            task.stance().hipShift().x(),
            seat.hipAcross() + task.stance().hipShift().y()
        };
    }

    private double plateAt(PlainLeg leg, double knee) {
        double reach = leg.reach(knee);
        double across = ankleFromPlate(leg)[1] - hipFromSeat()[1];
        return Math.sqrt(reach * reach - across * across) + hipFromSeat()[0] - ankleFromPlate(leg)[0];
    }

    /** Where seat and plate stand along the rail for a hip-to-plate distance. */
    double seatAt(double plate) {
        return plateRides ? 0 : -plate;
    }

    double plateStands(double plate) {
        return plateRides ? plate : 0;
    }

    double[] hip(double plate) {
        double[] from = hipFromSeat();
        return new double[] {seatAt(plate) + from[0], from[1]};
    }

    double[] ankle(PlainLeg leg, double plate) {
        double[] from = ankleFromPlate(leg);
        return new double[] {plateStands(plate) + from[0], from[1]};
    }

    double footDirection() {
        return Math.PI / 2 + rail.plateTilt();
    }

    double[] directions(PlainLeg leg, double plate) {
        return leg.directions(hip(plate), ankle(leg, plate), footDirection());
    }

    /** Hip, knee and ankle. */
    double[][] joints(PlainLeg leg, double plate) {
        double[] hip = hip(plate);
        double[] knee = PlainLeg.point(hip, directions(leg, plate)[0], new double[] {leg.length[0], 0});
        return new double[][] {hip, knee, ankle(leg, plate)};
    }

    double[] com(PlainLeg leg, int segment, double plate) {
        return PlainLeg.point(joints(leg, plate)[segment], directions(leg, plate)[segment], leg.com[segment]);
    }

    double[] pressurePoint(PlainLeg leg, double plate) {
        double along = task.stance().pressurePoint() * leg.footLength - leg.ankleFromHeel;
        return PlainLeg.point(ankle(leg, plate), footDirection(), new double[] {along, -leg.ankleHeight});
    }

    /** Anatomical angles of hip, knee and ankle, not wrapped. */
    double[] angles(PlainLeg leg, double plate) {
        double[] d = directions(leg, plate);
        double trunk = seat.trunkDirection() - rail.angle();
        return new double[] {d[0] - trunk + Math.PI, d[0] - d[1], d[2] - d[1] - Math.PI / 2};
    }

    double height(double[] point) {
        return point[0] * Math.sin(rail.angle()) + point[1] * Math.cos(rail.angle());
    }

    /** Kilograms of the stack; 0 without one. */
    double stackMass() {
        return task.sled()
                .stack()
                .map(line -> line.stack().mass(task.loading().plates()))
                .orElse(0.0);
    }

    /** How far the stack rises for each metre of rail. */
    double stackRise() {
        return task.sled().stack().map(line -> 1 / line.ratio()).orElse(0.0);
    }

    /** Share of the stack's pull that its line's friction takes. */
    double stackFriction() {
        return task.sled().stack().map(StackLine::friction).orElse(0.0);
    }

    /** What moves with the stack's line, kg. */
    double stackMoving() {
        return task.sled().stack().map(StackLine::moving).orElse(0.0);
    }

    /** Chosen plates that ride on the carriage, kg. */
    private double platesOn() {
        boolean stacked = task.sled()
                .stack()
                .map(line -> line.stack().plates() == Loaded.Plates.HERE)
                .orElse(false);
        return stacked ? 0 : task.loading().plates();
    }

    /** What rides besides a person's legs: carriage and plates, and on a riding seat the rest of the body, kg. */
    double dead() {
        double mass = carriage.mass() + platesOn();
        return plateRides ? mass : mass + restOfBody();
    }

    private double restOfBody() {
        double rest = task.person().mass();
        for (PlainLeg leg : legs) {
            rest -= leg.mass[0] + leg.mass[1] + leg.mass[2];
        }
        return rest;
    }

    /** What presses on the rail, kg. */
    double pressing() {
        double mass = carriage.mass() + platesOn();
        return plateRides ? mass : mass + task.person().mass();
    }

    /** Friction against the motion, N. */
    double friction() {
        return carriage.friction().constant()
                + carriage.friction().coefficient() * pressing() * G * Math.cos(rail.angle());
    }

    /** How far the riding end has come along the rail, m. */
    double ridden(double plate) {
        return plateRides ? plate : -plate;
    }

    /** Potential energy of what rides besides the legs, with the counterweight, J. */
    double weightEnergy(double ridden) {
        double sin = Math.sin(rail.angle());
        Counterweight counter = carriage.counterweight();
        // the counterweight sinks as far as the load rises by riding; hanging, it sinks as far as the load rides upward
        boolean hanging = counter.run() == Counterweight.Run.HANGING;
        double uphill = plateRides ? 1 : -1;
        double counterSinks = hanging ? uphill * ridden : sin * ridden;
        return dead() * G * sin * ridden - counter.mass() * G * counterSinks;
    }

    double linePath(PlainLine line, double plate) {
        double[] way = lineWay(line, plate);
        return Math.sqrt(way[0] * way[0] + way[1] * way[1] + way[2] * way[2]);
    }

    /** From attachment to anchor, along, across and to the side of the rail, m. */
    double[] lineWay(PlainLine line, double plate) {
        double origin = seat.hipToPlate() - rail.tapeSense() * seat.mark();
        double anchorShift = plateRides ? origin : plateStands(plate);
        double attachmentShift = plateRides ? plate : seatAt(plate);
        return new double[] {
            line.anchor[0] + anchorShift - line.attachment[0] - attachmentShift,
            line.anchor[1] - line.attachment[1],
            line.anchor[2] - line.attachment[2]
        };
    }
}
