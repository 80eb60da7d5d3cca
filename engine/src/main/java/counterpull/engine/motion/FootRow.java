package counterpull.engine.motion;

import counterpull.engine.Require;

/**
 * A row of the plate on which the heels stand.
 *
 * @param name what the floor calls it ("row 2")
 * @param heel where the heel is along the plate, from where the sled's reference line meets it, m, positive toward the toes
 */
public record FootRow(String name, double heel) {
    private static final Require.Limits ON_A_PLATE = new Require.Limits(-2, 2);

    public FootRow {
        Require.within(heel, ON_A_PLATE, "heel's place on the plate", "m");
    }
}
