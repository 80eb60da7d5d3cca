package counterpull.scenario.read;

import static counterpull.scenario.format.Measures.ANGLE;
import static counterpull.scenario.format.Measures.AT_LEAST_ONE;
import static counterpull.scenario.format.Measures.HEEL;
import static counterpull.scenario.format.Measures.HIP_TO_PLATE;
import static counterpull.scenario.format.Measures.PLACE;
import static counterpull.scenario.format.Measures.RAIL_ANGLE;
import static counterpull.scenario.format.Measures.TILT;
import static counterpull.scenario.format.Measures.UP_TO_A_HUNDRED;

import counterpull.engine.load.Carriage;
import counterpull.engine.load.Loaded;
import counterpull.engine.load.StackLine;
import counterpull.engine.motion.FootRow;
import counterpull.engine.motion.Rail;
import counterpull.engine.motion.Ride;
import counterpull.engine.motion.SeatSetting;
import counterpull.scenario.content.Machine;
import counterpull.scenario.content.Machine.Places;
import counterpull.scenario.content.Machine.PlatesGoOn;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.format.Measures;
import counterpull.scenario.format.Shapes;
import counterpull.scenario.format.Words;
import counterpull.scenario.resist.Carriages;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the machine. */
final class MachineReader {
    private MachineReader() {}

    static Optional<Machine> read(Fields top) {
        return top.group("machine", Shapes.MACHINE).flatMap(MachineReader::machine);
    }

    private static Optional<Machine> machine(Fields fields) {
        String name = fields.text("name");
        Optional<Rail> rail = rail(fields);
        Optional<Carriage> carriage = Carriages.read(fields);
        Optional<StackLine> stack = fields.optionalGroup("stack", Shapes.STACK).flatMap(MachineReader::stack);
        Places places = places(fields);
        PlatesGoOn platesGoOn = fields.choice("plates go on", Words.PLATES_GO_ON);
        return fields.built(
                () -> new Machine(name, rail.orElseThrow(), carriage.orElseThrow(), stack, places, platesGoOn));
    }

    private static Optional<Rail> rail(Fields fields) {
        double angle = fields.required("rail angle", RAIL_ANGLE);
        Ride ride = fields.choice("rides", Words.RIDE);
        double tilt = fields.orElse("plate tilt", TILT, 0);
        int tape = fields.choice("tape", Words.TAPE);
        return fields.built(() -> new Rail(angle, ride, tilt, tape));
    }

    private static Optional<StackLine> stack(Fields fields) {
        double ratio = fields.required("ratio", Measures.PULLEY_RATIO);
        double friction = fields.required("friction", Measures.LOSS);
        double mass = fields.orElse("mass", Measures.LOAD, 0);
        double moving = fields.orElse("moving mass", Measures.MOVING_MASS, 0);
        Loaded.Plates plates = fields.choice("plates", Words.STACKED);
        return fields.built(() -> new StackLine(ratio, friction, new Loaded(mass, plates), moving));
    }

    private static Places places(Fields fields) {
        List<SeatSetting> seats = new ArrayList<>();
        UniqueNames seatNames = new UniqueNames("seat");
        for (Fields seat : fields.groups("seats", Shapes.SEAT, AT_LEAST_ONE)) {
            seatNames.check(seat, "name");
            seats.add(seat(seat));
        }
        List<FootRow> rows = new ArrayList<>();
        UniqueNames rowNames = new UniqueNames("foot row");
        for (Fields row : fields.groups("foot rows", Shapes.FOOT_ROW, AT_LEAST_ONE)) {
            rowNames.check(row, "name");
            rows.add(new FootRow(row.text("name"), row.required("heel", HEEL)));
        }
        List<Double> stops = fields.optionalQuantities("stops", PLACE, UP_TO_A_HUNDRED);
        return new Places(seats, rows, stops, fields.optionalQuantities("racking", PLACE, UP_TO_A_HUNDRED));
    }

    private static SeatSetting seat(Fields fields) {
        String name = fields.text("name");
        double mark = fields.required("mark", PLACE);
        double hipToPlate = fields.required("hip to plate", HIP_TO_PLATE);
        double across = fields.orElse("hip across", PLACE, 0);
        return new SeatSetting(name, mark, hipToPlate, across, fields.required("trunk direction", ANGLE));
    }
}
