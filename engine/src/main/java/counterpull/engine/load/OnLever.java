package counterpull.engine.load;

import counterpull.engine.Require;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.PointTrack;
import counterpull.engine.planar.Vec;
import java.util.List;

/**
 * An end of a line on a lever: its pull reaches the body through the lever's pad or cuff.
 *
 * @param name what the floor calls it ("band peg")
 * @param frame the lever's pivot and contact; equal to that of the machine it belongs to
 * @param radius from the pivot, m, zero or more
 * @param offset of the line pivot → peg from the line pivot → pad, rad, counter-clockwise positive
 * @param lateral place to the side of the lever's plane, m
 */
public record OnLever(String name, LeverFrame frame, double radius, double offset, double lateral) implements LineEnd {
    public OnLever {
        Require.within(radius, new Require.Limits(0, 5), "distance of the " + name + " from the lever's pivot", "m");
        Require.finite(offset, "angle of the " + name + " from the pad", "rad");
        Require.within(lateral, new Require.Limits(-10, 10), "place of the " + name + ", to the side", "m");
    }

    private Vec own() {
        return Vec.unit(offset).times(radius);
    }

    @Override
    public boolean moves() {
        return true;
    }

    @Override
    public boolean twists() {
        return true;
    }

    @Override
    public PointTrack track(ChainPath path) {
        return frame.over(path).track(own());
    }

    @Override
    public List<Pull> pulls(ChainPath path, Tug tug) {
        LeverPath lever = frame.over(path);
        double[] load = new double[path.positions()];
        for (int i = 0; i < load.length; i++) {
            load[i] = lever.load(own(), tug.toward().get(i), i);
        }
        return lever.pulls(tug.words(), tug.times(load, path.course()));
    }
}
