package counterpull.letgo;

import counterpull.engine.Constants;
import counterpull.engine.elastic.LinearLaw;
import counterpull.engine.elastic.LossFraction;
import counterpull.engine.elastic.Rubber;
import counterpull.engine.load.CamRadius;
import counterpull.engine.load.CamStack;
import counterpull.engine.load.Carriage;
import counterpull.engine.load.Counterweight;
import counterpull.engine.load.Cuff;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.FixedPoint;
import counterpull.engine.load.Friction;
import counterpull.engine.load.Guide;
import counterpull.engine.load.GuidedMass;
import counterpull.engine.load.Horn;
import counterpull.engine.load.Lever;
import counterpull.engine.load.LeverBody;
import counterpull.engine.load.LeverFrame;
import counterpull.engine.load.LineEnd;
import counterpull.engine.load.Loaded;
import counterpull.engine.load.OnGuidedMass;
import counterpull.engine.load.OnLever;
import counterpull.engine.load.RailFrame;
import counterpull.engine.load.Resistance;
import counterpull.engine.load.StackLine;
import counterpull.engine.load.StretchLine;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Seeded random levers and carriages of exercises: horns, cams that lift or help, counterweights, rubber over guides that rub. */
final class RandomParts {
    private static final BodyPoint GRIP = new BodyPoint("grip", 1, new Vec(0.3, 0));
    private final Random random;

    RandomParts(Random random) {
        this.random = random;
    }

    double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    FreePart next() {
        return random.nextInt(3) == 0 ? carriage() : lever();
    }

    private Ends.Bottom bottom() {
        return random.nextBoolean() ? Ends.Bottom.STOP : Ends.Bottom.NOTHING;
    }

    private FreePart part(Rod rod, List<Resistance> resists) {
        List<Resistance> carried = new ArrayList<>();
        resists.forEach(one -> carried.add(rod.carry(one).orElseThrow()));
        double gravity = random.nextInt(5) == 0 ? 0 : Constants.STANDARD_GRAVITY;
        return new FreePart(rod, carried, new FreePart.Surroundings(gravity, between(0, 60)), bottom());
    }

    private FreePart lever() {
        LeverFrame frame = new LeverFrame(new Vec(between(-0.2, 0.2), between(-0.2, 0.2)), new Cuff(0, 0.3));
        LeverRod rod = new LeverRod(frame, between(-2, 2), random.nextBoolean() ? 1 : -1, between(0.4, 1.6));
        return part(rod, on(rod));
    }

    /** What hangs, winds and pulls on a lever. */
    List<Resistance> on(LeverRod rod) {
        LeverFrame frame = rod.frame();
        List<Resistance> resists = new ArrayList<>(List.of(lever(frame)));
        if (random.nextBoolean()) {
            resists.add(cam(rod));
        }
        if (random.nextBoolean()) {
            resists.add(line(frame.pivot(), new OnLever("peg", frame, between(0.1, 0.4), between(-3, 3), 0)));
        }
        return resists;
    }

    private Lever lever(LeverFrame frame) {
        double mass = between(0.5, 15);
        double out = between(0, 0.4);
        LeverBody body = new LeverBody(mass, out, between(-3, 3), mass * out * out + between(0.05, 0.5));
        Horn horn = new Horn("horn", between(0.1, 0.6), between(-3, 3), Loaded.with(2));
        Horn counterweight = new Horn("counterweight", between(0.1, 0.4), 3, Loaded.always(between(0, 20)));
        return new Lever("lever", frame, body, List.of(horn, counterweight), between(0, 5));
    }

    private CamStack cam(LeverRod rod) {
        StackLine line =
                new StackLine(1 + random.nextInt(2), between(0, 0.3), Loaded.always(between(5, 40)), between(0, 2));
        return new CamStack("cam", rod.frame(), radius(rod), line, between(0, 0.5));
    }

    private CamRadius radius(LeverRod rod) {
        if (random.nextInt(3) == 0) {
            return CamRadius.round(between(0.05, 0.2));
        }
        double sign = random.nextInt(3) == 0 ? -1 : 1;
        double low = Math.min(rod.bottom(), rod.bottom() + rod.sense() * rod.travel());
        List<CamRadius.Reading> readings = new ArrayList<>();
        for (int k = 0; k <= 4; k++) {
            readings.add(new CamRadius.Reading(low - 0.01 + (rod.travel() + 0.02) * k / 4, sign * between(0.06, 0.2)));
        }
        return new CamRadius(readings);
    }

    private FreePart carriage() {
        double toward = between(-3, 3);
        Vec start = new Vec(between(-0.5, 0.5), between(-0.5, 0.5));
        List<Resistance> resists = onRail(GRIP, start, toward);
        RailFrame frame = ((GuidedMass) resists.get(0)).frame();
        return part(new RailRod(frame, start, toward, between(0.2, 0.9)), resists);
    }

    /** A carriage and what pulls on it. */
    List<Resistance> onRail(BodyPoint at, Vec start, double toward) {
        GuidedMass mass = new GuidedMass(
                "carriage", at, toward + (random.nextBoolean() ? 0 : Math.PI), ridden(), Loaded.Plates.HERE);
        List<Resistance> resists = new ArrayList<>(List.of(mass));
        if (random.nextBoolean()) {
            Vec from = new Vec(between(-0.2, 0.2), between(-0.2, 0.2));
            resists.add(line(start, new OnGuidedMass("peg", mass.frame(), from, 0)));
        }
        return resists;
    }

    private Carriage ridden() {
        Counterweight counterweight = new Counterweight(between(0, 15), Counterweight.Run.values()[random.nextInt(2)]);
        Friction friction = new Friction(between(0, 20), between(0, 0.2), random.nextBoolean() ? 0 : between(0, 60));
        return new Carriage(between(5, 40), counterweight, friction, 400);
    }

    /** A line from a place that is about a metre away to a peg, straight or over a guide. */
    private StretchLine line(Vec near, LineEnd peg) {
        double natural = between(0.4, 1.2);
        Rubber rubber = new Rubber(
                "r",
                natural,
                LinearLaw.ofStiffness(between(50, 600), natural),
                new LossFraction(between(0, 0.2)),
                natural * 10,
                0,
                0);
        double way = between(-3, 3);
        FixedPoint fixed = new FixedPoint("hook", near.plus(Vec.unit(way).times(between(1.6, 2.2))), 0, 5000);
        Guide guide = new Guide("guide", near.plus(Vec.unit(way).times(1.4)), 0, between(0, 0.3));
        boolean fromFixed = random.nextBoolean();
        return new StretchLine(
                "line",
                rubber,
                ElasticLine.Pieces.one(),
                between(0, 0.2),
                fromFixed ? fixed : peg,
                fromFixed ? peg : fixed,
                random.nextBoolean() ? List.of(guide) : List.of());
    }
}
