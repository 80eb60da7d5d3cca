package counterpull.engine.load;

import counterpull.engine.body.Anthropometry;
import counterpull.engine.body.BodySide;
import counterpull.engine.body.DempsterWinter;
import counterpull.engine.body.Joint;
import counterpull.engine.body.MeasuredLengths;
import counterpull.engine.body.Sex;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Course;
import counterpull.engine.motion.FullStop;
import counterpull.engine.motion.Hinge;
import counterpull.engine.motion.Motion;
import counterpull.engine.motion.Tempo;
import counterpull.engine.motion.WorkingRange;
import counterpull.engine.planar.Vec;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Seeded random limbs in movement, for contract tests: every joint that can be a hinge, at many positions. */
final class RandomLimb {
    private static final int POSITIONS = 401;
    private static final List<Joint> HINGES = List.of(Joint.HIP, Joint.KNEE, Joint.SHOULDER, Joint.ELBOW);
    private final Random random;

    RandomLimb(long seed) {
        random = new Random(seed);
    }

    double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    int below(int bound) {
        return random.nextInt(bound);
    }

    /** The next limb. */
    ChainPath next() {
        Joint joint = HINGES.get(random.nextInt(HINGES.size()));
        double bottom = between(0.2, 1.8);
        double top = bottom + (random.nextBoolean() ? 1 : -1) * between(0.4, 1.2);
        Map<Joint, Double> held = joint == Joint.HIP
                ? Map.of(Joint.KNEE, 0.3)
                : joint == Joint.SHOULDER ? Map.of(Joint.ELBOW, 0.4) : Map.of();
        Hinge hinge = new Hinge(joint, between(-3, 3), held, Hinge.Lie.UPRIGHT);
        return path(hinge, new WorkingRange(bottom, top, bottom));
    }

    ChainPath path(Motion motion, WorkingRange range) {
        Tempo tempo = new FullStop(new Tempo.Seconds(between(1, 4), 0, between(1, 4), 0));
        Course course = Course.even(Math.abs(range.top() - range.bottom()), POSITIONS, tempo);
        return motion.path(new Motion.Moving(body(), 1, range, course, List.of()));
    }

    private BodySide body() {
        return new Anthropometry(
                        new DempsterWinter(), Sex.FEMALE, between(1.5, 2), between(45, 120), MeasuredLengths.none())
                .side();
    }

    /** A point of the chain's last segment, about a forearm's or a foot's length away. */
    BodyPoint point(ChainPath path) {
        int last = path.segments() - 1;
        return new BodyPoint("point", last, new Vec(between(0.05, 0.4), between(-0.08, 0.08)));
    }
}
