package counterpull.engine.load;

import counterpull.engine.Require;

/**
 * A place on a lever where mass hangs as a point: a horn for plates, or a counterweight (a fixed mass, usually half a turn from the pad).
 *
 * @param name as a person says it ("plate horn", "counterweight")
 * @param radius from the pivot, m, zero or more
 * @param offset of the line pivot → horn from the line pivot → pad, rad, counter-clockwise positive
 * @param load what hangs there; a pair of horns at one place is one horn with all that hangs on both
 */
public record Horn(String name, double radius, double offset, Loaded load) {
    public Horn {
        Require.within(radius, new Require.Limits(0, 5), "distance of the " + name + " from the pivot", "m");
        Require.finite(offset, "angle of the " + name + " from the pad", "rad");
    }
}
