package counterpull.engine.strength;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Reads a tab-separated reference file: lines after the "#" provenance and the one line of column names. */
final class ReferenceFile {
    private ReferenceFile() {}

    static List<String[]> rows(String name) throws IOException {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                ReferenceFile.class.getResourceAsStream("/reference/" + name), StandardCharsets.UTF_8))) {
            return reader.lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(line -> line.split("\t", -1))
                    .toList();
        }
    }
}
