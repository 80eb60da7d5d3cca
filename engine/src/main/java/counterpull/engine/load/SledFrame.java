package counterpull.engine.load;

import counterpull.engine.motion.Rail;
import counterpull.engine.motion.Ride;
import counterpull.engine.motion.SeatSetting;
import counterpull.engine.planar.Vec;

/**
 * Where a sled's anchors and attachments lie for one seat setting, in the rail's axes (<b>u</b>, <b>n</b>).
 *
 * @param rail the rail
 * @param seat the seat setting that ties the tape mark's origin to the hip
 */
public record SledFrame(Rail rail, SeatSetting seat) {
    /** Which end moves. */
    public Ride ride() {
        return rail.ride();
    }

    /** From attachment to anchor in the plane at a hip-to-plate distance, m. */
    public Vec toAnchor(ElasticLine.Ends ends, double plate) {
        return anchorAt(ends.anchor(), plate).minus(attachmentAt(ends.attachment(), plate));
    }

    /** Where an anchor is from the hip's foot on the sled's reference line, m. */
    public Vec anchorAt(Anchor anchor, double plate) {
        double origin = rail.ride() == Ride.PLATE ? seat.plateAt(0, rail) : plate;
        return anchor.at().plus(new Vec(origin, 0));
    }

    /** Where an attachment is, m. */
    public Vec attachmentAt(Attachment attachment, double plate) {
        double origin = rail.ride() == Ride.PLATE ? plate : 0;
        return attachment.at().plus(new Vec(origin, 0));
    }
}
