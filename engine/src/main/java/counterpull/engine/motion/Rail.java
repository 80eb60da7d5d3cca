package counterpull.engine.motion;

import counterpull.engine.Require;

/**
 * The rail of a sled. Axes along it: <b>u</b> away from the seat, <b>n</b> = <b>u</b> turned +90°, toward the head.
 *
 * @param angle direction θ of <b>u</b> from the horizontal, rad, −π/2 to π/2; negative where the plate is the lower end
 * @param ride which end moves
 * @param plateTilt how far the plate is turned CCW from square to the rail, rad, −1 to 1; 0 = square
 * @param tapeSense +1 where the tape mark on the frame reads higher as hip and plate move apart, −1 where it reads lower
 */
public record Rail(double angle, Ride ride, double plateTilt, int tapeSense) {
    private static final Require.Limits QUARTER_TURN = new Require.Limits(-Math.PI / 2, Math.PI / 2);
    private static final Require.Limits TILT = new Require.Limits(-1, 1);
    private static final Require.Limits SENSE = new Require.Limits(-1, 1);

    public Rail {
        Require.within(angle, QUARTER_TURN, "rail angle", "rad");
        Require.within(plateTilt, TILT, "plate tilt", "rad");
        Require.within(tapeSense, SENSE, "sense of the tape mark", "");
        Require.positive(tapeSense * tapeSense, "sense of the tape mark", "");
    }
}
