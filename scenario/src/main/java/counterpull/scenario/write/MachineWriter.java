package counterpull.scenario.write;

import counterpull.engine.load.StackLine;
import counterpull.engine.motion.FootRow;
import counterpull.engine.motion.SeatSetting;
import counterpull.scenario.content.Machine;
import counterpull.scenario.format.Out;
import counterpull.scenario.format.Words;
import counterpull.scenario.resist.Carriages;
import counterpull.scenario.units.Dimension;

/** Writes the machine. */
final class MachineWriter {
    private MachineWriter() {}

    static Out machine(Machine machine) {
        Out out = new Out()
                .put("name", machine.name())
                .put("rail angle", machine.rail().angle(), Dimension.ANGLE)
                .put("rides", Words.RIDE.word(machine.rail().ride()))
                .put("plate tilt", machine.rail().plateTilt(), Dimension.ANGLE)
                .put("tape", Words.TAPE.word(machine.rail().tapeSense()))
                .putGroups("seats", machine.places().seats(), MachineWriter::seat)
                .putGroups("foot rows", machine.places().rows(), MachineWriter::row)
                .putQuantities("stops", machine.places().stops(), Dimension.LENGTH)
                .putQuantities("racking", machine.places().racking(), Dimension.LENGTH);
        Carriages.write(out, machine.carriage());
        machine.stack().ifPresent(stack -> out.put("stack", stack(stack)));
        return out.put("plates go on", Words.PLATES_GO_ON.word(machine.platesGoOn()));
    }

    private static Out stack(StackLine line) {
        return new Out()
                .put("ratio", line.ratio(), Dimension.RATIO)
                .put("friction", line.friction(), Dimension.RATIO)
                .put("mass", line.stack().own(), Dimension.MASS)
                .put("moving mass", line.moving(), Dimension.MASS)
                .put("plates", Words.STACKED.word(line.stack().plates()));
    }

    private static Out seat(SeatSetting seat) {
        return new Out()
                .put("name", seat.name())
                .put("mark", seat.mark(), Dimension.LENGTH)
                .put("hip to plate", seat.hipToPlate(), Dimension.LENGTH)
                .put("hip across", seat.hipAcross(), Dimension.LENGTH)
                .put("trunk direction", seat.trunkDirection(), Dimension.ANGLE);
    }

    private static Out row(FootRow row) {
        return new Out().put("name", row.name()).put("heel", row.heel(), Dimension.LENGTH);
    }
}
