package counterpull.picture;

import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.SledFrame;
import counterpull.engine.motion.Rail;
import counterpull.engine.motion.Ride;
import counterpull.engine.motion.Stance;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.PressProfile;

/** Where a sled's points are in its own axes, m; see {@link Posture} for the origin. */
final class SledPoints {
    private final PressProfile profile;
    private final Rail rail;
    private final Stance stance;
    private final SledFrame frame;

    SledPoints(PressProfile profile) {
        this.profile = profile;
        rail = profile.task().sled().rail();
        stance = profile.task().stance();
        frame = new SledFrame(rail, stance.seat());
    }

    boolean plateRides() {
        return rail.ride() == Ride.PLATE;
    }

    // where the engine's origin, the hip's foot on the sled's reference line, is
    private Vec origin(double plate) {
        return new Vec(plateRides() ? 0 : -plate, 0);
    }

    Vec hip(int position) {
        Vec shift = stance.hipShift();
        return origin(profile.plate(position))
                .plus(shift)
                .plus(new Vec(0, stance.seat().hipAcross()));
    }

    /** Where the reference line meets the plate's surface. */
    Vec plate(int position) {
        return plateAt(profile.plate(position));
    }

    private Vec plateAt(double plate) {
        return origin(plate).plus(new Vec(plate, 0));
    }

    /** Direction along the plate, toward the toes. */
    Vec plateWay() {
        return Vec.unit(Math.PI / 2 + rail.plateTilt());
    }

    Vec anchor(ElasticLine line, int position) {
        double plate = profile.plate(position);
        return origin(plate).plus(frame.anchorAt(line.ends().anchor(), plate));
    }

    Vec attachment(ElasticLine line, int position) {
        double plate = profile.plate(position);
        return origin(plate).plus(frame.attachmentAt(line.ends().attachment(), plate));
    }

    /** Where along the rail the pointer on what rides stands at a tape reading. */
    double pointerAtMark(double mark) {
        double plate = stance.seat().plateAt(mark, rail);
        return plateRides() ? plate : -plate;
    }

    double pointer(int position) {
        return plateRides() ? profile.plate(position) : -profile.plate(position);
    }

    /** Tape reading where the pointer stands at this place along the rail. */
    double markAtPointer(double along) {
        return stance.seat().markAt(plateRides() ? along : -along, rail);
    }

    /** Direction hip → shoulder in the sled's axes. */
    Vec trunkWay() {
        return Vec.unit(stance.seat().trunkDirection() - rail.angle());
    }

    double tilt() {
        return rail.angle();
    }
}
