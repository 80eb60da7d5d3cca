package counterpull.scenario.read;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;

/** Every way of changing one place of a JSON tree: taken away, renamed, or replaced by something of another form. */
final class SingleChanges {
    private static final JsonNodeFactory MAKE = JsonNodeFactory.instance;
    private static final List<JsonNode> REPLACEMENTS = List.of(
            MAKE.textNode("gull"),
            MAKE.textNode("45"),
            MAKE.textNode("45 furlongs"),
            MAKE.textNode("2 s"),
            MAKE.numberNode(7),
            MAKE.nullNode(),
            MAKE.arrayNode(),
            MAKE.objectNode());

    private final ObjectNode whole;
    private final List<JsonNode> found = new ArrayList<>();

    private SingleChanges(ObjectNode whole) {
        this.whole = whole;
    }

    static List<JsonNode> of(ObjectNode whole) {
        SingleChanges changes = new SingleChanges(whole);
        changes.under(whole, "");
        return changes.found;
    }

    private void under(JsonNode node, String pointer) {
        if (node.isObject()) {
            node.properties().forEach(entry -> entry(entry.getKey(), entry.getValue(), pointer));
        }
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            replaced(pointer, i);
            under(node.get(i), pointer + "/" + i);
        }
    }

    private void entry(String key, JsonNode value, String pointer) {
        ObjectNode without = whole.deepCopy();
        ((ObjectNode) without.at(pointer)).remove(key);
        found.add(without);
        ObjectNode renamed = whole.deepCopy();
        ObjectNode group = (ObjectNode) renamed.at(pointer);
        group.set(key + "s of old", group.remove(key));
        found.add(renamed);
        for (JsonNode other : REPLACEMENTS) {
            ObjectNode replaced = whole.deepCopy();
            ((ObjectNode) replaced.at(pointer)).set(key, other);
            found.add(replaced);
        }
        under(value, pointer + "/" + key.replace("~", "~0").replace("/", "~1"));
    }

    private void replaced(String pointer, int index) {
        for (JsonNode other : REPLACEMENTS) {
            ObjectNode replaced = whole.deepCopy();
            ((ArrayNode) replaced.at(pointer)).set(index, other);
            found.add(replaced);
        }
    }

    /** Where two trees differ, for a failing test's message. */
    static String difference(JsonNode one, JsonNode other) {
        String a = one.toString();
        String b = other.toString();
        int at = 0;
        while (at < Math.min(a.length(), b.length()) && a.charAt(at) == b.charAt(at)) {
            at++;
        }
        return "…" + b.substring(Math.max(0, at - 80), Math.min(b.length(), at + 60)) + "…";
    }
}
