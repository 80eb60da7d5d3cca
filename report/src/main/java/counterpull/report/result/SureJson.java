package counterpull.report.result;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import counterpull.engine.Fault;
import counterpull.engine.uncertainty.Band;
import counterpull.engine.uncertainty.Chance;
import counterpull.engine.uncertainty.Contribution;
import counterpull.engine.uncertainty.Contributions;
import counterpull.engine.uncertainty.HowSure;
import counterpull.engine.uncertainty.NextReading;
import counterpull.report.table.UnitSet;
import counterpull.report.words.SureWords;

/** How sure an answer is, for a program: numbers in SI and shares, null where not known. */
public final class SureJson {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private SureJson() {}

    /** All of it, indented. */
    public static String of(HowSure sure) {
        ObjectNode root = MAPPER.createObjectNode();
        root.put("draws", sure.bands().draws()).put("set_up", sure.bands().setUp());
        ObjectNode refused = root.putObject("not_set_up");
        for (Fault fault : Fault.values()) {
            if (sure.bands().refused(fault) > 0) {
                refused.put(fault.code(), sure.bands().refused(fault));
            }
        }
        band(root.putObject("largest_effort"), sure.bands().peak());
        put(root, "ceiling", sure.bands().looked().ceiling());
        chance(root.putObject("chance_of_passing_the_ceiling"), sure.bands().ceilingPassed());
        chance(root.putObject("chance_of_losing_contact"), sure.bands().contactLost());
        sure.contributions().ifPresent(found -> contributions(root.putArray("contributions"), found));
        next(root.putArray("next_readings"), sure);
        ArrayNode notVaried = root.putArray("not_varied");
        sure.notVaried().forEach(notVaried::add);
        bands(root.putArray("bands"), sure);
        return root.toPrettyString() + "\n";
    }

    private static void contributions(ArrayNode array, Contributions found) {
        for (Contribution one : found.ranked()) {
            ObjectNode node = array.addObject().put("input", one.name());
            node.put("counted_in", one.spread().kind().name().toLowerCase(java.util.Locale.ROOT));
            put(node, "standard_uncertainty", one.spread().value());
            put(node, "low", one.low());
            put(node, "high", one.high());
            put(node, "share", one.share());
            node.put("source", one.source());
        }
    }

    private static void next(ArrayNode array, HowSure sure) {
        SureWords words = new SureWords(sure, UnitSet.METRIC);
        for (NextReading one : sure.next()) {
            ObjectNode node = array.addObject().put("reading", words.reading(one.what()));
            put(node, "before", one.before());
            put(node, "after", one.after());
        }
    }

    private static void bands(ArrayNode array, HowSure sure) {
        var table = SureTables.everything(sure);
        for (int row = 0; row < table.rows(); row++) {
            ObjectNode node = array.addObject();
            for (var column : table.columns()) {
                if (column instanceof counterpull.report.table.NumberColumn numbers) {
                    put(node, column.head().key(), numbers.value(row));
                } else {
                    node.put(column.head().key(), column.exact(row, UnitSet.SI));
                }
            }
        }
    }

    private static void band(ObjectNode node, Band band) {
        put(node, "low", band.low());
        put(node, "middle", band.middle());
        put(node, "high", band.high());
    }

    private static void chance(ObjectNode node, Chance chance) {
        put(node, "chance", chance.value());
        put(node, "standard_error", chance.error());
        node.put("times", chance.times()).put("of", chance.of());
    }

    private static void put(ObjectNode node, String key, double value) {
        if (Math.abs(value) <= Double.MAX_VALUE) {
            node.put(key, value);
        } else {
            node.putNull(key);
        }
    }
}
