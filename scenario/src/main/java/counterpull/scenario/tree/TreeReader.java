package counterpull.scenario.tree;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import counterpull.scenario.problem.Problems;
import counterpull.scenario.problem.Shown;
import counterpull.scenario.tree.Node.MapNode;
import java.io.IOException;
import java.util.Locale;
import java.util.Optional;

/**
 * Reads YAML or JSON into located nodes. Whatever the bytes are, it answers with nodes or with problems: nothing is
 * thrown, and time and memory stay small because size, depth and number of parts are limited and aliases are refused.
 */
public final class TreeReader {
    private static final JsonFactory JSON = JsonFactory.builder()
            .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
            .build();
    private static final YAMLFactory YAML = YAMLFactory.builder().build();

    private TreeReader() {}

    /** The file's top-level keys; empty if the file cannot be read at all, which is then among the problems. */
    public static Optional<MapNode> read(Source source, Problems problems) {
        return Text.of(source, problems).flatMap(text -> parsed(source.name(), text, problems));
    }

    private static Optional<MapNode> parsed(String name, String text, Problems problems) {
        boolean json = isJson(name, text);
        SyntaxProblems syntax = new SyntaxProblems(Shown.shortened(name), text, problems);
        if (!json && syntax.tabs()) {
            return Optional.empty();
        }
        try (JsonParser parser = json ? JSON.createParser(text) : YAML.createParser(text)) {
            return new TreeBuilder(parser, Shown.shortened(name), problems).document();
        } catch (TreeBuilder.Stop alreadyReported) {
            return Optional.empty();
        } catch (IOException | RuntimeException broken) {
            // The parsers throw several families of exceptions at hostile text; all mean that it cannot be read.
            syntax.report(broken);
            return Optional.empty();
        }
    }

    private static boolean isJson(String name, String text) {
        String lower = name.toLowerCase(Locale.ROOT);
        boolean yaml = lower.endsWith(".yaml") || lower.endsWith(".yml");
        return lower.endsWith(".json") || !yaml && text.stripLeading().startsWith("{");
    }
}
