package counterpull.engine.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The pages say what is there: links lead somewhere, commands exist, sources are listed, decisions are numbered through. */
class HouseDocsTest {
    private static final Path ROOT =
            Path.of(System.getProperty("basedir", "")).toAbsolutePath().getParent();

    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#]+)(#[^)]*)?\\)");
    private static final Pattern COMMAND = Pattern.compile("(?:^ {4}|`)\\./([\\w./-]+)", Pattern.MULTILINE);
    private static final Pattern FOLDER = Pattern.compile("^\\| `([\\w./-]+)/` \\|", Pattern.MULTILINE);
    private static final Pattern MODULE = Pattern.compile("<module>([^<]+)</module>");
    private static final Pattern MACHINE_PATH = Pattern.compile("(?:^|[\\s`\"'(])/[a-z]+/\\w", Pattern.MULTILINE);
    private static final Pattern ROW = Pattern.compile("^\\|.*\\| ([^|]+) \\|$", Pattern.MULTILINE);
    private static final Pattern KEY =
            Pattern.compile("^(?:de |van den )?\\p{Lu}[\\p{L}\\d-]*|PMC\\d+|10\\.\\d+/[\\w./-]+\\w");

    @Test
    void everyLinkLeadsToAFile() {
        assertThat(pages().flatMap(HouseDocsTest::deadLinks)).isEmpty();
    }

    @Test
    void everyCommandIsThere() {
        assertThat(found(pages().map(HouseDocsTest::read), COMMAND))
                .isNotEmpty()
                .allSatisfy(name -> assertThat(ROOT.resolve(name)).isExecutable());
    }

    @Test
    void theMapNamesEveryModuleAndNothingElse() {
        List<String> map = found(Stream.of(read(ROOT.resolve("README.md"))), FOLDER);
        assertThat(map).allSatisfy(name -> assertThat(ROOT.resolve(name)).isDirectory());
        assertThat(map).containsAll(found(Stream.of(read(ROOT.resolve("pom.xml"))), MODULE));
    }

    @Test
    void decisionsAreNumberedThrough() throws IOException {
        try (Stream<Path> files = Files.list(ROOT.resolve("docs/decisions"))) {
            List<String> names = files.map(file -> file.getFileName().toString().substring(0, 5))
                    .sorted()
                    .toList();
            List<String> numbers = IntStream.rangeClosed(1, names.size())
                    .mapToObj(number -> String.format("%04d-", number))
                    .toList();
            assertThat(names).isEqualTo(numbers);
        }
    }

    @Test
    void everySourceOfAPublishedValueIsListed() {
        String sources = read(ROOT.resolve("docs/sources.md"));
        List<String> keys = found(Stream.of(read(ROOT.resolve("docs/validation.md"))), ROW).stream()
                .flatMap(source -> KEY.matcher(source).results().map(MatchResult::group))
                .distinct()
                .toList();
        assertThat(keys)
                .isNotEmpty()
                .allSatisfy(key -> assertThat(sources)
                        .as("docs/sources.md must list what docs/validation.md cites")
                        .contains(key));
    }

    @Test
    void noPageNamesAPlaceOnOneMachine() {
        assertThat(found(pages().map(HouseDocsTest::read), MACHINE_PATH)).isEmpty();
    }

    /** The control: each pattern finds what it is for. */
    @Test
    void thePatternsFind() {
        assertThat(found(Stream.of("see [a](docs/none.md#x)"), LINK)).containsExactly("docs/none.md");
        assertThat(found(Stream.of("    ./none demo\nor `./other`"), COMMAND)).containsExactly("none", "other");
        assertThat(found(Stream.of("in /srv/x"), MACHINE_PATH)).hasSize(1);
        assertThat(found(Stream.of("| a | b | van den Bogert 1996; looked up |"), ROW))
                .hasSize(1);
        assertThat(found(Stream.of("| `engine/` | x |"), FOLDER)).containsExactly("engine");
    }

    private static Stream<Path> pages() {
        try (Stream<Path> root = Files.list(ROOT);
                Stream<Path> docs = Files.walk(ROOT.resolve("docs"))) {
            return Stream.concat(root, docs).filter(path -> path.toString().endsWith(".md")).sorted().toList().stream();
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    private static Stream<String> deadLinks(Path page) {
        return found(Stream.of(read(page)), LINK).stream()
                .filter(link -> !link.startsWith("https://doi.org/"))
                .filter(link -> !Files.exists(page.resolveSibling(link)))
                .map(link -> ROOT.relativize(page) + " links to " + link);
    }

    private static List<String> found(Stream<String> texts, Pattern pattern) {
        return texts.flatMap(text -> pattern.matcher(text).results())
                .map(match -> match.groupCount() == 0 ? match.group() : match.group(1))
                .toList();
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }
}
