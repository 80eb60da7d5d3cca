package counterpull.scenario.fields;

import counterpull.engine.Refusal;
import counterpull.scenario.problem.Code;
import counterpull.scenario.problem.Found;
import counterpull.scenario.problem.Nearest;
import counterpull.scenario.problem.Place;
import counterpull.scenario.problem.Problem;
import counterpull.scenario.problem.Problems;
import counterpull.scenario.tree.Node;
import counterpull.scenario.tree.Node.EmptyNode;
import counterpull.scenario.tree.Node.Entry;
import counterpull.scenario.tree.Node.ListNode;
import counterpull.scenario.tree.Node.MapNode;
import counterpull.scenario.tree.Node.TextNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Supplier;

/**
 * Reads one group's values by key. Nothing is thrown for what a file holds: each fault becomes a problem and a
 * placeholder comes back, so that one pass finds all problems. Unknown keys are reported when the group is opened.
 * Numbers come back in SI.
 */
public final class Fields {
    private final MapNode map;
    private final Shape shape;
    private final Problems problems;
    private final Values values;
    private final int before;

    private Fields(MapNode map, Shape shape, Problems problems) {
        this.map = map;
        this.shape = shape;
        this.problems = problems;
        this.values = new Values(problems);
        this.before = problems.mark();
    }

    /** Opens a group. */
    public static Fields open(MapNode map, Shape shape, Problems problems) {
        Fields fields = new Fields(map, shape, problems);
        for (Entry entry : map.entries()) {
            if (!shape.keys().contains(entry.key())) {
                fields.unknown(entry);
            }
        }
        return fields;
    }

    private void unknown(Entry entry) {
        String known = "Known in " + shape.name() + ": " + String.join(", ", shape.keys());
        problems.add(new Problem(
                Code.UNKNOWN_KEY,
                entry.place(),
                Found.value(entry.key()),
                "there is no such key in " + shape.name(),
                Nearest.hint(entry.key(), shape.keys(), known)));
    }

    /** Where the group begins. */
    public Place place() {
        return map.place();
    }

    /** Where a key's value stands, or the group itself if the key is not there. */
    public Place place(String key) {
        return map.get(key).map(Node::place).orElse(place());
    }

    /** Whether the key is there. */
    public boolean has(String key) {
        return find(key).isPresent();
    }

    /** A quantity that must be there. */
    public double required(String key, Measure measure) {
        return needed(key).map(node -> values.quantity(node, measure)).orElseGet(measure::placeholder);
    }

    /** A quantity that may be left out. */
    public OptionalDouble optional(String key, Measure measure) {
        Optional<Node> node = find(key);
        return node.isPresent() ? OptionalDouble.of(values.quantity(node.get(), measure)) : OptionalDouble.empty();
    }

    /** A quantity that stands for a stated value where it is left out. */
    public double orElse(String key, Measure measure, double otherwise) {
        return optional(key, measure).orElse(otherwise);
    }

    /** A whole number that must be there. */
    public int count(String key, Span span) {
        return needed(key).map(node -> values.count(node, span)).orElse(span.low());
    }

    /** A whole number that may be left out. */
    public OptionalInt optionalCount(String key, Span span) {
        Optional<Node> node = find(key);
        return node.isPresent() ? OptionalInt.of(values.count(node.get(), span)) : OptionalInt.empty();
    }

    /** A word out of several that must be there. */
    public <T> T choice(String key, Choices<T> choices) {
        return needed(key, "Give one of: " + String.join(", ", choices.words()))
                .map(node -> values.choice(node, choices))
                .orElseGet(() -> Values.first(choices));
    }

    /** A word out of several that may be left out. */
    public <T> Optional<T> optionalChoice(String key, Choices<T> choices) {
        return find(key).map(node -> values.choice(node, choices));
    }

    /** The thing that a name means, where the name must be there. */
    public <T> Optional<T> named(String key, Named<T> known) {
        return needed(key).flatMap(node -> known.find(node, values, problems));
    }

    /** The things that the names of a list mean; empty where the list is left out. */
    public <T> List<T> optionalNamed(String key, Named<T> known, Span length) {
        return items(find(key), length).stream()
                .map(node -> known.find(node, values, problems))
                .flatMap(Optional::stream)
                .toList();
    }

    /** A text that must be there. */
    public String text(String key) {
        return needed(key).map(values::text).orElse("");
    }

    /** A text that may be left out. */
    public Optional<String> optionalText(String key) {
        return find(key).map(values::text);
    }

    /** A sentence or a few that must be there, on one line. */
    public String sentence(String key) {
        return needed(key).map(values::sentence).orElse("");
    }

    /** A list of sentences that may be left out. */
    public List<String> optionalSentences(String key, Span length) {
        return items(find(key), length).stream().map(values::sentence).toList();
    }

    /** A group that must be there; a group without keys after a problem. */
    public Optional<Fields> group(String key, Shape inner) {
        return needed(key).flatMap(node -> values.map(node)).map(found -> open(found, inner, problems));
    }

    /** A group that may be left out. */
    public Optional<Fields> optionalGroup(String key, Shape inner) {
        return find(key).flatMap(node -> values.map(node)).map(found -> open(found, inner, problems));
    }

    /** A list of groups that must be there. */
    public List<Fields> groups(String key, Shape inner, Span length) {
        return needed(key).map(node -> opened(node, inner, length)).orElse(List.of());
    }

    /** A list of groups that may be left out. */
    public List<Fields> optionalGroups(String key, Shape inner, Span length) {
        return find(key).map(node -> opened(node, inner, length)).orElse(List.of());
    }

    /** A list of quantities that must be there. */
    public List<Double> quantities(String key, Measure measure, Span length) {
        return items(needed(key), length).stream()
                .map(node -> values.quantity(node, measure))
                .toList();
    }

