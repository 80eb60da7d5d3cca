package counterpull.bench.fit;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A certified regression set: lines that start with # say where it is from and what is certified, then rows. */
final class CertifiedFile {
    final String name;
    private final List<String> lines;
    private final List<double[]> rows = new ArrayList<>();

    private CertifiedFile(String name, List<String> lines) {
        this.name = name;
        this.lines = lines;
        for (String line : lines) {
            if (!line.startsWith("#") && !line.isBlank()) {
                rows.add(numbers(line));
            }
        }
    }

    static CertifiedFile read(String name) {
        try (InputStream in = CertifiedFile.class.getResourceAsStream("/reference/strd/" + name + ".dat")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return new CertifiedFile(name, text.lines().toList());
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    /** The numbers of a header line. */
    double[] header(String key) {
        String start = "# " + key + ": ";
        return numbers(lines.stream()
                .filter(line -> line.startsWith(start))
                .findFirst()
                .orElseThrow()
                .substring(start.length()));
    }

    /** A column of the rows. */
    double[] column(int column) {
        return rows.stream().mapToDouble(row -> row[column]).toArray();
    }

    private static double[] numbers(String line) {
        return Arrays.stream(line.strip().split("\\s+"))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }
}
