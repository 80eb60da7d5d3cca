package counterpull.scenario;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.Tempo;
import counterpull.engine.profile.ExerciseTask;
import counterpull.engine.profile.Limb;
import counterpull.engine.profile.Person;
import counterpull.engine.uncertainty.Doubts;
import counterpull.engine.uncertainty.ExerciseTrial;
import counterpull.engine.uncertainty.Looked;
import counterpull.scenario.content.About;
import counterpull.scenario.content.Aim;
import counterpull.scenario.content.Client;
import counterpull.scenario.content.Doing;
import counterpull.scenario.content.Unsure;
import java.util.List;
import java.util.Optional;

/**
 * A person who does any exercise but a press on a sled: no machine of its own, no kit to search; what resists stands in a list.
 *
 * @param about what its author says about it
 * @param client who
 * @param doing which movement, against what
 * @param tempo how fast
 * @param aim target, plan and limits, as far as they are stated
 * @param unsure how sure that is, as far as it is stated
 */
public record ExerciseScenario(Optional<About> about, Client client, Doing doing, Tempo tempo, Aim aim, Unsure unsure)
        implements Scenario {
    /** How many positions a profile has unless stated. */
    public static final int USUAL_POSITIONS = 101;

    /** The engine's task with what resists today, at the usual number of positions. */
    public ExerciseTask task() {
        return new ExerciseTask(person(), doing.exercise(), doing.chosen(), tempo, USUAL_POSITIONS);
    }

    /** What the answer rests on and is known only so far. */
    public Doubts<ExerciseTrial> doubts() {
        return Doubts.of(task(), unsure.stated(client));
    }

    /** What is looked at in every draw; where no ceiling is stated, all that there is. */
    public Looked looked() {
        List<Joint> all = doing.motion().joints();
        return aim.target()
                .map(target -> new Looked(
                        target.joints().stream().filter(all::contains).toList(), target.ceiling()))
                .orElse(new Looked(all, 1));
    }

    @Override
    public Person person() {
        List<Limb> limbs = client.limbs().stream()
                .filter(limb -> doing.uses(limb.side()))
                .map(limb -> client.limb(limb, doing.sides().share(limb.side()), doing.range(limb)))
                .toList();
        return new Person(client.physique().mass(), limbs);
    }
}
