package counterpull.letgo;

import counterpull.engine.body.Joint;
import counterpull.engine.load.CamStack;
import counterpull.engine.load.Cuff;
import counterpull.engine.load.FixedPoint;
import counterpull.engine.load.Lever;
import counterpull.engine.load.LeverFrame;
import counterpull.engine.load.LineEnd;
import counterpull.engine.load.OnLever;
import counterpull.engine.load.Resistance;
import counterpull.engine.load.StretchLine;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Course;
import counterpull.engine.motion.JointSense;
import counterpull.engine.planar.Chain;
import counterpull.engine.planar.Vec;
import java.util.List;
import java.util.Optional;

/**
 * A rod that turns about a lever's pivot and points as the lever does: φ = bottom + sense · u.
 *
 * @param frame the lever's pivot and contact in the exercise
 * @param bottom direction of the lever at the bottom of the range, rad
 * @param sense +1 where it is lifted counter-clockwise, −1 where clockwise
 * @param travel how far it turns to the top of the range, rad, above zero
 */
record LeverRod(LeverFrame frame, double bottom, int sense, double travel) implements Rod {
    private static final Chain CHAIN =
            Chain.build().segment(1, 1, new Vec(0, 0), 0).done();
    private static final List<JointSense> JOINT = List.of(new JointSense(Joint.KNEE, 1, 0, 1));
    private static final LeverFrame OWN = new LeverFrame(new Vec(0, 0), new Cuff(0, 1));

    @Override
    public ChainPath at(double u, Course course) {
        ChainPath.Bends bends = new ChainPath.Bends(course.positions(), 1);
        for (int i = 0; i < course.positions(); i++) {
            bends.set(i, 0, bottom + sense * u, sense, 0);
        }
        return new ChainPath(CHAIN, course, JOINT, bends);
    }

    @Override
    public Optional<Resistance> carry(Resistance resistance) {
        if (resistance instanceof Lever lever && lever.frame().equals(frame)) {
            return Optional.of(new Lever(lever.name(), OWN, lever.body(), lever.horns(), lever.friction()));
        }
        if (resistance instanceof CamStack cam && cam.frame().equals(frame)) {
            return Optional.of(new CamStack(cam.name(), OWN, cam.radius(), cam.line(), cam.inertia()));
        }
        return resistance instanceof StretchLine line ? carry(line) : Optional.empty();
    }

    @Override
    public Optional<LineEnd> end(LineEnd end) {
        if (end instanceof OnLever peg && peg.frame().equals(frame)) {
            return Optional.of(new OnLever(peg.name(), OWN, peg.radius(), peg.offset(), peg.lateral()));
        }
        return end instanceof FixedPoint fixed ? Optional.of(seen(fixed)) : Optional.empty();
    }

    @Override
    public Vec seen(Vec at) {
        return at.minus(frame.pivot());
    }
}
