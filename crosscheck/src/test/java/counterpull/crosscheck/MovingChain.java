package counterpull.crosscheck;

import counterpull.engine.planar.Chain;
import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A random chain at one instant, its first joint at the origin, moving and accelerating: constant accelerations of turning and of
 * the first joint, so that every other instant is known as well. Loads keep their size and direction; gravity acts along −y.
 */
final class MovingChain {
    static final double GRAVITY = 9.80665;
    private final Random random;
    final Chain chain;
    final Vec baseVelocity;
    final Vec baseAcceleration;
    final double[] direction;
    final double[] rate;
    final double[] turning;
    final List<Load> loads = new ArrayList<>();
    final List<StackCable> cables = new ArrayList<>();

    /** A force (N) at a place along and across a segment (m). */
    record Load(int segment, double along, double across, Vec force) {}

    MovingChain(int segments, Random random) {
        this.random = random;
        chain = chain(segments);
        baseVelocity = vec(2);
        baseAcceleration = vec(6);
        direction = numbers(segments, Math.PI);
        rate = numbers(segments, 4);
        turning = numbers(segments, 20);
    }

    /** Loads on one segment after the other, then anywhere. */
    void load(int count) {
        for (int k = 0; k < count; k++) {
            int segment = k < chain.size() ? k : random.nextInt(chain.size());
            loads.add(new Load(segment, between(-0.2, 0.6), between(-0.2, 0.2), vec(600)));
        }
    }

    /** Cables anywhere that are taut now: the draw is repeated for a slack one. */
    void tie(int count, double friction) {
        while (cables.size() < count) {
            StackCable cable = cable(friction);
            LineMotion line = line(cable, 0);
            if (line.length() > 0.3 && StackCable.tension(cable.stack(), line, GRAVITY) > 0) {
                cables.add(cable);
            }
        }
    }

    private StackCable cable(double friction) {
        StackCable.Stack stack = new StackCable.Stack(
                between(2, 80), between(0, 5), 1 + random.nextInt(4) * 0.5, friction * random.nextDouble());
        return new StackCable(random.nextInt(chain.size()), between(-0.1, 0.6), between(-0.1, 0.1), vec(3), stack);
    }

    /** How a cable's line runs at a time, s. */
    LineMotion line(StackCable cable, double time) {
        PlainPoint end = point(cable.segment(), cable.along(), cable.across(), time);
        return LineMotion.of(end.place().minus(cable.pulley()), end.velocity(), end.acceleration());
    }

    /** A point of segment i at a time, s. */
    PlainPoint point(int i, double along, double across, double time) {
        PlainPoint joint = new PlainPoint(
                baseVelocity.times(time).plus(baseAcceleration.times(time * time / 2)),
                baseVelocity.plus(baseAcceleration.times(time)),
                baseAcceleration);
        for (int k = 0; k < i; k++) {
            joint = joint.plus(Vec.unit(angle(k, time)).times(chain.length(k)), rateAt(k, time), turning[k]);
        }
        return joint.plus(arm(i, along, across, time), rateAt(i, time), turning[i]);
    }

    /** From the proximal joint of segment i to a point of it. */
    Vec arm(int i, double along, double across, double time) {
        Vec axis = Vec.unit(angle(i, time));
        return axis.times(along).plus(axis.left().times(across));
    }

    double angle(int i, double time) {
        return direction[i] + rate[i] * time + turning[i] * time * time / 2;
    }

    double rateAt(int i, double time) {
        return rate[i] + turning[i] * time;
    }

    /** Energy of motion and height of all segments and stacks at a time, J. */
    double energy(double time) {
        double sum = 0;
        for (int i = 0; i < chain.size(); i++) {
            sum += segmentEnergy(i, time);
        }
        for (StackCable cable : cables) {
            sum += stackEnergy(cable.stack(), line(cable, time));
        }
        return sum;
    }

    private double segmentEnergy(int i, double time) {
        PlainPoint com = point(i, chain.comAlong(i), chain.comAcross(i), time);
        double turn = rateAt(i, time);
        double going = com.velocity().dot(com.velocity()) / 2;
        return chain.mass(i) * (going + GRAVITY * com.place().y()) + chain.inertia(i) * turn * turn / 2;
    }

    /** The stack rises and falls by the line's way over R; what is not weighed moves with the line. */
    private static double stackEnergy(StackCable.Stack stack, LineMotion line) {
        double speed = line.rate() / stack.ratio();
        double weighed = stack.mass() * (speed * speed / 2 + GRAVITY * line.length() / stack.ratio());
        return weighed + stack.extra() * line.rate() * line.rate() / 2;
    }

    private Chain chain(int segments) {
        Chain.Builder builder = Chain.build();
        for (int i = 0; i < segments; i++) {
            Vec com = new Vec(between(-0.1, 0.5), between(-0.1, 0.1));
            builder.segment(between(0.1, 0.6), between(0.5, 15), com, between(0, 0.5));
        }
        return builder.done();
    }

    private double[] numbers(int count, double most) {
        double[] numbers = new double[count];
        for (int i = 0; i < count; i++) {
            numbers[i] = between(-most, most);
        }
        return numbers;
    }

    private Vec vec(double most) {
        return new Vec(between(-most, most), between(-most, most));
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
