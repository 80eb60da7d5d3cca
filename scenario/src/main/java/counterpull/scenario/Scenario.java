package counterpull.scenario;

import counterpull.engine.body.Side;
import counterpull.engine.motion.Tempo;
import counterpull.engine.profile.Person;
import counterpull.scenario.content.About;
import counterpull.scenario.content.Client;
import counterpull.scenario.content.ClientLimb;
import java.util.Optional;

/** Everything that a scenario says, in SI. Two scenarios that say the same are equal. */
public sealed interface Scenario permits PressScenario, ExerciseScenario {
    /** What the exercise's author says about it; empty where nothing is said. */
    Optional<About> about();

    /** Who. */
    Client client();

    /** How fast. */
    Tempo tempo();

    /** The person with the limbs that take part, as the engine takes them. */
    Person person();

    /** The limb of one side, if the scenario has it. */
    default Optional<ClientLimb> limb(Side side) {
        return client().limbs().stream().filter(limb -> limb.side() == side).findFirst();
    }
}
