package counterpull.scenario.read;

import counterpull.engine.motion.Tempo;
import counterpull.scenario.Scenario;
import counterpull.scenario.content.Bounds;
import counterpull.scenario.content.Client;
import counterpull.scenario.content.Exercise;
import counterpull.scenario.content.Loaded;
import counterpull.scenario.content.Machine;
import counterpull.scenario.content.Room;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.problem.Code;
import counterpull.scenario.problem.Place;
import counterpull.scenario.problem.Problem;
import counterpull.scenario.problem.Problems;
import counterpull.scenario.tree.Node.MapNode;
import counterpull.scenario.tree.Source;
import counterpull.scenario.tree.TreeReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a scenario from one or several files. Never throws for what the files hold: it answers or says every problem. */
public final class ScenarioReader {
    private static final int MOST_FILES = 20;

    private ScenarioReader() {}

    /**
     * What came of reading.
     *
     * @param scenario the scenario; empty if there is any problem
     * @param problems every problem
     */
    public record Result(Optional<Scenario> scenario, Problems problems) {}

    /** Reads files whose top-level keys together make one scenario. */
    public static Result read(List<Source> sources) {
        Problems problems = new Problems();
        if (sources.isEmpty() || sources.size() > MOST_FILES) {
            String message = sources.isEmpty() ? "no file is given" : "more than " + MOST_FILES + " files are given";
            problems.add(Problem.of(Code.FILE_NOT_FOUND, Place.file("scenario"), message, "Name the scenario's files"));
            return new Result(Optional.empty(), problems);
        }
        List<MapNode> files = new ArrayList<>();
        for (Source source : sources) {
            TreeReader.read(source, problems).ifPresent(files::add);
        }
        // the keys of a file that cannot be read would all count as missing
        Optional<Scenario> scenario =
                files.size() == sources.size() ? scenario(Merged.of(files, problems), problems) : Optional.empty();
        return new Result(problems.isEmpty() ? scenario : Optional.empty(), problems);
    }

    private static Optional<Scenario> scenario(MapNode map, Problems problems) {
        Fields top = Fields.open(map, Shapes.SCENARIO, problems);
        Optional<Client> client = PersonReader.read(top);
        Optional<Machine> machine = MachineReader.read(top);
        Optional<Room> room = KitReader.read(top);
        Optional<Exercise> exercise = new ExerciseReader(machine, client).read(top);
        Optional<Loaded> loaded = new ResistsReader(room).read(top);
        Optional<Tempo> tempo = TempoReader.read(top);
        Optional<TargetReader.Found> target = TargetReader.read(top);
        Optional<Bounds> bounds = LimitsReader.read(top);
        if (top.isSound()) {
            new OnHand(problems, top.place("resists"))
                    .check(loaded.orElseThrow(), room.orElseThrow(), machine.orElseThrow(), bounds.orElseThrow());
        }
        return top.built(() -> built(
                new Who(client.orElseThrow(), machine.orElseThrow(), exercise.orElseThrow()),
                new How(loaded.orElseThrow(), tempo.orElseThrow(), room.orElseThrow()),
                target.orElseThrow(),
                bounds.orElseThrow()));
    }

    private record Who(Client client, Machine machine, Exercise exercise) {}

    private record How(Loaded loaded, Tempo tempo, Room room) {}

    private static Scenario built(Who who, How how, TargetReader.Found target, Bounds bounds) {
        Scenario scenario = new Scenario(
                who.client(),
                who.machine(),
                who.exercise(),
                how.loaded(),
                how.tempo(),
                new Scenario.Wanted(target.target(), target.plan(), bounds),
                how.room());
        // what the engine would refuse is refused now
        scenario.task();
        scenario.goal();
        scenario.kit();
        return scenario;
    }
}
