package counterpull.engine.motion;

import counterpull.engine.Require;

/**
 * One seat and back setting of a sled with its reading pair: at tape reading {@code mark} the plate's surface is
 * {@code hipToPlate} from the hip, along the rail.
 *
 * @param name what the floor calls it ("back 3")
 * @param mark tape reading of the pair, m
 * @param hipToPlate distance hip → plate surface along <b>u</b> at that reading, m, above zero
 * @param hipAcross where the hip's line lies along <b>n</b> from the sled's reference line (from which foot rows, anchors
 *     and attachments are measured), m; 0 unless the setting lifts the hip
 * @param trunkDirection direction b hip → shoulder, rad CCW from horizontal
 */
public record SeatSetting(String name, double mark, double hipToPlate, double hipAcross, double trunkDirection) {
    public SeatSetting {
        Require.finite(mark, "tape reading of the seat setting", "m");
        Require.positive(hipToPlate, "hip-to-plate distance", "m");
        Require.finite(hipAcross, "hip's place across the rail", "m");
        Require.finite(trunkDirection, "trunk direction", "rad");
    }

    /** Hip-to-plate distance at a tape reading, m. */
    public double plateAt(double reading, Rail rail) {
        return hipToPlate + rail.tapeSense() * (reading - mark);
    }

    /** Tape reading at a hip-to-plate distance, m. */
    public double markAt(double plate, Rail rail) {
        return mark + rail.tapeSense() * (plate - hipToPlate);
    }
}
