package counterpull.readings.table;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Groups and lists as YAML: what is small stands on one line, a reading a line. */
final class YamlBlock {
    private final StringBuilder out;

    private YamlBlock(StringBuilder out) {
        this.out = out;
    }

    /** Writes a file's groups. */
    static void write(StringBuilder out, Map<?, ?> file) {
        new YamlBlock(out).group(file, "", "");
    }

    /** Entries one below the other; the first after its own lead. */
    private void group(Map<?, ?> group, String lead, String indent) {
        String before = lead;
        for (Map.Entry<?, ?> entry : group.entrySet()) {
            out.append(before)
                    .append(YamlText.value(String.valueOf(entry.getKey())))
                    .append(':');
            value(entry.getValue(), indent + "  ");
            before = indent;
        }
    }

    private void value(Object value, String indent) {
        if (isSmall(value)) {
            out.append(' ').append(line(value)).append('\n');
        } else if (value instanceof Map<?, ?> group) {
            out.append('\n');
            group(group, indent, indent);
        } else if (value instanceof List<?> list) {
            out.append('\n');
            list.forEach(item -> item(item, indent));
        }
    }

    private void item(Object item, String indent) {
        if (item instanceof Map<?, ?> group && !isSmall(item)) {
            group(group, indent + "- ", indent + "  ");
        } else {
            out.append(indent).append("- ").append(line(item)).append('\n');
        }
    }

    /** A text, a group of small things or a list of texts. */
    private static boolean isSmall(Object value) {
        if (value instanceof Map<?, ?> group) {
            return group.values().stream().allMatch(YamlBlock::isSmall);
        }
        return !(value instanceof List<?> list) || list.stream().allMatch(String.class::isInstance);
    }

    private static String line(Object value) {
        if (value instanceof Map<?, ?> group) {
            return group.entrySet().stream()
                    .map(entry -> YamlText.value(String.valueOf(entry.getKey())) + ": " + line(entry.getValue()))
                    .collect(Collectors.joining(", ", "{ ", " }"));
        }
        if (value instanceof List<?> list) {
            return list.stream().map(YamlBlock::line).collect(Collectors.joining(", ", "[", "]"));
        }
        return YamlText.value(String.valueOf(value));
    }
}
