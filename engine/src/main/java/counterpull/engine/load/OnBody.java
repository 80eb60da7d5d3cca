package counterpull.engine.load;

import counterpull.engine.Require;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.PointTrack;
import counterpull.engine.planar.Vec;
import java.util.List;

/**
 * An end of a line on the body: a cuff, a handle, a loop.
 *
 * @param at where
 * @param lateral place to the side of the plane, m
 */
public record OnBody(BodyPoint at, double lateral) implements LineEnd {
    public OnBody {
        Require.within(lateral, new Require.Limits(-10, 10), "place of " + at.name() + ", to the side", "m");
    }

    @Override
    public String name() {
        return at.name();
    }

    @Override
    public boolean moves() {
        return true;
    }

    @Override
    public boolean twists() {
        return false;
    }

    @Override
    public PointTrack track(ChainPath path) {
        return path.track(at);
    }

    @Override
    public List<Pull> pulls(ChainPath path, Tug tug) {
        double[][] direction = new double[path.positions()][];
        double[] inPlane = new double[path.positions()];
        for (int i = 0; i < direction.length; i++) {
            Vec toward = tug.toward().get(i);
            inPlane[i] = toward.norm();
            // straight to the side: nothing acts in the plane, and any direction will do
            Vec way = inPlane[i] > 0 ? toward.times(1 / inPlane[i]) : new Vec(1, 0);
            direction[i] = new double[] {way.x(), way.y()};
        }
        return List.of(Pull.force(tug.words(), at, direction, Pull.Holds.ONE_WAY, tug.times(inPlane, path.course())));
    }
}
