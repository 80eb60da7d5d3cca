package counterpull.engine.load;

import counterpull.engine.Require;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.PointTrack;
import counterpull.engine.planar.Vec;
import java.util.List;

/**
 * An end of a line on a carriage that the body moves along a rail.
 *
 * @param name what the floor calls it ("peg under the bar")
 * @param frame where the carriage touches the body and how its rail runs; that of the {@link GuidedMass} it belongs to
 * @param from from the place where the body touches it at the bottom of the range, in the plane's axes, m
 * @param lateral place to the side of the carriage's middle plane, m
 */
public record OnGuidedMass(String name, RailFrame frame, Vec from, double lateral) implements LineEnd {
    private static final Require.Limits ROOM = new Require.Limits(-10, 10);

    public OnGuidedMass {
        Require.within(from.x(), ROOM, "place of the " + name + ", forward", "m");
        Require.within(from.y(), ROOM, "place of the " + name + ", up", "m");
        Require.within(lateral, ROOM, "place of the " + name + ", to the side", "m");
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
        return frame.over(path).track(from);
    }

    @Override
    public List<Pull> pulls(ChainPath path, Tug tug) {
        RailRun carriage = frame.over(path);
        double[] load = new double[path.positions()];
        for (int i = 0; i < load.length; i++) {
            load[i] = carriage.load(from, tug.toward().get(i), i);
        }
        return carriage.pulls(tug.words(), tug.times(load, path.course()));
    }
}
