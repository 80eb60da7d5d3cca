package counterpull.crosscheck;

import us.ihmc.euclid.referenceFrame.FramePoint3D;
import us.ihmc.euclid.referenceFrame.FrameVector3D;
import us.ihmc.euclid.referenceFrame.ReferenceFrame;
import us.ihmc.euclid.tuple3D.Vector3D;
import us.ihmc.mecano.algorithms.SpatialAccelerationCalculator;

/**
 * Where points of a {@link LibraryChain} are, how fast they go and how they accelerate, as the library itself says from its
 * twists and spatial accelerations: in the plane's axes with the first joint at the origin, m, m/s and m/s².
 */
public final class LibraryPoints {
    private static final ReferenceFrame WORLD = ReferenceFrame.getWorldFrame();
    private final LibraryChain chain;
    private final SpatialAccelerationCalculator accelerations;

    /** The points of this chain. */
    public LibraryPoints(LibraryChain chain) {
        this.chain = chain;
        accelerations = new SpatialAccelerationCalculator(chain.root(), WORLD);
    }

    /** Takes up the posture and motion that the chain was last given. */
    public void update() {
        chain.root().updateFramesRecursively();
        accelerations.reset();
    }

    /** Where a point of segment i is, from its place along and across the segment. */
    public Vector3D place(int i, double along, double across) {
        FramePoint3D point = point(i, along, across);
        point.changeFrame(WORLD);
        return new Vector3D(point);
    }

    /** How fast it goes. */
    public Vector3D velocity(int i, double along, double across) {
        FramePoint3D point = point(i, along, across);
        FrameVector3D velocity = new FrameVector3D();
        var twist = chain.body(i).getBodyFixedFrame().getTwistOfFrame();
        point.changeFrame(twist.getReferenceFrame());
        twist.getLinearVelocityAt(point, velocity);
        velocity.changeFrame(WORLD);
        return new Vector3D(velocity);
    }

    /** How it accelerates. */
    public Vector3D acceleration(int i, double along, double across) {
        FrameVector3D acceleration = new FrameVector3D(
                accelerations.getLinearAccelerationOfBodyFixedPoint(chain.body(i), point(i, along, across)));
        acceleration.changeFrame(WORLD);
        return new Vector3D(acceleration);
    }

    private FramePoint3D point(int i, double along, double across) {
        return new FramePoint3D(chain.axes(i), along, across, 0);
    }
}
