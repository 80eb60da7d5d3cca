package counterpull.engine.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/**
 * Arrows between the modules run one way: a module's pom names only modules that it may know. What only its tests need is
 * free. Engine and picture also run in the browser, so they need no library at all.
 */
class ModuleArrowsTest {
    private static final Set<String> ALL_BUT_TEST_ONLY =
            Set.of("engine", "bench", "scenario", "readings", "picture", "letgo", "report", "store", "exchange");

    /** Which modules each may know; the cross-checks may know all, and benchmarks time what they compare. */
    private static final Map<String, Set<String>> MAY_KNOW = Map.ofEntries(
            Map.entry("engine", Set.of()),
            Map.entry("bench", Set.of("engine")),
            Map.entry("scenario", Set.of("engine")),
            Map.entry("readings", Set.of("engine", "bench", "scenario")),
            Map.entry("picture", Set.of("engine")),
            Map.entry("letgo", Set.of("engine")),
            Map.entry("report", Set.of("engine", "bench", "scenario", "readings", "picture", "letgo")),
            Map.entry("store", Set.of("engine", "scenario")),
            Map.entry("exchange", Set.of("engine", "scenario", "store")),
            Map.entry("app", ALL_BUT_TEST_ONLY),
            Map.entry("browser", Set.of("engine", "picture")),
            Map.entry("crosscheck", ALL_BUT_TEST_ONLY),
            Map.entry("benchmarks", Set.of("engine", "bench", "crosscheck")));

    private static final Set<String> WITHOUT_LIBRARIES = Set.of("engine", "picture");
    private static final Path ROOT =
            Path.of(System.getProperty("basedir", "")).toAbsolutePath().getParent();

    @Test
    void modulesKnowOnlyThoseBelowThem() throws Exception {
        List<String> wrong = new ArrayList<>();
        for (Map.Entry<String, Element> module : modules().entrySet()) {
            wrong.addAll(wrongArrows(module.getKey(), module.getValue()));
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void everyModuleHasItsPlace() throws Exception {
        assertThat(modules().keySet()).contains("engine").isSubsetOf(MAY_KNOW.keySet());
    }

    @Test
    void arrowsNeverComeBack() {
        MAY_KNOW.forEach((module, known) -> known.forEach(
                other -> assertThat(MAY_KNOW.get(other)).as(other + " knows").doesNotContain(module)));
    }

    /** The control: arrows that run the wrong way, and a library in the engine, are found. */
    @Test
    void aWrongArrowIsFound() throws Exception {
        Element pom = parse(new ByteArrayInputStream("""
                <project><dependencies>
                <dependency><groupId>counterpull</groupId><artifactId>counterpull-app</artifactId></dependency>
                <dependency><groupId>counterpull</groupId><artifactId>counterpull-store</artifactId><scope>test</scope>
                </dependency>
                <dependency><groupId>org.example</groupId><artifactId>something</artifactId></dependency>
                </dependencies></project>""".getBytes(StandardCharsets.UTF_8)));
        assertThat(wrongArrows("scenario", pom)).containsExactly("scenario must not know app");
        assertThat(wrongArrows("engine", pom))
                .containsExactly("engine must not know app", "engine must not need something");
    }

    private static List<String> wrongArrows(String module, Element pom) {
        List<String> wrong = new ArrayList<>();
        for (Element dependency : children(pom, "dependencies")
                .flatMap(all -> children(all, "dependency"))
                .toList()) {
            String artifact = text(dependency, "artifactId");
            boolean ours = text(dependency, "groupId").matches("counterpull|\\$\\{project.groupId}");
            if (text(dependency, "scope").equals("test")) {
                continue;
            }
            String other = artifact.replaceFirst("^counterpull-", "");
            if (ours && !MAY_KNOW.getOrDefault(module, Set.of()).contains(other)) {
                wrong.add(module + " must not know " + other);
            }
            if (!ours && WITHOUT_LIBRARIES.contains(module)) {
                wrong.add(module + " must not need " + artifact);
            }
        }
        return wrong;
    }

    /** Every module that the parent pom names, by its folder. */
    private static Map<String, Element> modules() throws Exception {
        Map<String, Element> modules = new HashMap<>();
        for (Element list : children(read(ROOT), "modules").toList()) {
            for (Element module : children(list, "module").toList()) {
                String folder = module.getTextContent().strip();
                modules.put(folder, read(ROOT.resolve(folder)));
            }
        }
        return modules;
    }

    private static Element read(Path folder) throws Exception {
        try (InputStream in = Files.newInputStream(folder.resolve("pom.xml"))) {
            return parse(in);
        }
    }

    private static Element parse(InputStream in) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(in)
                .getDocumentElement();
    }

    private static Stream<Element> children(Element of, String name) {
        return IntStream.range(0, of.getChildNodes().getLength())
                .mapToObj(i -> of.getChildNodes().item(i))
                .filter(node -> node instanceof Element && node.getNodeName().equals(name))
                .map(Element.class::cast);
    }

    private static String text(Element of, String name) {
        return children(of, name)
                .map(child -> child.getTextContent().strip())
                .findFirst()
                .orElse("");
    }
}
