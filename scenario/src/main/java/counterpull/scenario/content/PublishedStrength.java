package counterpull.scenario.content;

import counterpull.engine.body.Action;
import counterpull.engine.strength.LimbStrength;
import counterpull.engine.strength.Prior;
import counterpull.engine.strength.SpeedLaw;
import java.util.Optional;

/** The published curves of a person, where there are any. */
record PublishedStrength(LimbStrength curves) {

    Optional<Prior> of(Action action) {
        return curves.of(action).map(Prior.class::cast);
    }

    /** What speed does to a person's own curve: as published for the action, else nothing is known. */
    SpeedLaw speedLaw(Action action) {
        Optional<Prior> curve = of(action);
        return curve.isPresent() ? curve.get().speedLaw() : new SpeedLaw.AnySpeed();
    }
}
