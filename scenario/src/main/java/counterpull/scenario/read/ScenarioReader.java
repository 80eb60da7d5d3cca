package counterpull.scenario.read;

import counterpull.scenario.ExerciseScenario;
import counterpull.scenario.PressScenario;
import counterpull.scenario.Scenario;
import counterpull.scenario.content.About;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.format.Shapes;
import counterpull.scenario.movement.MovementKind;
import counterpull.scenario.movement.MovementKinds;
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
    public record Result(Optional<Scenario> scenario, Problems problems) {
        /** The scenario where it is a press on a sled. */
        public Optional<PressScenario> press() {
            return scenario.filter(PressScenario.class::isInstance).map(PressScenario.class::cast);
        }

        /** The scenario where it is any other exercise. */
        public Optional<ExerciseScenario> exercise() {
            return scenario.filter(ExerciseScenario.class::isInstance).map(ExerciseScenario.class::cast);
        }
    }

    /**
     * Reads the person of a scenario doing another exercise: of the first files only the person counts, everything else stands in the
     * exercise's own file.
     *
     * @param person files of which one holds the person
     * @param exercise the exercise's file
     */
    public static Result read(List<Source> person, Source exercise) {
        return read(person, List.of(exercise));
    }

    /** Reads files whose top-level keys together make one scenario. */
    public static Result read(List<Source> sources) {
        return read(List.of(), sources);
    }

    /** What an exercise's author says in its file; empty where the file says nothing or cannot be read. */
    public static Optional<About> about(Source exercise) {
        Problems problems = new Problems();
        return TreeReader.read(exercise, problems)
                .flatMap(file -> AboutReader.read(Fields.open(file, Shapes.SCENARIO, problems)));
    }

    private static Result read(List<Source> person, List<Source> whole) {
        List<Source> sources = new ArrayList<>(person);
        sources.addAll(whole);
        Problems problems = new Problems();
        if (sources.isEmpty() || sources.size() > MOST_FILES) {
            String message = sources.isEmpty() ? "no file is given" : "more than " + MOST_FILES + " files are given";
            problems.add(Problem.of(Code.FILE_NOT_FOUND, Place.file("scenario"), message, "Name the scenario's files"));
            return new Result(Optional.empty(), problems);
        }
        List<MapNode> files = new ArrayList<>();
        for (int k = 0; k < sources.size(); k++) {
            boolean whoOnly = k < person.size();
            TreeReader.read(sources.get(k), problems)
                    .map(file -> whoOnly ? Merged.personOf(file) : file)
                    .ifPresent(files::add);
        }
        // the keys of a file that cannot be read would all count as missing
        Optional<Scenario> scenario =
                files.size() == sources.size() ? scenario(Merged.of(files, problems), problems) : Optional.empty();
        return new Result(problems.isEmpty() ? scenario : Optional.empty(), problems);
    }

    private static Optional<Scenario> scenario(MapNode map, Problems problems) {
        Fields top = Fields.open(map, Shapes.SCENARIO, problems);
        if (!top.has("exercise") && !top.has("machine")) {
            return nothingDone(top);
        }
        Optional<String> word = top.peek("exercise", "kind");
        Optional<MovementKind> kind = word.flatMap(MovementKinds::named);
        if (kind.isPresent()) {
            return new ExerciseReading(top, kind.get()).read().map(Scenario.class::cast);
        }
        if (word.isPresent() && !word.get().equals(MovementKinds.RAIL_PRESS)) {
            top.checkWord("exercise", "kind", MovementKinds.words());
            return Optional.empty();
        }
        return PressReading.read(top, problems).map(Scenario.class::cast);
    }

    /** A person of whom no file says what is done: nothing more is asked of the person than any exercise asks. */
    private static Optional<Scenario> nothingDone(Fields top) {
        PersonReader.read(top, new RangesNeeded.Nothing());
        top.require("exercise", "");
        return Optional.empty();
    }
}
