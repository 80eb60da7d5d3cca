package counterpull.engine.crosscheck.stated;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;

/** A reference file of cases: remarks that start with #, then cases parted by an empty line. */
public final class StatedFile {
    private StatedFile() {}

    /** Reads the cases of a file of the second derivation by its name. */
    public static List<StatedCase> read(String name) {
        try (InputStream in = StatedFile.class.getResourceAsStream("/reference/second-derivation/" + name)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return Stream.of(text.split("\n\n"))
                    .map(StatedFile::lines)
                    .filter(lines -> !lines.isEmpty())
                    .map(StatedCase::read)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> lines(String block) {
        return block.lines().filter(line -> !line.startsWith("#")).toList();
    }
}
