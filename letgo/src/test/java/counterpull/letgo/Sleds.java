package counterpull.letgo;

import counterpull.engine.elastic.LinearLaw;
import counterpull.engine.elastic.LossFraction;
import counterpull.engine.elastic.Rubber;
import counterpull.engine.load.Carriage;
import counterpull.engine.load.Counterweight;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.Friction;
import counterpull.engine.motion.Rail;
import counterpull.engine.motion.Ride;
import counterpull.engine.motion.Stops;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.Loading;
import counterpull.engine.profile.PressTask;
import counterpull.engine.profile.Sled;
import counterpull.engine.profile.Trials;
import java.util.List;

/**
 * Sleds under example B's person: knee 90° at the bottom, straight 0.25 m farther up; the tape reads the hip-to-plate distance. 40 kg of
 * carriage, plates as stated.
 */
final class Sleds {
    /** Where the range of example B's person starts, m from the hip. */
    static final double BOTTOM =
            plain(45, Friction.none(), Loading.plates(0)).stroke().bottom();

    private Sleds() {}

    /** Without a stop. */
    static PressTask plain(double degrees, Friction friction, Loading loading) {
        return task(degrees, friction, loading, new Stops());
    }

    /** With a stop exactly at the bottom of the range. */
    static PressTask stopped(double degrees, Friction friction, Loading loading) {
        return task(degrees, friction, loading, new Stops(BOTTOM));
    }

    private static PressTask task(double degrees, Friction friction, Loading loading, Stops stops) {
        Rail rail = new Rail(Angles.radians(degrees), Ride.PLATE, 0, 1);
        Carriage carriage = new Carriage(40, Counterweight.none(), friction, 400);
        return Trials.with(Trials.task().with(loading), new Sled(rail, carriage, stops));
    }

    /** A linear line along the rail, attached to the plate point: rubber of this stiffness that is loose at 0.3 m. */
    static ElasticLine along(double anchor, double stiffness, double loss) {
        return along(anchor, stiffness, loss, 3);
    }

    /** The same, tested to so many times its length. */
    static ElasticLine along(double anchor, double stiffness, double loss, double tested) {
        Rubber rubber =
                new Rubber("r", 0.3, LinearLaw.ofStiffness(stiffness, 0.3), new LossFraction(loss), 0.3 * tested, 0, 0);
        return Trials.line(rubber, new Vec(anchor, 0), new Vec(0, 0));
    }

    /** Two lines that pull against each other and are equally long where the plate is this far above the bottom. */
    static List<ElasticLine> opposed(double middle, double stiffness, double loss) {
        double at = BOTTOM + middle;
        return List.of(along(at + 0.6, stiffness, loss), along(at - 0.6, stiffness, loss));
    }
}
