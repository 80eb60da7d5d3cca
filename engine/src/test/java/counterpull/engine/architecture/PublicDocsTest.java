package counterpull.engine.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/** Every public type of the engine is described in more than its name, and every component of a public record. */
class PublicDocsTest {
    private static final Path SOURCES =
            Path.of(System.getProperty("basedir", "")).toAbsolutePath().resolve("src/main/java");

    @Test
    void everyPublicTypeIsDescribed() throws IOException {
        try (Stream<Path> walk = Files.walk(SOURCES);
                StandardJavaFileManager files =
                        ToolProvider.getSystemJavaCompiler().getStandardFileManager(null, null, null)) {
            List<Path> sources = walk.filter(path -> path.toString().endsWith(".java"))
                    .sorted()
                    .toList();
            assertThat(sources).as("sources looked at").hasSizeGreaterThan(50);
            assertThat(PublicDocs.missing(files.getJavaFileObjectsFromPaths(sources)))
                    .isEmpty();
        }
    }

    /** The control: each fault is found, and what is not public or well described is left alone. */
    @Test
    void gapsAreFound() throws IOException {
        String source = """
                /** The rail angle. */
                public record RailAngle(double angle) {
                    /**
                     * A pull toward the top.
                     *
                     * @param force N
                     */
                    public record Pull(double force, double arm) {
                        private static final double USUAL = 1;
                    }
                    /** What is on it, in kg. */
                    public interface Load {
                        record Bare() {}
                    }
                    public enum Side { LEFT }
                    record Hidden(double a) {}
                }
                """;
        assertThat(PublicDocs.missing(List.of(inMemory(source))))
                .containsExactly(
                        "RailAngle has Javadoc that only repeats its name",
                        "RailAngle says nothing of angle",
                        "Pull says nothing of arm",
                        "Bare has no Javadoc",
                        "Side has no Javadoc");
    }

    private static JavaFileObject inMemory(String source) {
        return new SimpleJavaFileObject(URI.create("string:///RailAngle.java"), JavaFileObject.Kind.SOURCE) {
            @Override
            public CharSequence getCharContent(boolean ignoreEncodingErrors) {
                return source;
            }
        };
    }
}
