package counterpull.engine.validation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Keeps the rows of each test class and rewrites that class's file as they come; rows are sorted, so runs agree. */
final class ValidationLog {
    private static final Map<String, TreeMap<String, Row>> ROWS = new HashMap<>();

    private ValidationLog() {}

    static synchronized void add(Row row) {
        String test = callingTest();
        TreeMap<String, Row> rows = ROWS.computeIfAbsent(test, name -> new TreeMap<>(NaturalOrder.INSTANCE));
        Row earlier = rows.putIfAbsent(row.key(), row);
        if (earlier != null && !earlier.equals(row)) {
            throw new IllegalStateException(
                    test + " gives two different values under one name, name them apart: " + row.quantity());
        }
        write(test, rows.values().stream().map(Row::line).toList());
    }

    static Path file(String test) {
        return Path.of(System.getProperty("basedir", ""), "target", "validation", test + ".tsv");
    }

    private static void write(String test, List<String> lines) {
        try {
            Files.createDirectories(file(test).getParent());
            Files.write(file(test), lines);
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    /** The simple name of the test class on the stack. */
    static String callingTest() {
        return StackWalker.getInstance()
                .walk(frames -> frames.map(StackWalker.StackFrame::getClassName)
                        .map(ValidationLog::outermostSimpleName)
                        .filter(name -> name.endsWith("Test"))
                        .findFirst())
                .orElseThrow(() -> new IllegalStateException("a published value is checked outside a ...Test class"));
    }

    private static String outermostSimpleName(String className) {
        String simple = className.substring(className.lastIndexOf('.') + 1);
        int nested = simple.indexOf('$');
        return nested < 0 ? simple : simple.substring(0, nested);
    }

    /** "KneecapValidationTest" becomes "Kneecap", "Anderson2007Test" becomes "Anderson 2007". */
    static String headingOf(String test) {
        String bare = test.substring(0, test.length() - "Test".length());
        if (bare.endsWith("Validation") && bare.length() > "Validation".length()) {
            bare = bare.substring(0, bare.length() - "Validation".length());
        }
        String apart = bare.replaceAll("(?<=[a-z])(?=[A-Z0-9])|(?<=[0-9])(?=[A-Z])", " ");
        return apart.substring(0, 1) + apart.substring(1).toLowerCase(java.util.Locale.ROOT);
    }
}
