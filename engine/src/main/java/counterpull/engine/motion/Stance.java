package counterpull.engine.motion;

import counterpull.engine.Require;
import counterpull.engine.planar.Vec;

/**
 * How a person sits and stands on the sled.
 *
 * @param seat the seat and back setting
 * @param row the heels' row
 * @param pressurePoint centre of pressure as a fraction of foot length from the heel, 0.1 to 0.9
 * @param hipShift how far a soft seat lets the hip move, along <b>u</b> and <b>n</b>, m
 */
public record Stance(SeatSetting seat, FootRow row, double pressurePoint, Vec hipShift) {
    private static final Require.Limits ON_THE_SOLE = new Require.Limits(0.1, 0.9);

    public Stance {
        Require.within(pressurePoint, ON_THE_SOLE, "centre of pressure (fraction of foot length from the heel)", "");
        Require.finite(hipShift.x(), "hip shift along the rail", "m");
        Require.finite(hipShift.y(), "hip shift across the rail", "m");
    }
}
