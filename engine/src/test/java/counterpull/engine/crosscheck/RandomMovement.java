package counterpull.engine.crosscheck;

import counterpull.engine.Refusal;
import counterpull.engine.body.Anthropometry;
import counterpull.engine.body.BodySide;
import counterpull.engine.body.DempsterWinter;
import counterpull.engine.body.Joint;
import counterpull.engine.body.MeasuredLengths;
import counterpull.engine.body.Sex;
import counterpull.engine.motion.AnkleGive;
import counterpull.engine.motion.BalancedStand;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Course;
import counterpull.engine.motion.ElbowSide;
import counterpull.engine.motion.FullStop;
import counterpull.engine.motion.Hinge;
import counterpull.engine.motion.Motion;
import counterpull.engine.motion.Reach;
import counterpull.engine.motion.StandDrive;
import counterpull.engine.motion.StraightPath;
import counterpull.engine.motion.Tempo;
import counterpull.engine.motion.WorkingRange;
import counterpull.engine.planar.Vec;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/** Seeded random movements of every kind, with weights on the chain. */
public final class RandomMovement {
    private final Random random;
    private int drawn;
    private int refused;

    public RandomMovement(long seed) {
        random = new Random(seed);
    }

    /** A movement that its limb can do, over a range. */
    public record Drawn(Motion motion, BodySide body, double share, WorkingRange range, List<Motion.Carried> carried) {
        /** Over another range, at so many positions. */
        ChainPath path(WorkingRange over, int positions) {
            return motion.path(moving(over, positions));
        }

        Motion.Moving moving(WorkingRange over, int positions) {
            Tempo tempo = new FullStop(new Tempo.Seconds(2.2, 0, 1.3, 0));
            Course course = Course.even(Math.abs(over.top() - over.bottom()), positions, tempo);
            return new Motion.Moving(body, share, over, course, carried);
        }
    }

    public double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /** How many of the movements that were drawn could not be done. */
    double refusedShare() {
        return (double) refused / drawn;
    }

    public Drawn straight() {
        return doable(this::anyStraight);
    }

    public Drawn stand() {
        return doable(this::anyStand);
    }

    public Drawn hinge(Joint joint) {
        double bottom = between(0.2, 1.2);
        Map<Joint, Double> held = new EnumMap<>(Joint.class);
        held.putAll(Map.of(Joint.ELBOW, 0.4, Joint.KNEE, 0.3, Joint.ANKLE, -0.2));
        held.keySet().retainAll(new Hinge(joint, 0, Map.of(), Hinge.Lie.UPRIGHT).joints());
        held.remove(joint);
        Hinge hinge = new Hinge(
                joint, between(-3, 3), held, joint == Joint.SHOULDER_TURNING ? Hinge.Lie.LEVEL : Hinge.Lie.UPRIGHT);
        double top = bottom + (random.nextBoolean() ? 1 : -1) * between(0.3, 0.8);
        return new Drawn(hinge, body(), between(0.3, 1), range(bottom, top), carried(0));
    }

    private Drawn doable(java.util.function.Supplier<Drawn> kind) {
        while (true) {
            drawn++;
            Drawn one = kind.get();
            try {
                one.path(one.range(), 21);
                return one;
            } catch (Refusal cannot) {
                refused++;
            }
        }
    }

    private Drawn anyStraight() {
        BodySide body = body();
        Optional<BodyPoint> grip = random.nextBoolean()
                ? Optional.empty()
                : Optional.of(new BodyPoint("grip", 1, new Vec(between(0.2, 0.4), between(-0.05, 0.05))));
        List<Reach> reaches = List.of(
                new Reach.Hand(grip),
                new Reach.HandSideways(grip, ElbowSide.TOWARD_HEAD),
                new Reach.HandSideways(grip, ElbowSide.TOWARD_FEET),
                new Reach.FlatFoot(between(-1, 3)));
        Reach reach = reaches.get(random.nextInt(reaches.size()));
        double scale = reach.joint() == Joint.HIP ? 0.8 : 0.5;
        Vec start = Vec.unit(between(-3, 3)).times(scale * between(0.5, 1));
        Vec end = start.plus(Vec.unit(between(-3, 3)).times(scale * between(0.2, 0.8)));
        StraightPath path = new StraightPath(reach, between(-3, 3), start, end);
        double low = between(0, 0.3) * path.length();
        double high = between(0.6, 1) * path.length();
        WorkingRange range = random.nextBoolean() ? range(low, high) : range(high, low);
        return new Drawn(path, body, between(0.3, 1), range, carried(1));
    }

    private Drawn anyStand() {
        boolean knee = random.nextBoolean();
        StandDrive drive = knee
                ? new StandDrive.Knee(AnkleGive.inProportion(between(0.1, 0.45)))
                : new StandDrive.Hip(between(0, 0.4), between(0, 0.9));
        double low = between(0.1, 0.5);
        double high = between(1, 1.9);
        WorkingRange range = random.nextBoolean() ? range(low, high) : range(high, low);
        return new Drawn(new BalancedStand(drive, between(0.3, 0.7)), body(), between(0.4, 1), range, carried(2));
    }

    private static WorkingRange range(double bottom, double top) {
        return new WorkingRange(bottom, top, bottom);
    }

    private List<Motion.Carried> carried(int most) {
        BodyPoint far = new BodyPoint("far", most, new Vec(between(0.1, 0.5), between(-0.1, 0.1)));
        BodyPoint near = new BodyPoint("near", 0, new Vec(between(0.1, 0.4), between(-0.05, 0.05)));
        return List.of(new Motion.Carried(far, between(0, 60)), new Motion.Carried(near, between(0, 8)));
    }

    private BodySide body() {
        return new Anthropometry(
                        new DempsterWinter(), Sex.FEMALE, between(1.5, 2), between(45, 120), MeasuredLengths.none())
                .side();
    }
}
