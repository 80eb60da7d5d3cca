package counterpull.scenario.read;

import static counterpull.scenario.format.Measures.BORNE;
import static counterpull.scenario.format.Measures.UP_TO_A_HUNDRED;

import counterpull.engine.motion.Bounce;
import counterpull.engine.motion.Tempo;
import counterpull.engine.motion.WorkingRange;
import counterpull.scenario.ExerciseScenario;
import counterpull.scenario.content.About;
import counterpull.scenario.content.Aim;
import counterpull.scenario.content.Client;
import counterpull.scenario.content.Doing;
import counterpull.scenario.content.Resisting;
import counterpull.scenario.content.Sides;
import counterpull.scenario.content.Unsure;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.movement.MovementKind;
import counterpull.scenario.movement.MovementKind.Movement;
import counterpull.scenario.movement.MovingBody;
import counterpull.scenario.problem.Code;
import counterpull.scenario.resist.ResistKinds;
import counterpull.scenario.resist.Setting;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a scenario of any exercise but a press on a sled. */
final class ExerciseReading {
    private final Fields top;
    private final MovementKind kind;

    ExerciseReading(Fields top, MovementKind kind) {
        this.top = top;
        this.kind = kind;
    }

    /** What the group "exercise" says by itself. */
    private record Begun(Fields fields, Sides sides, double borne, Movement movement, Optional<WorkingRange> range) {
        RangesNeeded needed() {
            return range.isPresent() || movement.motion().driver().isEmpty()
                    ? new RangesNeeded.Nothing()
                    : new RangesNeeded.OfJoint(movement.motion().driver().get(), sides);
        }
    }

    Optional<ExerciseScenario> read() {
        onlyOnASled("machine");
        onlyOnASled("kit");
        Optional<About> about = AboutReader.read(top);
        Optional<Begun> begun = top.group("exercise", kind.shape()).flatMap(this::begun);
        Optional<Client> client =
                PersonReader.read(top, begun.map(Begun::needed).orElse(new RangesNeeded.Nothing()));
        begun.ifPresent(
                found -> SidesReader.present(found.fields(), found.sides().using(), client));
        Optional<List<Resisting>> resists = begun.map(found -> resists(found, client));
        Optional<Tempo> tempo = TempoReader.read(top);
        begun.ifPresent(found -> bouncesAlongAPath(found, tempo));
        Aim aim = AimReader.read(top);
        Unsure unsure = UnsureReader.ofExercise(top);
        return top.built(() -> checked(new ExerciseScenario(
                about,
                client.orElseThrow(),
                doing(begun.orElseThrow(), client.orElseThrow(), resists.orElseThrow()),
                tempo.orElseThrow(),
                aim,
                unsure)));
    }

    // its speeds are those of travel: taken as a joint's they would be wrong by the limb's length
    private void bouncesAlongAPath(Begun begun, Optional<Tempo> tempo) {
        if (tempo.filter(Bounce.class::isInstance).isPresent()
                && begun.movement().motion().driver().isPresent()) {
            top.report(
                    Code.CONTRADICTION,
                    "tempo",
                    "a bounce is timed by its speed of travel, but a joint's angle drives this exercise",
                    "Say \"full stop\" or \"flowing\" with the seconds of each stroke");
        }
    }

    private void onlyOnASled(String key) {
        if (top.has(key)) {
            top.report(
                    Code.CONTRADICTION,
                    key,
                    "only a rail press has a " + key
                            + " here: this exercise says under \"resists\" what weighs and pulls",
                    "Leave this part, or the file that holds it, out");
        }
    }

    private Optional<Begun> begun(Fields fields) {
        Sides sides = SidesReader.read(fields);
        double borne = fields.orElse("borne", BORNE, 1);
        Optional<Movement> movement = kind.read(fields);
        Optional<WorkingRange> range = movement.flatMap(found -> kind.range(fields, found));
        return fields.built(() -> new Begun(fields, sides, borne, movement.orElseThrow(), range));
    }

    private List<Resisting> resists(Begun begun, Optional<Client> client) {
        MovingBody body = MovingBody.of(begun.movement().motion(), client, begun.sides());
        List<Resisting> resists = new ArrayList<>();
        int items = 0;
        for (Fields item : top.optionalGroups("resists", ResistKinds.shape(), UP_TO_A_HUNDRED)) {
            boolean allRead = resists.size() == items++;
            Setting setting = new Setting(body, allRead ? Optional.of(resists) : Optional.empty());
            Optional<Resisting> read = ResistKinds.read(item, setting);
            read.ifPresent(found -> notTwice(item, found, resists));
            read.ifPresent(resists::add);
        }
        return resists;
    }

    private static void notTwice(Fields item, Resisting found, List<Resisting> before) {
        if (found.chosen().isPresent()
                && before.stream().anyMatch(other -> other.chosen().isPresent())) {
            item.reportHere(
                    Code.CONTRADICTION,
                    "another thing that resists has a chosen weight",
                    "Say \"chosen\" once: give the others a mass that is always there");
        }
        String name = found.resistance().words();
        if (before.stream().anyMatch(other -> other.resistance().words().equals(name))) {
            item.reportHere(
                    Code.DUPLICATE_NAME,
                    "another thing that resists has the name \"" + name + "\"",
                    "Give each its own name");
        }
    }

    private Doing doing(Begun begun, Client client, List<Resisting> resists) {
        Movement movement = kind.fitted(begun.movement(), client, begun.sides());
        Doing.Stroke stroke = new Doing.Stroke(movement.lift(), begun.range());
        return new Doing(begun.sides(), movement.motion(), stroke, resists, begun.borne());
    }

    private static ExerciseScenario checked(ExerciseScenario scenario) {
        // what the engine would refuse is refused now
        scenario.task();
        return scenario;
    }
}
