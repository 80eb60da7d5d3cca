package counterpull.crosscheck;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Course;
import counterpull.engine.motion.FullStop;
import counterpull.engine.motion.JointSense;
import counterpull.engine.motion.Tempo;
import counterpull.engine.planar.Chain;
import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Random movements of chains of one to six segments: every segment's direction is a random parabola of the stroke's coordinate. */
final class MovingPath {
    static final int POSITIONS = 11;
    private final Random random;

    MovingPath(long seed) {
        random = new Random(seed);
    }

    double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    int below(int bound) {
        return random.nextInt(bound);
    }

    /** The next movement. */
    ChainPath next(int segments) {
        Tempo tempo = new FullStop(new Tempo.Seconds(between(0.5, 3), 0, between(0.5, 3), 0));
        Course course = Course.even(between(0.3, 1.5), POSITIONS, tempo);
        ChainPath.Bends bends = new ChainPath.Bends(POSITIONS, segments);
        for (int k = 0; k < segments; k++) {
            double start = between(-3, 3);
            double first = between(-2, 2);
            double second = between(-2, 2);
            for (int i = 0; i < POSITIONS; i++) {
                double x = course.at(i);
                bends.set(i, k, start + first * x + second * x * x / 2, first + second * x, second);
            }
        }
        return new ChainPath(chain(segments), course, senses(segments), bends);
    }

    /** A point of any segment. */
    BodyPoint point(ChainPath path) {
        return new BodyPoint("point", below(path.segments()), new Vec(between(-0.1, 0.6), between(-0.1, 0.1)));
    }

    private Chain chain(int segments) {
        Chain.Builder builder = Chain.build();
        for (int i = 0; i < segments; i++) {
            Vec com = new Vec(between(0, 0.4), between(-0.05, 0.05));
            builder.segment(between(0.1, 0.6), between(0.5, 15), com, between(0.001, 0.5));
        }
        return builder.done();
    }

    /** Names alone: only directions matter here. */
    private static List<JointSense> senses(int segments) {
        List<JointSense> senses = new ArrayList<>();
        for (int k = 0; k < segments; k++) {
            senses.add(new JointSense(Joint.values()[k], 1, 0, 1));
        }
        return senses;
    }
}
