package counterpull.scenario.resist;

import counterpull.engine.load.StackLine;
import counterpull.scenario.content.Resisting;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.format.Measures;
import counterpull.scenario.format.Out;
import counterpull.scenario.units.Dimension;
import java.util.Optional;

/** Reads and writes the line of a weight stack: ratio, friction, mass, chosen, moving mass. */
final class StackLines {
    private StackLines() {}

    /**
     * A line and what is chosen on its stack.
     *
     * @param line as the engine takes it; empty after a problem
     * @param chosen kg
     */
    record Read(Optional<StackLine> line, Optional<Double> chosen) {}

    static Read read(Fields fields) {
        double ratio = fields.required("ratio", Measures.PULLEY_RATIO);
        double friction = fields.required("friction", Measures.LOSS);
        Weight weight = Weight.read(fields);
        double moving = fields.orElse("moving mass", Measures.MOVING_MASS, 0);
        return new Read(fields.built(() -> new StackLine(ratio, friction, weight.loaded(), moving)), weight.chosen());
    }

    static Out write(Out out, StackLine line, Resisting resisting) {
        out.put("ratio", line.ratio(), Dimension.RATIO).put("friction", line.friction(), Dimension.RATIO);
        return Weight.write(out, line.stack(), resisting).put("moving mass", line.moving(), Dimension.MASS);
    }
}
