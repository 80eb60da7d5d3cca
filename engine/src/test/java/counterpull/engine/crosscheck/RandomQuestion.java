package counterpull.engine.crosscheck;

import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;
import counterpull.engine.body.Sex;
import counterpull.engine.choice.Caps;
import counterpull.engine.choice.EffortTarget;
import counterpull.engine.choice.Goal;
import counterpull.engine.choice.Kit;
import counterpull.engine.choice.LineRules;
import counterpull.engine.choice.PlateKind;
import counterpull.engine.choice.Question;
import counterpull.engine.choice.RubberStock;
import counterpull.engine.choice.Strategy;
import counterpull.engine.elastic.ElasticLaw;
import counterpull.engine.elastic.LinearLaw;
import counterpull.engine.elastic.LossFraction;
import counterpull.engine.elastic.MooneyRivlin;
import counterpull.engine.elastic.Rubber;
import counterpull.engine.load.Anchor;
import counterpull.engine.load.Attachment;
import counterpull.engine.load.Hang;
import counterpull.engine.motion.FootRow;
import counterpull.engine.motion.SeatSetting;
import counterpull.engine.motion.Stops;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.Limb;
import counterpull.engine.profile.Person;
import counterpull.engine.profile.PressTask;
import counterpull.engine.profile.Push;
import counterpull.engine.profile.Pushing;
import counterpull.engine.profile.Sled;
import counterpull.engine.strength.LimbStrength;
import counterpull.engine.strength.Physique;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Seeded random questions to the search, with kits so small that every setup can be tried one by one. */
final class RandomQuestion {
    private static final int POSITIONS = 9;
    private final Random random;
    private final RandomSled sleds;

    RandomQuestion(long seed) {
        random = new Random(seed);
        sleds = new RandomSled(seed);
    }

    Question next() {
        PressTask sled = sleds.next();
        return new Question(task(sled), goal(), kit(sled), List.of(Strategy.values()));
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private PressTask task(PressTask sled) {
        List<Limb> limbs = new ArrayList<>();
        for (Limb limb : sled.person().limbs()) {
            Physique physique = new Physique(Sex.FEMALE, between(20, 75), between(50, 110), between(1.55, 1.9));
            limbs.add(new Limb(
                    limb.side(),
                    limb.leg(),
                    limb.share(),
                    limb.range(),
                    limb.ranges(),
                    LimbStrength.published(physique)));
        }
        Stops stops = new Stops(random.doubles(16, -0.6, 1.6).toArray());
        Push push = random.nextInt(4) == 0
                ? new Push.LeastEffort(Math.toRadians(-15), Math.toRadians(15))
                : sled.pushing().push();
        return new PressTask(
                new Person(sled.person().mass(), limbs),
                new Sled(sled.sled().rail(), sled.sled().carriage(), stops),
                sled.stance(),
                new Pushing(push, Math.toRadians(between(0, 10))),
                sled.tempo(),
                sled.loading(),
                POSITIONS);
    }

    private Goal goal() {
        EffortTarget target = random.nextBoolean()
                ? EffortTarget.flat(between(0.3, 0.9))
                : EffortTarget.through(new double[] {0.3, 1.6}, new double[] {between(0.3, 1), between(0.2, 0.8)});
        List<Joint> joints = random.nextBoolean() ? Joint.LEG : List.of(Joint.HIP, Joint.KNEE);
        Goal.Straying straying = random.nextBoolean() ? Goal.Straying.AS_TOLD : Goal.Straying.WHOLE_INTERVAL;
        return new Goal(target, between(0.6, 1.6), between(0, 100), joints, caps(), straying);
    }

    private Caps caps() {
        Caps caps = Caps.none();
        if (random.nextBoolean()) {
            caps = caps.withTorque(Action.KNEE_EXTENSION, between(120, 350));
        }
        if (random.nextBoolean()) {
            caps = caps.withTorque(Action.HIP_EXTENSION, between(120, 350));
        }
        if (random.nextBoolean()) {
            caps = caps.withKneecapStress(between(8e6, 20e6));
        }
        return random.nextBoolean() ? caps.withTurnForce(between(60, 400)) : caps;
    }

    private Kit kit(PressTask sled) {
        int atOnce = 1 + random.nextInt(2);
        // 10 + 5 + 5 and 20 make the same total: it must count once
        List<PlateKind> plates = List.of(
                new PlateKind("20 kg", 20, 2 + random.nextInt(3)),
                new PlateKind("10 kg", 10, 2 + random.nextInt(3)),
                new PlateKind("2.5 kg", 2.5, random.nextInt(3)));
        List<Double> dead = random.nextBoolean() ? List.of(0.0) : List.of(0.05, 0.2);
        LineRules rules = new LineRules(List.of(Hang.values()), dead, 2 + random.nextInt(3), random.nextInt(3));
        return new Kit(plates, atOnce, rubber(), hooks(sled), rules, places(sled));
    }

    private List<RubberStock> rubber() {
        List<RubberStock> stock = new ArrayList<>();
        for (int k = 0; k < 1 + random.nextInt(2); k++) {
            double natural = between(0.3, 0.9);
            ElasticLaw law = random.nextBoolean()
                    ? new LinearLaw(between(10, 80))
                    : new MooneyRivlin(between(2e-5, 6e-5), between(5e4, 1.5e5), between(1e4, 1e5));
            Rubber rubber = new Rubber(
                    "tube " + k, natural, law, new LossFraction(between(0, 0.2)), between(2, 5) * natural, 0, 0.02);
            stock.add(new RubberStock(rubber, 1 + random.nextInt(2)));
        }
        return stock;
    }

    private Kit.Hooks hooks(PressTask sled) {
        double rating = random.nextBoolean() ? Double.POSITIVE_INFINITY : between(30, 300);
        boolean plate = new PlainSled(sled).plateRides;
        double shift = plate ? 0 : -0.6;
        double out = random.nextBoolean() ? 0 : between(0.15, 0.3);
        List<Anchor> anchors = List.of(
                new Anchor("upper", new Vec(between(1.1, 1.9) + shift, between(-0.3, 0.4)), 0, rating),
                new Anchor("lower", new Vec(between(-0.7, 0.1) + shift, between(-0.3, 0.4)), out, rating));
        List<Attachment> attachments =
                List.of(new Attachment("bar", new Vec(between(-0.2, 0.2), between(-0.2, 0.2)), 0));
        return new Kit.Hooks(anchors, attachments);
    }

    private Kit.Places places(PressTask sled) {
        SeatSetting seat = sled.stance().seat();
        SeatSetting other = new SeatSetting(
                "seat 2", seat.mark(), seat.hipToPlate() + 0.1, seat.hipAcross(), seat.trunkDirection());
        List<SeatSetting> seats = random.nextBoolean() ? List.of(seat) : List.of(seat, other);
        List<FootRow> rows = random.nextBoolean()
                ? List.of(new FootRow("row 1", 0))
                : List.of(new FootRow("row 1", -0.05), new FootRow("row 2", 0.1));
        return new Kit.Places(seats, rows, random.nextInt(3));
    }
}
