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

/** What a frictionless incline leaves of the weight, along the rail. */
class InclineValidationTest {
    @ParameterizedTest
    @CsvSource({"45, 0.70711", "30, 0.5", "20, 0.34202"})
    void shareOfTheWeightAlongTheRail(double degrees, double share) {
        Rail rail = new Rail(Math.toRadians(degrees), Ride.PLATE, 0, 1);
        Carriage carriage = new Carriage(40, Counterweight.none(), Friction.none(), 400);
        PressProfile profile = PressProfile.of(new PressTask(
                Examples.person(),
                new Sled(rail, carriage, new Stops()),
                Examples.stance(),
                Pushing.straight(),
                Examples.tempo(),
                Loading.plates(60),
                5));
        Published.of("share of the weight along a rail of " + degrees + "°", "")
                .source("m g sin θ: any mechanics text; computed")
                .value(share)
                .ours(profile.force(Phase.HELD, 2) / (100 * Constants.STANDARD_GRAVITY))
                .within(0.0000051, "printed to five decimals");
    }
}
