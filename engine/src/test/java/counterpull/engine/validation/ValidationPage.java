package counterpull.engine.validation;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Writes docs/validation.md from what the tests of all modules left in their target/validation. Argument: the root
 * folder of the repository. The text has no date, path or machine in it, so two runs give the same bytes.
 */
public final class ValidationPage {
    private static final String INTRO = """
            # Checked against the outside

            Written by the tests (`./check`); do not edit. Each row is a number that this program computes beside the
            same number published elsewhere: the source is named with how it was got ("looked up", "from memory", or
            "computed" from the published equation), and the tolerance with its reason. The test run fails when a
            difference exceeds its tolerance, so a row here is a row that passed. A wide tolerance marks a comparison
            between different people or methods: it says that we are in the same region, not that we are right. Ours
            is printed to six digits, the difference (ours − published) to two; "< 1e-9" is below one part in a
            thousand million, of the unit or of the value.
            """;

    private ValidationPage() {}

    public static void main(String[] arguments) throws IOException {
        if (arguments.length != 1) {
            throw new IllegalArgumentException("one argument: the root folder of the repository");
        }
        write(Path.of(arguments[0]));
    }

    static void write(Path root) throws IOException {
        Map<String, List<Row>> sections = gather(root);
        if (sections.isEmpty()) {
            throw new IllegalStateException("no */target/validation/*.tsv found: run the tests first");
        }
        Path docs = Files.createDirectories(root.resolve("docs"));
        Files.writeString(docs.resolve("validation.md"), page(sections));
    }

    private static Map<String, List<Row>> gather(Path root) throws IOException {
        List<Row> rows = new ArrayList<>();
        try (DirectoryStream<Path> modules = Files.newDirectoryStream(root, Files::isDirectory)) {
            for (Path module : modules) {
                addRows(module.resolve("target").resolve("validation"), rows);
            }
        }
        rows.sort((a, b) -> NaturalOrder.INSTANCE.compare(a.key(), b.key()));
        Map<String, List<Row>> sections = new TreeMap<>(NaturalOrder.INSTANCE);
        rows.forEach(row -> sections.computeIfAbsent(row.section(), name -> new ArrayList<>())
                .add(row));
        return sections;
    }

    private static void addRows(Path folder, List<Row> rows) throws IOException {
        if (!Files.isDirectory(folder)) {
            return;
        }
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "*.tsv")) {
            for (Path file : files) {
                Files.readAllLines(file).forEach(line -> rows.add(Row.parse(line)));
            }
        }
    }

    private static String page(Map<String, List<Row>> sections) {
        int count = sections.values().stream().mapToInt(List::size).sum();
        StringBuilder text = new StringBuilder(INTRO);
        text.append("\n").append(count).append(" values in ").append(sections.size());
        text.append(sections.size() == 1 ? " section.\n" : " sections.\n");
        sections.forEach((heading, rows) -> appendTable(text, heading, rows));
        return text.toString();
    }

    private static void appendTable(StringBuilder text, String heading, List<Row> rows) {
        text.append("\n## ").append(heading).append("\n\n");
        text.append("| quantity | unit | published | ours | difference | tolerance | why this tolerance | source |\n");
        text.append("| --- | --- | ---: | ---: | ---: | ---: | --- | --- |\n");
        for (Row row : rows) {
            String cells = String.join(
                    "\t",
                    row.quantity(),
                    row.unit(),
                    row.published(),
                    row.ours(),
                    row.difference(),
                    row.tolerance(),
                    row.reason(),
                    row.source());
            text.append("| ")
                    .append(cells.replace("|", "\\|").replace("\t", " | "))
                    .append(" |\n");
        }
    }
}
