package counterpull.engine.load;

import counterpull.engine.motion.Course;
import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;

/**
 * What one end of a line does to what it hangs on.
 *
 * @param words what pulls
 * @param toward from the end along the line, in plane axes, by position: its length is the in-plane part of the line's own direction, 0 to 1
 * @param shares the line's pull, N, by phase × position
 */
public record Tug(String words, List<Vec> toward, List<Share> shares) {
    public Tug {
        toward = List.copyOf(toward);
        shares = List.copyOf(shares);
    }

    /** The shares, each position's multiplied by a factor. */
    List<Share> times(double[] factor, Course course) {
        List<Share> scaled = new ArrayList<>();
        for (Share share : shares) {
            scaled.add(Shares.times(share, factor, course));
        }
        return scaled;
    }
}
