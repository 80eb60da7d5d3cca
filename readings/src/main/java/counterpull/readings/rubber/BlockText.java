package counterpull.readings.rubber;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Iterator;
import java.util.Map;
import java.util.StringJoiner;
import java.util.regex.Pattern;

/** One group as an item of a YAML list: a key a line, lists of groups below it, small groups on one line. */
final class BlockText {
    private static final Pattern PLAIN = Pattern.compile("-?[\\p{L}\\p{N}][\\p{L}\\p{N} ._/%²-]*");
    private static final Pattern NO_WORD = Pattern.compile("(?i)true|false|null|yes|no|on|off|y|n|[0-9.]+");

    private BlockText() {}

    /** Without the keys that say nothing was measured. */
    static String item(ObjectNode node) {
        StringBuilder out = new StringBuilder();
        Iterator<Map.Entry<String, JsonNode>> fields = node.properties().iterator();
        while (fields.hasNext()) {
            Map.Entry<String, JsonNode> field = fields.next();
            boolean nothing = field.getKey().equals("mass") || field.getKey().equals("hardware");
            if (!nothing) {
                out.append(out.isEmpty() ? "- " : "  ").append(field.getKey()).append(':');
                value(out, field.getValue(), "    ");
            }
        }
        return out.toString();
    }

    private static void value(StringBuilder out, JsonNode node, String indent) {
        if (node.isArray()) {
            out.append('\n');
            node.forEach(
                    item -> out.append(indent).append("- ").append(inline(item)).append('\n'));
        } else if (node.isObject() && node.elements().next().isArray()) {
            Map.Entry<String, JsonNode> only = node.properties().iterator().next();
            out.append('\n').append(indent).append(only.getKey()).append(':');
            value(out, only.getValue(), indent + "  ");
        } else {
            out.append(' ').append(inline(node)).append('\n');
        }
    }

    private static String inline(JsonNode node) {
        if (!node.isObject()) {
            return node.isTextual() ? value(node.asText()) : node.asText();
        }
        StringJoiner group = new StringJoiner(", ", "{ ", " }");
        node.properties().forEach(field -> group.add(field.getKey() + ": " + inline(field.getValue())));
        return group.toString();
    }

    static String value(String text) {
        boolean plain = PLAIN.matcher(text).matches() && !NO_WORD.matcher(text).matches();
        return plain ? text : "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }
}
