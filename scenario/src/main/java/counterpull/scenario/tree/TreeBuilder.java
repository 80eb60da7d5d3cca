package counterpull.scenario.tree;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import counterpull.scenario.problem.Code;
import counterpull.scenario.problem.Found;
import counterpull.scenario.problem.Key;
import counterpull.scenario.problem.Place;
import counterpull.scenario.problem.Problem;
import counterpull.scenario.problem.Problems;
import counterpull.scenario.tree.Node.BrokenNode;
import counterpull.scenario.tree.Node.EmptyNode;
import counterpull.scenario.tree.Node.Entry;
import counterpull.scenario.tree.Node.ListNode;
import counterpull.scenario.tree.Node.MapNode;
import counterpull.scenario.tree.Node.TextNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Builds nodes from one parser's tokens. */
final class TreeBuilder {
    private static final String EXAMPLE = "Start from the commented example";
    private static final int DEEPEST = 30;
    private static final int MOST_PARTS = 20_000;

    private final JsonParser parser;
    private final String file;
    private final Problems problems;
    private int parts;

    TreeBuilder(JsonParser parser, String file, Problems problems) {
        this.parser = parser;
        this.file = file;
        this.problems = problems;
    }

    /** Leaves the recursion once a problem is reported after which reading on makes no sense. */
    static final class Stop extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Stop() {
            super(null, null, false, false);
        }
    }

    Optional<MapNode> document() throws IOException {
        if (parser.nextToken() == null) {
            return refused(Code.VALUE_MISSING, Place.file(file), "the file is empty", EXAMPLE);
        }
        Node root = node(Key.TOP, 1);
        if (parser.nextToken() != null) {
            return refused(
                    Code.SEVERAL_DOCUMENTS,
                    here(Key.TOP),
                    "the file holds more than one document",
                    "Keep one scenario in one file, without a line of three hyphens between its parts");
        }
        if (root instanceof MapNode map) {
            return Optional.of(map);
        }
        if (root instanceof BrokenNode) {
            return Optional.empty();
        }
        return root instanceof EmptyNode
                ? refused(Code.VALUE_MISSING, Place.file(file), "the file is empty", EXAMPLE)
                : refused(
                        Code.WRONG_KIND,
                        root.place(),
                        "the file is " + root.kind() + ", not keys with values",
                        "Begin with a line like \"format: counterpull/1\"");
    }

    private Optional<MapNode> refused(Code code, Place place, String message, String hint) {
        problems.add(Problem.of(code, place, message, hint));
        return Optional.empty();
    }

    private Node node(Key key, int depth) throws IOException {
        Place place = here(key);
        limits(place, depth);
        if (marked(place)) {
            parser.skipChildren();
            return new BrokenNode(place);
        }
        return switch (parser.currentToken()) {
            case START_OBJECT -> map(key, depth);
            case START_ARRAY -> list(key, depth);
            case VALUE_NULL -> new EmptyNode(place);
            default -> text(place);
        };
    }

    private Node text(Place place) throws IOException {
        String text = parser.getText();
        return text.isEmpty() ? new EmptyNode(place) : new TextNode(place, text);
    }

    private void limits(Place place, int depth) {
        parts++;
        if (depth > DEEPEST) {
            stop(Code.TOO_DEEP, place, "nested more than " + DEEPEST + " levels deep", "A scenario needs about eight");
        }
        if (parts > MOST_PARTS) {
            stop(
                    Code.TOO_MANY_PARTS,
                    place,
                    "the file has more than " + MOST_PARTS + " values",
                    "Is it the right file?");
        }
    }

    private void stop(Code code, Place place, String message, String hint) {
        problems.add(Problem.of(code, place, message, hint));
        throw new Stop();
    }

    /** Anchors, aliases and type tags are refused: a reader must see each number where it is used. */
    private boolean marked(Place place) throws IOException {
        if (!(parser instanceof YAMLParser yaml)) {
            return false;
        }
        if (yaml.isCurrentAlias() || parser.getObjectId() != null) {
            problems.add(Problem.of(
                    Code.ALIAS,
                    place,
                    "anchors (&) and aliases (*) are not read",
                    "Write the value out where it is used, or in quotes if it begins with that sign"));
            return true;
        }
        if (parser.getTypeId() != null) {
            problems.add(Problem.of(
                    Code.TYPE_TAG,
                    place,
                    "type tags (!) are not read",
                    "Leave the tag out, or put the text in quotes if it begins with that sign"));
            return true;
        }
        return false;
    }

    private Node list(Key key, int depth) throws IOException {
        Place place = here(key);
        List<Node> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            ended();
            items.add(node(key.item(items.size() + 1), depth + 1));
        }
        return new ListNode(place, List.copyOf(items));
    }

    private Node map(Key key, int depth) throws IOException {
        Place place = here(key);
        Map<String, Entry> entries = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            ended();
            entry(key, depth, entries);
        }
        return new MapNode(place, List.copyOf(entries.values()));
    }

    private void ended() {
        if (parser.currentToken() == null) {
            stop(Code.TRUNCATED, Place.file(file), "the file ends in the middle", "Save it again or fetch it again");
        }
    }

    private void entry(Key key, int depth, Map<String, Entry> entries) throws IOException {
        String name = parser.currentName();
        Place place = here(key.key(name));
        marked(place);
        parser.nextToken();
        ended();
        Node value = node(place.key(), depth + 1);
        if (name.equals("<<")) {
            problems.add(Problem.of(Code.MERGE_KEY, place, "merge keys (<<) are not read", "Write the keys out"));
            return;
        }
        Entry first = entries.putIfAbsent(name, new Entry(name, place, value));
        if (first != null) {
            twice(first.place(), place, name, problems);
        }
    }

    /** Reports a key given twice, with both lines. */
    static void twice(Place first, Place second, String name, Problems problems) {
        String where = first.file().equals(second.file()) ? "line " + first.line() : first.inWords();
        problems.add(new Problem(
                Code.DUPLICATE_KEY,
                second,
                Found.value(name),
                "this key is given twice: here and in " + where,
                "Keep one of them"));
    }

    private Place here(Key key) {
        JsonLocation location = parser.currentTokenLocation();
        return new Place(file, Math.max(0, location.getLineNr()), Math.max(0, location.getColumnNr()), key);
    }
}
