package counterpull.scenario;

import counterpull.engine.choice.Goal;
import counterpull.engine.choice.Kit;
import counterpull.engine.choice.Racking;
import counterpull.engine.motion.Tempo;
import counterpull.engine.profile.Limb;
import counterpull.engine.profile.Person;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.PressTask;
import counterpull.engine.uncertainty.Doubts;
import counterpull.engine.uncertainty.Looked;
import counterpull.engine.uncertainty.PressTrial;
import counterpull.scenario.content.About;
import counterpull.scenario.content.Bounds;
import counterpull.scenario.content.Client;
import counterpull.scenario.content.Exercise;
import counterpull.scenario.content.Loaded;
import counterpull.scenario.content.Machine;
import counterpull.scenario.content.Plan;
import counterpull.scenario.content.Room;
import counterpull.scenario.content.Target;
import counterpull.scenario.content.Unsure;
import java.util.List;
import java.util.Optional;

/**
 * A person on a sled with a kit to search: names, what the engine computes from, and the plan.
 *
 * @param about what its author says about it
 * @param client who
 * @param machine on what
 * @param exercise doing what
 * @param loaded against what today
 * @param tempo how fast
 * @param wanted target, plan and limits
 * @param room from which kit
 * @param unsure how sure that is, as far as it is stated
 */
public record PressScenario(
        Optional<About> about,
        Client client,
        Machine machine,
        Exercise exercise,
        Loaded loaded,
        Tempo tempo,
        Wanted wanted,
        Room room,
        Unsure unsure)
        implements Scenario {

    /**
     * What is wanted and what must not be passed.
     *
     * @param target effort along the range
     * @param plan sets and repetitions
     * @param bounds hard limits
     */
    public record Wanted(Target target, Plan plan, Bounds bounds) {}

    /** The engine's task with what is on the machine today, at the usual number of positions. */
    public PressTask task() {
        return new PressTask(
                person(),
                machine.sled(),
                exercise.stance(),
                exercise.pushing(),
                tempo,
                loaded.loading(),
                PressTask.USUAL_POSITIONS);
    }

    /** What today's answer rests on and is known only so far. */
    public Doubts<PressTrial> doubts() {
        return Doubts.of(task(), unsure.stated(client));
    }

    /** The same of a setup that a search found. */
    public Doubts<PressTrial> doubts(PressProfile setup) {
        return Doubts.of(PressTrial.of(setup), unsure.stated(client));
    }

    /** What is looked at in every draw. */
    public Looked looked() {
        return new Looked(wanted.target().joints(), wanted.target().ceiling());
    }

    @Override
    public Person person() {
        List<Limb> limbs = client.limbs().stream()
                .filter(limb -> exercise.using().uses(limb.side()))
                .map(limb -> client.limb(limb, exercise.share(limb.side()), limb.pressRange()))
                .toList();
        return new Person(client.physique().mass(), limbs);
    }

    /** What the engine's search asks of a setup. */
    public Goal goal() {
        return new Goal(
                wanted.target().effort(),
                wanted.target().ceiling(),
                wanted.target().leastForce(),
                wanted.target().joints(),
                wanted.bounds().caps(),
                wanted.bounds().straying());
    }

    /** Where the sled can be racked and how uneven its sides may be while it is loaded. */
    public Racking racking() {
        return new Racking(machine.places().racking(), wanted.bounds().unevenSides());
    }

    /** What the engine's search may use. */
    public Kit kit() {
        return new Kit(
                room.plates(),
                machine.platesGoOn().atOnce(),
                room.rubber(),
                room.hooks(),
                room.rules(),
                new Kit.Places(
                        exercise.trying().seats(),
                        exercise.trying().rows(),
                        exercise.trying().furtherStops()));
    }
}
