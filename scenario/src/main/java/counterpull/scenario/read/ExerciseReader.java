package counterpull.scenario.read;

import static counterpull.scenario.format.Measures.FURTHER_STOPS;
import static counterpull.scenario.format.Measures.HIP_SHIFT;
import static counterpull.scenario.format.Measures.PRESSURE_POINT;
import static counterpull.scenario.format.Measures.UP_TO_A_HUNDRED;

import counterpull.engine.motion.FootRow;
import counterpull.engine.motion.SeatSetting;
import counterpull.engine.motion.Stance;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.Pushing;
import counterpull.scenario.content.Client;
import counterpull.scenario.content.Exercise;
import counterpull.scenario.content.Exercise.Trying;
import counterpull.scenario.content.Machine;
import counterpull.scenario.content.Sides;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Named;
import counterpull.scenario.format.Shapes;
import counterpull.scenario.movement.MovementKinds;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads what the person does on the machine. */
final class ExerciseReader {
    private static final double HALF = 0.5;

    private final Named<SeatSetting> seats;
    private final Named<FootRow> rows;
    private final Optional<Client> client;

    ExerciseReader(Optional<Machine> machine, Optional<Client> client) {
        seats = new Named<>(
                "seat of the machine", machine.map(found -> found.places().seats()), SeatSetting::name);
        rows = new Named<>(
                "foot row of the machine", machine.map(found -> found.places().rows()), FootRow::name);
        this.client = client;
    }

    Optional<Exercise> read(Fields top) {
        return top.group("exercise", Shapes.EXERCISE).flatMap(this::exercise);
    }

    private Optional<Exercise> exercise(Fields fields) {
        fields.choice("kind", MovementKinds.words());
        Sides sides = SidesReader.read(fields);
        SidesReader.present(fields, sides.using(), client);
        Optional<Stance> stance = stance(fields);
        Optional<Pushing> pushing = fields.has("push")
                ? fields.group("push", Shapes.PUSH).flatMap(PushReader::read)
                : Optional.of(Pushing.straight());
        List<SeatSetting> moreSeats = fields.optionalNamed("seats to try", seats, UP_TO_A_HUNDRED);
        List<FootRow> moreRows = fields.optionalNamed("foot rows to try", rows, UP_TO_A_HUNDRED);
        int stops = fields.optionalCount("further stops to try", FURTHER_STOPS).orElse(0);
        return fields.built(() -> {
            Stance now = stance.orElseThrow();
            Trying trying = new Trying(with(now.seat(), moreSeats), with(now.row(), moreRows), stops);
            return new Exercise(sides.using(), sides.leftShare(), now, pushing.orElseThrow(), trying);
        });
    }

    private Optional<Stance> stance(Fields fields) {
        Optional<SeatSetting> seat = fields.named("seat", seats);
        Optional<FootRow> row = fields.named("foot row", rows);
        double pressurePoint = fields.orElse("pressure point", PRESSURE_POINT, HALF);
        Vec shift = fields.optionalGroup("hip shift", Shapes.HIP_SHIFT)
                .map(found -> new Vec(found.orElse("along", HIP_SHIFT, 0), found.orElse("across", HIP_SHIFT, 0)))
                .orElse(new Vec(0, 0));
        return fields.built(() -> new Stance(seat.orElseThrow(), row.orElseThrow(), pressurePoint, shift));
    }

    private static <T> List<T> with(T inUse, List<T> more) {
        List<T> all = new ArrayList<>(more);
        if (!all.contains(inUse)) {
            all.add(0, inUse);
        }
        return all.stream().distinct().toList();
    }
}
