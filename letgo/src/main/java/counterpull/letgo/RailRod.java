package counterpull.letgo;

import counterpull.engine.body.Joint;
import counterpull.engine.load.FixedPoint;
import counterpull.engine.load.GuidedMass;
import counterpull.engine.load.LineEnd;
import counterpull.engine.load.OnGuidedMass;
import counterpull.engine.load.RailFrame;
import counterpull.engine.load.Resistance;
import counterpull.engine.load.StretchLine;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Course;
import counterpull.engine.motion.JointSense;
import counterpull.engine.planar.Chain;
import counterpull.engine.planar.Vec;
import java.util.List;
import java.util.Optional;

/**
 * Two equal rods of length L, hinged end to end, whose far end runs along a rail through their origin: at distance
 * d = L + u − travel/2 = 2 L cos α they point α to either side of the rail. d′ = 1 gives α′ = −1/(2 L sin α), and d″ = 0 gives
 * α″ = −α′² cot α. L = 1 m + travel keeps α far from straight and from folded. Source: own derivation.
 *
 * @param frame where the carriage touches the body in the exercise
 * @param start where that is at the bottom of the range, m from the fixed joint
 * @param toward direction of the rail in the sense in which the carriage is lifted, rad
 * @param travel how far it goes along the rail to the top of the range, m, above zero
 */
record RailRod(RailFrame frame, Vec start, double toward, double travel) implements Rod {
    private static final List<JointSense> JOINTS = List.of(
            new JointSense(Joint.SHOULDER, 1, 0, 1),
            new JointSense(Joint.ELBOW, 1, 0, 1),
            new JointSense(Joint.KNEE, 1, 0, 1));
    private static final BodyPoint TIP = new BodyPoint("tip of the rods", 2, new Vec(0, 0));

    private double length() {
        return 1 + travel;
    }

    private double distance(double u) {
        return length() + u - travel / 2;
    }

    @Override
    public ChainPath at(double u, Course course) {
        double length = length();
        double cos = distance(u) / (2 * length);
        double sin = Math.sqrt((1 - cos) * (1 + cos));
        double alpha = Math.acos(cos);
        double first = -1 / (2 * length * sin);
        double second = -first * first * cos / sin;
        ChainPath.Bends bends = new ChainPath.Bends(course.positions(), 3);
        for (int i = 0; i < course.positions(); i++) {
            bends.set(i, 0, toward + alpha, first, second);
            bends.set(i, 1, toward - alpha, -first, -second);
            bends.set(i, 2, toward, 0, 0);
        }
        return new ChainPath(chain(length), course, JOINTS, bends);
    }

    private static Chain chain(double length) {
        return Chain.build()
                .segment(length, 1, new Vec(0, 0), 0)
                .segment(length, 1, new Vec(0, 0), 0)
                .segment(1, 1, new Vec(0, 0), 0)
                .done();
    }

    @Override
    public Optional<Resistance> carry(Resistance resistance) {
        if (resistance instanceof GuidedMass mass && mass.frame().equals(frame)) {
            return Optional.of(new GuidedMass(mass.name(), TIP, toward, mass.carriage(), mass.plates()));
        }
        return resistance instanceof StretchLine line ? carry(line) : Optional.empty();
    }

    @Override
    public Optional<LineEnd> end(LineEnd end) {
        if (end instanceof OnGuidedMass peg && peg.frame().equals(frame)) {
            return Optional.of(new OnGuidedMass(peg.name(), new RailFrame(TIP, toward), peg.from(), peg.lateral()));
        }
        return end instanceof FixedPoint fixed ? Optional.of(seen(fixed)) : Optional.empty();
    }

    @Override
    public Vec seen(Vec at) {
        return at.minus(start).plus(Vec.unit(toward).times(distance(0)));
    }
}
