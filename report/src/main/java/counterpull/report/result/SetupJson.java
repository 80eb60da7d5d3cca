package counterpull.report.result;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import counterpull.engine.choice.Breach;
import counterpull.engine.choice.Verdict;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.motion.Stance;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.Turnaround;
import counterpull.report.PlateStack;
import counterpull.report.Setup;

/** A setup, its turn and its verdict for machines; the unit of every number is in its key. */
final class SetupJson {
    private SetupJson() {}

    static void write(ObjectNode node, Setup setup) {
        PressProfile profile = setup.profile();
        Stance stance = profile.task().stance();
        node.put("seat", stance.seat().name());
        node.put("foot_row", stance.row().name());
        node.put("pressure_point_fraction", stance.pressurePoint());
        node.put("bottom_mark_m", profile.mark(0));
        node.put("top_mark_m", profile.mark(profile.positions() - 1));
        node.put("push", profile.task().pushing().push().words());
        node.put("tempo", profile.task().tempo().words());
        node.put("plates_kg", setup.plates().total());
        plates(node.putArray("plates"), setup);
        ArrayNode lines = node.putArray("lines");
        profile.loading().lines().forEach(line -> line(lines.addObject(), line));
        turn(node.putObject("turn"), profile.turnaround());
        node.put("stays_down_by_itself", setup.order().staysDown());
        node.put("stop_catches_before_pain", setup.order().catchesBeforePain());
    }

    private static void plates(ArrayNode plates, Setup setup) {
        for (PlateStack stack : setup.plates().stacks()) {
            plates.addObject()
                    .put("where", stack.horn().words())
                    .put("plate", stack.plate())
                    .put("mass_of_one_kg", stack.mass())
                    .put("count_there", stack.count());
        }
    }

    static void line(ObjectNode node, ElasticLine line) {
        node.put("rubber", line.rubber().tag());
        node.put("pieces", line.pieces().count());
        node.put("hang", line.pieces().hang().words());
        node.put("placement", line.pieces().placement().words());
        node.put("anchor", line.ends().anchor().name());
        node.put("attachment", line.ends().attachment().name());
        node.put("dead_length_m", line.deadLength());
        node.put("strands", line.strands());
    }

    private static void turn(ObjectNode node, Turnaround turn) {
        number(node, "inertial_force_N", turn.inertialForce());
        number(node, "total_N", turn.total());
        number(node, "moving_over_held", turn.movingOverHeld());
    }

    static void verdict(ObjectNode node, Verdict verdict) {
        number(node, "shortfall", verdict.shortfall());
        number(
                node,
                "peak_effort",
                verdict.peak().map(p -> p.limiting().effort()).orElse(Double.NaN));
        node.put(
                "peak_action",
                verdict.peak().map(p -> p.limiting().action().words()).orElse(null));
        node.put(
                "peak_side",
                verdict.peak().map(p -> p.limiting().side().words()).orElse(null));
        node.put("unknown_cells", verdict.unknown());
        node.put("keeps_every_limit", verdict.feasible());
        ArrayNode limits = node.putArray("limits");
        for (Breach breach : verdict.nearest()) {
            ObjectNode one = limits.addObject()
                    .put("limit", breach.kind().words())
                    .put("unit", breach.kind().unit());
            number(one, "value_there", breach.value());
            number(one, "allowed", breach.limit());
            one.put("passed", breach.passed());
        }
    }

    /** A number, or null where it is not known. */
    static void number(ObjectNode node, String key, double value) {
        if (Math.abs(value) <= Double.MAX_VALUE) {
            node.put(key, value);
        } else {
            node.putNull(key);
        }
    }
}
