package counterpull.scenario.read;

import counterpull.engine.motion.Tempo;
import counterpull.scenario.PressScenario;
import counterpull.scenario.content.About;
import counterpull.scenario.content.Bounds;
import counterpull.scenario.content.Client;
import counterpull.scenario.content.Exercise;
import counterpull.scenario.content.Loaded;
import counterpull.scenario.content.Machine;
import counterpull.scenario.content.Room;
import counterpull.scenario.content.Unsure;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.problem.Problems;
import java.util.Optional;

/** Reads a scenario of a press on a sled. */
final class PressReading {
    private PressReading() {}

    static Optional<PressScenario> read(Fields top, Problems problems) {
        Optional<About> about = AboutReader.read(top);
        Optional<Client> client = PersonReader.read(top, new RangesNeeded.OfPress());
        Optional<Machine> machine = MachineReader.read(top);
        Optional<Room> room = KitReader.read(top);
        Optional<Exercise> exercise = new ExerciseReader(machine, client).read(top);
        Optional<Loaded> loaded = new ResistsReader(room).read(top);
        Optional<Tempo> tempo = TempoReader.read(top);
        Optional<TargetReader.Found> target = TargetReader.read(top);
        Optional<Bounds> bounds = LimitsReader.read(top);
        Unsure unsure = UnsureReader.ofPress(top, room.map(Room::pieces));
        if (top.isSound()) {
            new OnHand(problems, top.place("resists"))
                    .check(loaded.orElseThrow(), room.orElseThrow(), machine.orElseThrow(), bounds.orElseThrow());
        }
        return top.built(() -> built(
                new Who(about, client.orElseThrow(), machine.orElseThrow(), exercise.orElseThrow()),
                new How(loaded.orElseThrow(), tempo.orElseThrow(), room.orElseThrow(), unsure),
                target.orElseThrow(),
                bounds.orElseThrow()));
    }

    private record Who(Optional<About> about, Client client, Machine machine, Exercise exercise) {}

    private record How(Loaded loaded, Tempo tempo, Room room, Unsure unsure) {}

    private static PressScenario built(Who who, How how, TargetReader.Found target, Bounds bounds) {
        PressScenario scenario = new PressScenario(
                who.about(),
                who.client(),
                who.machine(),
                who.exercise(),
                how.loaded(),
                how.tempo(),
                new PressScenario.Wanted(target.target(), target.plan(), bounds),
                how.room(),
                how.unsure());
        // what the engine would refuse is refused now
        scenario.task();
        scenario.goal();
        scenario.kit();
        return scenario;
    }
}
