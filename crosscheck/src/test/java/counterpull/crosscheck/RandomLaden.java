package counterpull.crosscheck;

import counterpull.engine.body.Joint;
import counterpull.engine.body.Side;
import counterpull.engine.crosscheck.RandomMovement;
import counterpull.engine.elastic.LinearLaw;
import counterpull.engine.elastic.LossFraction;
import counterpull.engine.elastic.Rubber;
import counterpull.engine.load.Cable;
import counterpull.engine.load.CamRadius;
import counterpull.engine.load.CamStack;
import counterpull.engine.load.Cuff;
import counterpull.engine.load.DeadWeight;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.FixedPoint;
import counterpull.engine.load.HangingChain;
import counterpull.engine.load.Horn;
import counterpull.engine.load.Lever;
import counterpull.engine.load.LeverBody;
import counterpull.engine.load.LeverFrame;
import counterpull.engine.load.Loaded;
import counterpull.engine.load.OnBody;
import counterpull.engine.load.Resistance;
import counterpull.engine.load.StackLine;
import counterpull.engine.load.StretchLine;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.FullStop;
import counterpull.engine.motion.JointRanges;
import counterpull.engine.motion.Tempo;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.Exercise;
import counterpull.engine.profile.ExerciseTask;
import counterpull.engine.profile.Limb;
import counterpull.engine.profile.Person;
import counterpull.engine.strength.LimbStrength;
import java.util.ArrayList;
import java.util.List;

/** Seeded random exercises of every kind of movement, one kind after the other, against several things of every kind at once. */
final class RandomLaden {
    private static final int POSITIONS = 41;
    private static final List<Joint> HINGES = List.of(Joint.HIP, Joint.KNEE, Joint.SHOULDER, Joint.ELBOW);
    private final RandomMovement random;
    private int next;

    RandomLaden(long seed) {
        random = new RandomMovement(seed);
    }

    ExerciseTask next() {
        RandomMovement.Drawn drawn = switch (next++ % 3) {
            case 0 -> random.straight();
            case 1 -> random.stand();
            default -> random.hinge(HINGES.get(below(HINGES.size())));
        };
        List<Resistance> resists = new ArrayList<>();
        int segments = drawn.motion().joints().size();
        for (int k = 0; k <= 1 + below(2); k++) {
            resists.add(thing(below(6), segments));
        }
        Limb limb = new Limb(Side.LEFT, drawn.body(), 1, drawn.range(), JointRanges.open(), LimbStrength.none());
        Tempo tempo = new FullStop(new Tempo.Seconds(random.between(1.5, 3), 0, random.between(1.5, 3), 0));
        Exercise exercise = new Exercise(drawn.motion(), resists, drawn.share());
        return new ExerciseTask(new Person(70, List.of(limb)), exercise, 0, tempo, POSITIONS);
    }

    private int below(int bound) {
        return (int) Math.floor(random.between(0, bound));
    }

    private Resistance thing(int kind, int segments) {
        BodyPoint at = new BodyPoint(
                "point", below(segments), new Vec(random.between(0.05, 0.4), random.between(-0.08, 0.08)));
        return switch (kind) {
            case 0 -> new DeadWeight("weight", at, Loaded.always(random.between(1, 30)));
            case 1 -> new Cable("cable", at, Vec.unit(random.between(-3, 3)).times(2.5), stack());
            case 2 -> new HangingChain("chain", at, random.between(2, 10), random.between(1, 4), -4);
            case 3 -> new Lever("lever", frame(), body(), List.of(new Horn("horn", 0.3, 0.2, Loaded.always(10))), 1.5);
            case 4 -> new CamStack("cam", frame(), CamRadius.round(random.between(0.05, 0.2)), stack(), 0.1);
            default -> line(at);
        };
    }

    private StackLine stack() {
        return new StackLine(
                1 + below(2), random.between(0, 0.1), Loaded.always(random.between(5, 60)), random.between(0, 1));
    }

    private LeverFrame frame() {
        Vec pivot = new Vec(random.between(-0.03, 0.03), random.between(-0.03, 0.03));
        return new LeverFrame(pivot, new Cuff(0, random.between(0.2, 0.35)));
    }

    private static LeverBody body() {
        return new LeverBody(4, 0.2, 0.1, 0.3);
    }

    private Resistance line(BodyPoint at) {
        LinearLaw law = LinearLaw.ofStiffness(random.between(50, 300), 0.4);
        Rubber rubber = new Rubber("rubber", 0.4, law, new LossFraction(0.1), 5, 0, 0);
        FixedPoint hook =
                new FixedPoint("hook", Vec.unit(random.between(-3, 3)).times(1.5), 0, Double.POSITIVE_INFINITY);
        return new StretchLine("line", rubber, ElasticLine.Pieces.one(), 0.1, hook, new OnBody(at, 0), List.of());
    }
}
