package counterpull.readings.table;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.StringJoiner;
import java.util.regex.Pattern;

/** Writes single values and groups on one line as YAML that reads back as the same text. */
final class YamlText {
    private static final Pattern PLAIN =
            Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N} ._·/%°²+-]*|-\\p{N}[\\p{L}\\p{N} ._·/%°²+-]*");
    private static final Set<String> MEANS_SOMETHING =
            Set.of("true", "false", "null", "yes", "no", "on", "off", "y", "n", "~");

    private YamlText() {}

    /** A single value. */
    static String value(String text) {
        boolean plain = PLAIN.matcher(text).matches()
                && text.equals(text.strip())
                && !MEANS_SOMETHING.contains(text.toLowerCase(Locale.ROOT));
        return plain ? text : quoted(text);
    }

    private static String quoted(String text) {
        StringBuilder out = new StringBuilder("\"");
        text.codePoints().forEach(point -> {
            if (point == '"' || point == '\\') {
                out.append('\\').appendCodePoint(point);
            } else if (point < ' ' || point == 0x7F || point == 0x85 || point == 0x2028 || point == 0x2029) {
                out.append(String.format("\\u%04x", point));
            } else {
                out.appendCodePoint(point);
            }
        });
        return out.append('"').toString();
    }

    /** A group on one line: {@code { length: 45 cm, force: 2.1 kgf }}. */
    static String group(Map<String, String> values) {
        StringJoiner out = new StringJoiner(", ", "{ ", " }");
        values.forEach((key, value) -> out.add(value(key) + ": " + value(value)));
        return out.toString();
    }

    /** Text as a comment, one line each. */
    static void comment(StringBuilder out, List<String> lines) {
        for (String line : lines) {
            String plain = line.codePoints()
                    .map(point -> point < ' ' || point == 0x7F || point == 0x85 || point == 0x2028 || point == 0x2029
                            ? ' '
                            : point)
                    .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                    .toString();
            out.append("# ").append(plain).append('\n');
        }
    }
}
