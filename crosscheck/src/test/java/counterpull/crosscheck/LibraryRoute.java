package counterpull.crosscheck;

import counterpull.engine.planar.Vec;
import us.ihmc.euclid.tuple3D.Vector3D;

/** A moving chain with all that pulls on it, asked of the multibody library: arms and lines by its own points. */
final class LibraryRoute {
    private final MovingChain moving;
    private final LibraryChain library;
    private final LibraryPoints points;
    final double[] torque;

    /** With the first joint's motion apart, so that a control can state another one. */
    LibraryRoute(MovingChain moving, Vec baseVelocity, Vec baseAcceleration) {
        this.moving = moving;
        torque = new double[moving.chain.size()];
        library = new LibraryChain(moving.chain, 0, -MovingChain.GRAVITY);
        library.begin(baseAcceleration.x(), baseAcceleration.y());
        library.glide(baseVelocity.x(), baseVelocity.y());
        for (int i = 0; i < torque.length; i++) {
            library.segment(i, moving.direction[i], moving.rate[i], moving.turning[i]);
        }
        points = new LibraryPoints(library);
        points.update();
    }

    LibraryRoute(MovingChain moving) {
        this(moving, moving.baseVelocity, moving.baseAcceleration);
    }

    /** Hangs loads and cables on, and computes. */
    LibraryRoute solve(StackCable.Law law) {
        for (MovingChain.Load load : moving.loads) {
            library.load(load.segment(), arm(load.segment(), load.along(), load.across()), vector(load.force()));
        }
        for (StackCable cable : moving.cables) {
            Vector3D pull = vector(cable.pull(law, line(cable), MovingChain.GRAVITY));
            library.load(cable.segment(), arm(cable.segment(), cable.along(), cable.across()), pull);
        }
        library.torques(torque);
        return this;
    }

    /** How a cable's line runs, from the library's own place, velocity and acceleration of its end. */
    LineMotion line(StackCable cable) {
        int i = cable.segment();
        return LineMotion.of(
                vec(points.place(i, cable.along(), cable.across())).minus(cable.pulley()),
                vec(points.velocity(i, cable.along(), cable.across())),
                vec(points.acceleration(i, cable.along(), cable.across())));
    }

    Vec baseForce() {
        return new Vec(library.baseForceX(), library.baseForceY());
    }

    private Vector3D arm(int i, double along, double across) {
        Vector3D arm = points.place(i, along, across);
        arm.sub(points.place(i, 0, 0));
        return arm;
    }

    private static Vec vec(Vector3D vector) {
        return new Vec(vector.getX(), vector.getY());
    }

    private static Vector3D vector(Vec vec) {
        return new Vector3D(vec.x(), vec.y(), 0);
    }
}
