package counterpull.engine.crosscheck;

import counterpull.engine.body.Anthropometry;
import counterpull.engine.body.BodySide;
import counterpull.engine.body.DempsterWinter;
import counterpull.engine.body.Joint;
import counterpull.engine.body.MeasuredLengths;
import counterpull.engine.body.Sex;
import counterpull.engine.body.Side;
import counterpull.engine.load.DeadWeight;
import counterpull.engine.load.Loaded;
import counterpull.engine.load.Resistance;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.FullStop;
import counterpull.engine.motion.Hinge;
import counterpull.engine.motion.JointRanges;
import counterpull.engine.motion.Tempo;
import counterpull.engine.motion.WorkingRange;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.Exercise;
import counterpull.engine.profile.ExerciseTask;
import counterpull.engine.profile.Limb;
import counterpull.engine.profile.Person;
import counterpull.engine.strength.LimbStrength;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Seeded random people doing random exercises against several things at once. */
public final class RandomExercise {
    private static final List<Joint> HINGES = List.of(
            Joint.HIP,
            Joint.KNEE,
            Joint.ANKLE,
            Joint.HIP_SIDEWAYS,
            Joint.SHOULDER,
            Joint.SHOULDER_SIDEWAYS,
            Joint.ELBOW);
    private final Random random;

    public RandomExercise(long seed) {
        random = new Random(seed);
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /** The next person at the next exercise. */
    public ExerciseTask next() {
        Joint joint = HINGES.get(random.nextInt(HINGES.size()));
        Map<Joint, Double> held = new EnumMap<>(Joint.class);
        for (Joint beyond : new Hinge(joint, 0, held, Hinge.Lie.UPRIGHT).joints()) {
            if (beyond != joint) {
                held.put(beyond, between(0, 1));
            }
        }
        Hinge hinge =
                new Hinge(joint, between(-3, 3), held, random.nextInt(4) == 0 ? Hinge.Lie.LEVEL : Hinge.Lie.UPRIGHT);
        double bottom = between(-0.3, 1.6);
        double top = bottom + (random.nextBoolean() ? 1 : -1) * between(0.3, 1.2);
        WorkingRange range = new WorkingRange(bottom, top, bottom);
        int segments = hinge.joints().size();
        List<Resistance> resists = new ArrayList<>();
        for (int k = 0; k <= random.nextInt(3); k++) {
            BodyPoint at =
                    new BodyPoint("point " + k, random.nextInt(segments), new Vec(between(0, 0.4), between(-0.1, 0.1)));
            resists.add(new DeadWeight(
                    "weight " + k, at, k == 0 ? Loaded.with(between(0, 5)) : Loaded.always(between(1, 9))));
        }
        Exercise exercise = new Exercise(hinge, resists, between(0.5, 1));
        return new ExerciseTask(person(range), exercise, between(0, 40), tempo(), ExercisePower.POSITIONS);
    }

    private Tempo tempo() {
        return new FullStop(new Tempo.Seconds(between(1, 4), 0, between(1, 4), 0));
    }

    private Person person(WorkingRange range) {
        double mass = between(45, 120);
        double stature = between(1.5, 2);
        double share = random.nextBoolean() ? 1 : between(0.3, 0.7);
        List<Limb> limbs = new ArrayList<>();
        limbs.add(limb(Side.LEFT, body(stature, mass), share, range));
        if (share < 1) {
            limbs.add(limb(Side.RIGHT, body(stature * between(0.97, 1.03), mass), 1 - share, range));
        }
        return new Person(mass, limbs);
    }

    private static BodySide body(double stature, double mass) {
        return new Anthropometry(new DempsterWinter(), Sex.FEMALE, stature, mass, MeasuredLengths.none()).side();
    }

    private static Limb limb(Side side, BodySide body, double share, WorkingRange range) {
        return new Limb(side, body, share, range, JointRanges.anyPosture(), LimbStrength.none());
    }
}
