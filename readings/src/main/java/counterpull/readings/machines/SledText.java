package counterpull.readings.machines;

import counterpull.bench.Estimate;
import counterpull.bench.sled.Riding.PlateEnd;
import counterpull.bench.sled.SledFound;
import counterpull.bench.sled.SledFriction;
import counterpull.engine.load.Counterweight;
import counterpull.scenario.format.Out;
import counterpull.scenario.format.Words;
import counterpull.scenario.units.Dimension;
import counterpull.scenario.units.Unit;
import java.util.ArrayList;
import java.util.List;

/** A measured sled as keys of a scenario's machine, with its standard uncertainties. */
final class SledText {
    private SledText() {}

    static String of(SledFound found) {
        List<String> lines = new ArrayList<>();
        lines.add("# " + found.bench().name() + ": in place of these keys of the machine");
        lines.add("machine:");
        lines.add("  rail angle: " + angle(found));
        lines.add("  carriage: " + Sure.value(found.mass(), Unit.KILOGRAM));
        Counterweight counter = found.bench().riding().counterweight();
        if (counter.mass() > 0) {
            lines.add("  counterweight: {mass: " + Out.quantity(counter.mass(), Dimension.MASS) + ", runs: "
                    + Words.RUN.word(counter.run()) + "}");
        }
        String breakaway = found.breakaway()
                .filter(first -> first.value() >= 0)
                .map(first -> ", breakaway: " + Sure.value(first, Unit.NEWTON))
                .orElse("");
        if (found.friction() instanceof SledFriction.Apart apart) {
            apart(lines, found, apart, breakaway);
        } else if (found.friction() instanceof SledFriction.Together together) {
            lines.add("  # read with " + Out.quantity(together.plates(), Dimension.MASS)
                    + " of plates alone: with more it is more");
            lines.add("  friction: {constant: " + Sure.value(together.force(), Unit.NEWTON) + ", coefficient: 0"
                    + breakaway + "}");
            unsure(lines, found, "{constant: " + Sure.unsure(together.force(), Unit.NEWTON) + "}");
        }
        return String.join("\n", lines) + "\n";
    }

    private static void apart(List<String> lines, SledFound found, SledFriction.Apart apart, String breakaway) {
        Estimate constant = apart.constant();
        Estimate coefficient = apart.coefficient();
        lines.add("  friction: {constant: " + Sure.value(constant, Unit.NEWTON) + ", coefficient: "
                + Sure.value(coefficient, Unit.ONE) + breakaway + "}");
        unsure(
                lines,
                found,
                "{constant: " + Sure.unsure(constant, Unit.NEWTON) + ", coefficient: "
                        + Sure.unsure(coefficient, Unit.ONE) + "}");
    }

    private static String angle(SledFound found) {
        String steep = Sure.value(found.angle(), Unit.DEGREE);
        return found.bench().riding().plateEnd() == PlateEnd.LOWER ? "-" + steep : steep;
    }

    private static void unsure(List<String> lines, SledFound found, String friction) {
        lines.add("uncertainty:");
        lines.add("  rail angle: " + Sure.unsure(found.angle(), Unit.DEGREE));
        lines.add("  carriage: " + Sure.unsure(found.mass(), Unit.KILOGRAM));
        lines.add("  friction: " + friction);
    }
}
