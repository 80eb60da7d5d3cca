package counterpull.scenario.tree;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.scenario.problem.Code;
import counterpull.scenario.problem.Problem;
import counterpull.scenario.problem.Problems;
import counterpull.scenario.tree.Node.EmptyNode;
import counterpull.scenario.tree.Node.ListNode;
import counterpull.scenario.tree.Node.MapNode;
import counterpull.scenario.tree.Node.TextNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class TreeReaderTest {
    private final Problems problems = new Problems();

    private Optional<MapNode> read(String name, String text) {
        return TreeReader.read(Source.of(name, text), problems);
    }

    @Test
    void placesEveryValue() {
        MapNode map = read("p.yaml", "person:\n  limbs:\n    - thigh: 41 cm # taped\n    - thigh: '40 cm'\n  note:\n")
                .orElseThrow();
        MapNode person = (MapNode) map.get("person").orElseThrow();
        ListNode limbs = (ListNode) person.get("limbs").orElseThrow();
        TextNode thigh =
                (TextNode) ((MapNode) limbs.items().get(1)).get("thigh").orElseThrow();
        assertThat(thigh.text()).isEqualTo("40 cm");
        assertThat(thigh.place().line()).isEqualTo(4);
        assertThat(thigh.place().column()).isEqualTo(14);
        assertThat(thigh.place().key()).hasToString("person.limbs[2].thigh");
        assertThat(person.get("note")).containsInstanceOf(EmptyNode.class);
        assertThat(problems.isEmpty()).isTrue();
    }

    @Test
    void jsonGivesTheSameAsYaml() {
        MapNode json = read("a.json", "{\"a\": [1e5, \"x\", null, true], \"b\": {\"c\": -0.50}}")
                .orElseThrow();
        MapNode yaml = read("a.yaml", "a: [1e5, x, null, true]\nb: {c: -0.50}").orElseThrow();
        assertThat(json.toString().replaceAll("Place\\[[^,]*, line=\\d+, column=\\d+", ""))
                .isEqualTo(yaml.toString().replaceAll("Place\\[[^,]*, line=\\d+, column=\\d+", ""));
    }

    @Test
    void numbersAreKeptAsTheyWereWritten() {
        MapNode map = read("a.yaml", "a: 1_000\nb: 0x1F\nc: 1:30\nd: 012\ne: yes\nf: 1e5")
                .orElseThrow();
        assertThat(map.entries())
                .extracting(entry -> ((TextNode) entry.value()).text())
                .containsExactly("1_000", "0x1F", "1:30", "012", "yes", "1e5");
    }

    @Test
    void aByteOrderMarkIsNoProblem() {
        assertThat(read("a.yaml", "\uFEFFa: 1")).isPresent();
        assertThat(read("a.json", "\uFEFF{\"a\": 1}")).isPresent();
    }

    static Stream<Arguments> refused() {
        return Stream.of(
                Arguments.of("a.yaml", "", Code.VALUE_MISSING, 0),
                Arguments.of("a.yaml", "# only a remark\n", Code.VALUE_MISSING, 0),
                Arguments.of("a.yaml", "---", Code.VALUE_MISSING, 0),
                Arguments.of("a.json", "", Code.VALUE_MISSING, 0),
                Arguments.of("a.yaml", "hello", Code.WRONG_KIND, 1),
                Arguments.of("a.yaml", "- a\n- b", Code.WRONG_KIND, 1),
                Arguments.of("a.json", "[1]", Code.WRONG_KIND, 1),
                Arguments.of("a.yaml", "a: 1\nb: [1, 2", Code.TRUNCATED, 2),
                Arguments.of("a.yaml", "a: 1\nb: \"xyz\nc: 1", Code.TRUNCATED, 2),
                Arguments.of("a.json", "{\"a\": 1,\n\"b\": ", Code.TRUNCATED, 2),
                Arguments.of("a.json", "{\"a\": \"xy", Code.TRUNCATED, 1),
                Arguments.of("a.yaml", "a: b: c", Code.SYNTAX, 1),
                Arguments.of("a.yaml", "a:\n  b: 1\n c: 2\n", Code.SYNTAX, 3),
                Arguments.of("a.yaml", "a: @x", Code.SYNTAX, 1),
                Arguments.of("a.yaml", "? [a, b]\n: c", Code.SYNTAX, 1),
                Arguments.of("a.json", "{\"a\": 1,}", Code.SYNTAX, 1),
                Arguments.of("a.json", "{\"a\": 1} x", Code.SYNTAX, 1),
                Arguments.of("a.json", "{\"a\": " + "9".repeat(2000) + "}", Code.SYNTAX, 0),
                Arguments.of("a.yaml", "a:\n\tb: 1", Code.TAB, 2),
                Arguments.of("a.yaml", "a: 1\n---\na: 2", Code.SEVERAL_DOCUMENTS, 3),
                Arguments.of("a.json", "{\"a\": 1}{\"a\": 1}", Code.SEVERAL_DOCUMENTS, 1),
                Arguments.of("a.yaml", "[".repeat(100_000), Code.TOO_DEEP, 1),
                Arguments.of("a.json", "[".repeat(100_000), Code.TOO_DEEP, 1),
                Arguments.of("a.json", "{\"a\":".repeat(100_000), Code.TOO_DEEP, 1),
                Arguments.of("a.yaml", "a: [" + "1,".repeat(30_000) + "1]", Code.TOO_MANY_PARTS, 1),
                Arguments.of("a.yaml", "a: \u0000b", Code.NOT_TEXT, 1),
                Arguments.of("a.yaml", "a: 1\nb: \uFFFE", Code.NOT_TEXT, 0),
                Arguments.of("a.yaml", "a: " + "x".repeat(1 << 20), Code.TOO_LARGE, 0));
    }

    @ParameterizedTest
    @MethodSource("refused")
    void refusesAFileWithOneClearProblem(String name, String text, Code code, int line) {
        assertThat(read(name, text)).isEmpty();
        assertThat(problems.all()).singleElement().satisfies(problem -> {
            assertThat(problem.code()).isEqualTo(code);
            assertThat(problem.place().line()).isEqualTo(line);
            assertThat(problem.line()).hasSizeLessThan(400).doesNotContain("Exception", "snakeyaml", "jackson", "\n");
        });
    }

    static Stream<Arguments> reported() {
        return Stream.of(
                Arguments.of("a: 1\nb: 2\na: 3", Code.DUPLICATE_KEY, 3),
                Arguments.of("a: {b: 1}\nc: {d: 1, e: 2, d: 3}", Code.DUPLICATE_KEY, 2),
                Arguments.of("a: &x {b: 1}", Code.ALIAS, 1),
                Arguments.of("a: 1\nb: *x", Code.ALIAS, 2),
                Arguments.of("&k a: 1", Code.ALIAS, 1),
                Arguments.of("a: !!float 1", Code.TYPE_TAG, 1),
                Arguments.of("a: !thing {b: {c: 1}}", Code.TYPE_TAG, 1),
                Arguments.of("<<: {a: 1}", Code.MERGE_KEY, 1));
    }

    @ParameterizedTest
    @MethodSource("reported")
    void reportsAndReadsOn(String text, Code code, int line) {
        assertThat(read("a.yaml", text + "\nlast: 1\n").orElseThrow().get("last"))
                .isPresent();
        assertThat(problems.all()).singleElement().satisfies(problem -> {
            assertThat(problem.code()).isEqualTo(code);
            assertThat(problem.place().line()).isEqualTo(line);
        });
    }

    @Test
    void aDuplicateKeyNamesBothLines() {
        read("a.yaml", "a: 1\nb: 2\na: 3");
        assertThat(problems.all())
                .extracting(Problem::line)
                .singleElement()
                .asString()
                .contains("a.yaml:3:1", "line 1");
    }

    @Test
    void aliasesThatWouldExplodeStaySmall() {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < 40; i++) {
            String item = "*a" + (i - 1);
            bomb.append("a" + i + ": &a" + i + " [" + (item + ", ").repeat(8) + item + "]\n");
        }
        read("a.yaml", bomb.toString());
        assertThat(problems.all()).isNotEmpty().allMatch(problem -> problem.code() == Code.ALIAS);
    }

    @Test
    void bytesThatAreNoUtf8AreRefusedWithTheirLine() {
        byte[] latin = "a: 1\nb: 12\u00B0\n".getBytes(StandardCharsets.ISO_8859_1);
        assertThat(TreeReader.read(Source.of("a.yaml", latin), problems)).isEmpty();
        assertThat(problems.all()).singleElement().satisfies(problem -> {
            assertThat(problem.code()).isEqualTo(Code.NOT_TEXT);
            assertThat(problem.place().line()).isEqualTo(2);
            assertThat(problem.place().column()).isEqualTo(6);
        });
    }

    @Test
    void readsFilesByTheirNameAndRefusesWhatIsNoFile(@TempDir Path folder) throws IOException {
        Path good = Files.writeString(folder.resolve("good.yaml"), "a: 1");
        Path large = Files.write(folder.resolve("large.yaml"), new byte[10 << 20]);
        assertThat(TreeReader.read(Source.of(good), problems)).isPresent();
        TreeReader.read(Source.of(large), problems);
        TreeReader.read(Source.of(folder.resolve("none.yaml")), problems);
        TreeReader.read(Source.of(folder), problems);
        assertThat(problems.all())
                .extracting(Problem::code)
                .containsExactly(Code.TOO_LARGE, Code.FILE_NOT_FOUND, Code.NOT_READABLE);
        assertThat(problems.all())
                .extracting(Problem::line)
                .noneMatch(line -> line.contains(folder.getParent().toString()));
    }
}