    /** A list of quantities that may be left out. */
    public List<Double> optionalQuantities(String key, Measure measure, Span length) {
        return items(find(key), length).stream()
                .map(node -> values.quantity(node, measure))
                .toList();
    }

    /** A list of words that may be left out. */
    public <T> List<T> optionalChoices(String key, Choices<T> choices, Span length) {
        return items(find(key), length).stream()
                .map(node -> values.choice(node, choices))
                .toList();
    }

    /** A list of texts that may be left out. */
    public List<String> optionalTexts(String key, Span length) {
        return items(find(key), length).stream().map(values::text).toList();
    }

    /** Reports a key that must be there but is not; its value is read elsewhere. */
    public void require(String key, String hint) {
        if (find(key).isEmpty()) {
            missing(key, hint);
        }
    }

    /** Whether a key is not there inside a group, or the group itself is not there. */
    public boolean absent(String key, String inner) {
        return find(key)
                .filter(node ->
                        !(node instanceof MapNode group) || group.get(inner).isPresent())
                .isEmpty();
    }

    /** Which one of these keys is there; a problem if none is, or more than one. */
    public Optional<String> oneOf(String... keys) {
        List<String> given = new ArrayList<>();
        for (String key : keys) {
            if (find(key).isPresent()) {
                given.add(key);
            }
        }
        // a key that is not known has been reported, with the ones that are
        if (given.isEmpty()
                && map.entries().stream().allMatch(entry -> shape.keys().contains(entry.key()))) {
            missing(String.join(" or ", keys), "Give one of: " + String.join(", ", keys));
        } else if (given.size() > 1) {
            report(
                    Code.CONTRADICTION,
                    given.get(1),
                    "only one of " + String.join(", ", keys) + " can hold",
                    "Keep one");
        }
        return given.size() == 1 ? Optional.of(given.get(0)) : Optional.empty();
    }

    /** Reports if none of these keys is there. */
    public void oneOrBoth(String first, String second) {
        if (find(first).isEmpty() && find(second).isEmpty()) {
            missing(first + " or " + second, "Give " + first + ", " + second + " or both");
        }
    }

    /** A key's value as it was written; empty if it is no single value. */
    public Optional<String> peek(String key) {
        return find(key)
                .filter(TextNode.class::isInstance)
                .map(node -> ((TextNode) node).text().strip());
    }

    /** A value inside a group as it was written, before the group is opened; empty if there is no single value. */
    public Optional<String> peek(String key, String inner) {
        return find(key)
                .filter(MapNode.class::isInstance)
                .flatMap(node -> ((MapNode) node).get(inner))
                .filter(TextNode.class::isInstance)
                .map(node -> ((TextNode) node).text().strip());
    }

    /** Reports a word inside a group that is none of the words for it, before the group is opened. */
    public void checkWord(String key, String inner, Choices<?> choices) {
        find(key)
                .filter(MapNode.class::isInstance)
                .flatMap(node -> ((MapNode) node).get(inner))
                .ifPresent(node -> values.choice(node, choices));
    }

    /** Reports a problem with a key's value. */
    public void report(Code code, String key, String message, String hint) {
        String written = peek(key).orElse("");
        problems.add(new Problem(code, place(key), Found.value(written), message, hint));
    }

    /** Reports a problem with the whole group. */
    public void reportHere(Code code, String message, String hint) {
        problems.add(Problem.of(code, place(), message, hint));
    }

    /** What a reading gives, if no problem comes up in it. */
    public <T> Optional<T> sound(Supplier<T> reading) {
        int mark = problems.mark();
        T value = reading.get();
        return problems.mark() == mark ? Optional.of(value) : Optional.empty();
    }

    /** Notes that something already reported is needed here, so that the group is not built. */
    public void stumble() {
        problems.stumble();
    }

    /** Whether no problem came up since the group was opened: what it holds can be used. */
    public boolean isSound() {
        return problems.mark() == before;
    }

    /**
     * Builds what the group describes if everything in it is sound; a refusal by the engine becomes a problem of this
     * group.
     */
    public <T> Optional<T> built(Supplier<T> builder) {
        if (!isSound()) {
            return Optional.empty();
        }
        try {
            return Optional.of(builder.get());
        } catch (Refusal refusal) {
            problems.add(Refusals.problem(refusal, place()));
            return Optional.empty();
        }
    }

    private List<Fields> opened(Node node, Shape inner, Span length) {
        List<Fields> opened = new ArrayList<>();
        for (Node item : items(Optional.of(node), length)) {
            values.map(item).ifPresent(found -> opened.add(open(found, inner, problems)));
        }
        return opened;
    }

    private List<Node> items(Optional<Node> node, Span length) {
        return node.flatMap(found -> values.list(found, length))
                .map(ListNode::items)
                .orElse(List.of());
    }

    private Optional<Node> find(String key) {
        if (!shape.keys().contains(key)) {
            throw new IllegalArgumentException(shape.name() + " declares no key " + key);
        }
        return map.get(key);
    }

    private Optional<Node> needed(String key) {
        return needed(key, "");
    }

    private Optional<Node> needed(String key, String hint) {
        Optional<Node> node = find(key);
        if (node.isEmpty()) {
            missing(key, hint);
        } else if (node.get() instanceof EmptyNode empty) {
            problems.add(Problem.of(Code.VALUE_MISSING, empty.place(), "there is no value after this key", hint));
            return Optional.empty();
        }
        return node;
    }

    private void missing(String key, String hint) {
        Place where = place().at(place().key().key(key));
        problems.add(Problem.of(Code.MISSING_KEY, where, "this key is missing in " + shape.name(), hint));
    }
}
