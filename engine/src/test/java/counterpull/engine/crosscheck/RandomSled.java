package counterpull.engine.crosscheck;

import counterpull.engine.body.Foot;
import counterpull.engine.body.Leg;
import counterpull.engine.body.Segment;
import counterpull.engine.body.Side;
import counterpull.engine.elastic.ElasticLaw;
import counterpull.engine.elastic.LinearLaw;
import counterpull.engine.elastic.LossFraction;
import counterpull.engine.elastic.MooneyRivlin;
import counterpull.engine.elastic.Rubber;
import counterpull.engine.load.Anchor;
import counterpull.engine.load.Attachment;
import counterpull.engine.load.Carriage;
import counterpull.engine.load.Counterweight;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.Friction;
import counterpull.engine.load.Hang;
import counterpull.engine.load.Placement;
import counterpull.engine.motion.Bounce;
import counterpull.engine.motion.Flowing;
import counterpull.engine.motion.FootRow;
import counterpull.engine.motion.FullStop;
import counterpull.engine.motion.JointRanges;
import counterpull.engine.motion.Rail;
import counterpull.engine.motion.Ride;
import counterpull.engine.motion.SeatSetting;
import counterpull.engine.motion.Stance;
import counterpull.engine.motion.Stops;
import counterpull.engine.motion.Tempo;
import counterpull.engine.motion.WorkingRange;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.Limb;
import counterpull.engine.profile.Loading;
import counterpull.engine.profile.Person;
import counterpull.engine.profile.PressTask;
import counterpull.engine.profile.Push;
import counterpull.engine.profile.Pushing;
import counterpull.engine.profile.Sled;
import counterpull.engine.strength.LimbStrength;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Seeded random people on random sleds: everything that a rail press knows, within what a gym could have. */
public final class RandomSled {
    private final Random random;

    /** Another sequence for each seed. */
    public RandomSled(long seed) {
        random = new Random(seed);
    }

    /** The next person on the next sled. */
    public PressTask next() {
        Ride ride = random.nextBoolean() ? Ride.PLATE : Ride.SEAT;
        return new PressTask(person(), sled(ride), stance(), pushing(), tempo(), loading(ride), 5);
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private double degrees(double low, double high) {
        return Math.toRadians(between(low, high));
    }

    private Person person() {
        double mass = between(45, 120);
        if (random.nextInt(4) == 0) {
            return new Person(mass, List.of(limb(Side.RIGHT, mass, 1)));
        }
        double left = between(0.2, 0.8);
        return new Person(mass, List.of(limb(Side.LEFT, mass, left), limb(Side.RIGHT, mass, 1 - left)));
    }

    private Limb limb(Side side, double mass, double share) {
        Leg leg = new Leg(segment(0.12 * mass), segment(0.05 * mass), foot(0.015 * mass));
        double bottom = degrees(75, 115);
        WorkingRange range = new WorkingRange(bottom, degrees(4, 35), bottom);
        return new Limb(side, leg, share, range, JointRanges.open(), LimbStrength.none());
    }

    private Segment segment(double about) {
        double length = between(0.36, 0.50);
        double mass = about * between(0.8, 1.2);
        double radius = between(0.2, 0.4) * length;
        return new Segment(length, mass, between(0.35, 0.6) * length, between(-0.03, 0.03), mass * radius * radius);
    }

    private Foot foot(double about) {
        double length = between(0.22, 0.30);
        double mass = about * between(0.8, 1.2);
        return new Foot(length, between(0.05, 0.10), between(0.15, 0.35) * length, mass, mass * 0.06 * length);
    }

    private Sled sled(Ride ride) {
        double angle = ride == Ride.PLATE ? degrees(-30, 60) : degrees(-60, 30);
        double tilt = random.nextBoolean() ? 0 : degrees(-15, 15);
        Rail rail = new Rail(angle, ride, tilt, random.nextBoolean() ? 1 : -1);
        Counterweight.Run run = random.nextBoolean() ? Counterweight.Run.ALONG_RAIL : Counterweight.Run.HANGING;
        Counterweight counter = random.nextBoolean() ? Counterweight.none() : new Counterweight(between(1, 12), run);
        Friction friction = new Friction(between(0, 30), between(0, 0.06), 0);
        return new Sled(rail, new Carriage(between(15, 60), counter, friction, 500), new Stops());
    }

    private Stance stance() {
        SeatSetting seat =
                new SeatSetting("seat", between(0, 1), between(0.5, 1), between(-0.05, 0.08), degrees(90, 170));
        Vec shift = random.nextBoolean() ? new Vec(0, 0) : new Vec(between(-0.03, 0.03), between(-0.02, 0.02));
        return new Stance(seat, new FootRow("row", between(-0.15, 0.15)), between(0.15, 0.85), shift);
    }

    private Pushing pushing() {
        int kind = random.nextInt(3);
        Push push = kind == 0
                ? new Push.Angled(0)
                : kind == 1 ? new Push.Angled(degrees(-25, 25)) : new Push.Through(Push.BodyPoint.HIP);
        return new Pushing(push, Pushing.USUAL_SPREAD);
    }

    private Tempo tempo() {
        int kind = random.nextInt(3);
        if (kind == 0) {
            return new FullStop(new Tempo.Seconds(between(0.8, 4), between(0, 2), between(0.8, 4), 0));
        }
        if (kind == 1) {
            Flowing.Turn turn = Flowing.Turn.values()[random.nextInt(3)];
            return new Flowing(between(0.8, 4), between(0.8, 4), turn);
        }
        return new Bounce(between(0.1, 0.4), between(0.1, 0.4), between(0.1, 0.3));
    }

    private Loading loading(Ride ride) {
        List<ElasticLine> lines = new ArrayList<>();
        int count = random.nextInt(4);
        for (int k = 0; k < count; k++) {
            lines.add(line(ride));
        }
        return new Loading(between(20, 150), lines);
    }

    private ElasticLine line(Ride ride) {
        boolean pair = random.nextBoolean();
        double out = pair ? between(0.15, 0.35) : 0;
        // above the plate or below the seat, so that some lines relieve and some add
        double far = random.nextBoolean() ? between(1.1, 1.9) : between(-0.7, -0.1);
        double along = ride == Ride.PLATE ? far : far - 0.6;
        Anchor anchor = new Anchor("anchor", new Vec(along, between(-0.4, 0.4)), out, Double.POSITIVE_INFINITY);
        Attachment attachment =
                new Attachment("hook", new Vec(between(-0.2, 0.2), between(-0.2, 0.2)), pair ? between(0.15, 0.35) : 0);
        Hang hang = random.nextBoolean() ? Hang.SINGLE : Hang.DOUBLED;
        ElasticLine.Pieces pieces = new ElasticLine.Pieces(
                pair ? 2 : 1 + random.nextInt(2), hang, pair ? Placement.MATCHED_PAIR : Placement.CENTRED);
        return new ElasticLine(rubber(hang), pieces, between(0, 0.2), new ElasticLine.Ends(anchor, attachment));
    }

    private Rubber rubber(Hang hang) {
        double natural = between(0.3, 0.9) * (hang == Hang.DOUBLED ? 2 : 1);
        ElasticLaw law = random.nextBoolean()
                ? new LinearLaw(between(10, 80))
                : new MooneyRivlin(between(2e-5, 6e-5), between(5e4, 1.5e5), between(1e4, 1e5));
        LossFraction loss = random.nextBoolean() ? LossFraction.NONE : new LossFraction(between(0, 0.2));
        return new Rubber("tube", natural, law, loss, 20 * natural, 0, between(0, 0.04));
    }
}
