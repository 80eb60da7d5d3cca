package counterpull.letgo;

import counterpull.engine.Require;
import java.util.List;

/**
 * One machine of an exercise let go all along the range.
 *
 * @param names what is on it, as a person says it, in the order of the exercise
 * @param kind what it is
 * @param reach how far its contact moves for each unit of its coordinate at the bottom of the range: the pad's distance from the pivot, m; 1 on
 *     a rail and at the end of a line
 * @param positions at which positions of the profile it is let go, bottom first
 * @param releases what it does, at these positions
 */
public record MachineReleases(List<String> names, Kind kind, double reach, List<Integer> positions, Releases releases) {
    /** What is let go. */
    public enum Kind {
        /** A lever, with the stack that it winds; its coordinate is rad. */
        LEVER,
        /** Something that runs on a rail; m. */
        CARRIAGE,
        /** A stack with its line and handle; m of line. */
        LINE
    }

    public MachineReleases {
        names = List.copyOf(names);
        positions = List.copyOf(positions);
        Require.positive(reach, "reach of the contact", "m for each unit of the machine's coordinate");
    }

    /** Position of the profile at which an outcome's machine was let go; refused for an outcome of another machine. */
    public int position(Outcome outcome) {
        int at = Math.max(releases.held().indexOf(outcome), releases.lowering().indexOf(outcome));
        if (at < 0) {
            throw new IllegalArgumentException("this outcome is not of this machine");
        }
        return positions.get(at);
    }

    /** How fast pad, bar or handle is at the end, m/s. */
    public double arrivalSpeed(Outcome outcome) {
        return reach * outcome.arrivalSpeed();
    }

    /** How far pad, bar or handle goes down until then, m along its way; negative where up. */
    public double drop(Outcome outcome) {
        return reach * outcome.drop();
    }

    /** How fast pad, bar or handle gets, m/s. */
    public double fastest(Outcome outcome) {
        return reach * outcome.way().fastest();
    }
}
