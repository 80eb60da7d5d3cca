package counterpull.engine.validation;

import counterpull.engine.Constants;
import counterpull.engine.load.Carriage;
import counterpull.engine.load.Counterweight;
import counterpull.engine.load.Friction;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.Rail;
import counterpull.engine.motion.Ride;
import counterpull.engine.motion.Stops;
import counterpull.engine.profile.Loading;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.PressTask;
import counterpull.engine.profile.Pushing;
import counterpull.engine.profile.Sled;
import counterpull.engine.regression.Examples;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What an incline leaves of the weight, along the rail and across it. */
class InclineValidationTest {
    @ParameterizedTest
    @CsvSource({"45, 0.70711", "30, 0.5", "20, 0.34202"})
    void shareOfTheWeightAlongTheRail(double degrees, double share) {
        PressProfile profile = pressed(degrees, Friction.none());
        Published.of("share of the weight along a rail of " + degrees + "°", "")
                .source("m g sin θ: any mechanics text; computed")
                .value(share)
                .ours(profile.force(Phase.HELD, 2) / (100 * Constants.STANDARD_GRAVITY))
                .within(0.0000051, "printed to five decimals");
    }

    /** Seen through friction: with a coefficient of 0.1, half of what lifting takes more than lowering is a tenth of it. */
    @ParameterizedTest
    @CsvSource({"45, 0.70711", "30, 0.86603", "20, 0.93969"})
    void shareOfTheWeightAcrossTheRail(double degrees, double share) {
        PressProfile profile = pressed(degrees, new Friction(0, 0.1, 0));
        double friction = (profile.force(Phase.LIFTING, 0) - profile.force(Phase.LOWERING, 0)) / 2;
        Published.of("share of the weight across a rail of " + degrees + "°", "")
                .source("m g cos θ: any mechanics text; computed")
                .value(share)
                .ours(friction / (0.1 * 100 * Constants.STANDARD_GRAVITY))
                .within(0.0000051, "printed to five decimals");
    }

    private static PressProfile pressed(double degrees, Friction friction) {
        Rail rail = new Rail(Math.toRadians(degrees), Ride.PLATE, 0, 1);
        Carriage carriage = new Carriage(40, Counterweight.none(), friction, 400);
        return PressProfile.of(new PressTask(
                Examples.person(),
                new Sled(rail, carriage, new Stops()),
                Examples.stance(),
                Pushing.straight(),
                Examples.tempo(),
                Loading.plates(60),
                5));
    }
}
