package counterpull.scenario.fields;

import counterpull.scenario.problem.Code;
import counterpull.scenario.problem.Found;
import counterpull.scenario.problem.Nearest;
import counterpull.scenario.problem.Problem;
import counterpull.scenario.problem.Problems;
import counterpull.scenario.problem.Shown;
import counterpull.scenario.tree.Node;
import counterpull.scenario.tree.Node.BrokenNode;
import counterpull.scenario.tree.Node.EmptyNode;
import counterpull.scenario.tree.Node.ListNode;
import counterpull.scenario.tree.Node.MapNode;
import counterpull.scenario.tree.Node.TextNode;
import counterpull.scenario.units.Quantity;
import counterpull.scenario.units.QuantityText;
import counterpull.scenario.units.Reading;
import counterpull.scenario.units.Reading.Read;
import counterpull.scenario.units.Reading.Refused;
import java.util.Optional;

/** Turns single nodes into values; a problem and a placeholder where that cannot be. */
final class Values {
    private static final int LONGEST_NAME = 80;
    private static final int LONGEST_SENTENCE = 400;

    private final Problems problems;

    Values(Problems problems) {
        this.problems = problems;
    }

    /** A quantity in SI. */
    double quantity(Node node, Measure measure) {
        return single(node, "a number with its unit")
                .map(text -> quantity(text, measure))
                .orElseGet(measure::placeholder);
    }

    private double quantity(TextNode text, Measure measure) {
        Reading reading = QuantityText.read(text.text(), measure.dimension());
        if (reading instanceof Refused refused) {
            problems.add(QuantityProblems.refused(text.place(), text.text(), measure.dimension(), refused));
            return measure.placeholder();
        }
        Quantity quantity = ((Read) reading).quantity();
        if (quantity.si() < measure.low().si() || quantity.si() > measure.high().si()) {
            problems.add(QuantityProblems.outside(text.place(), quantity, measure));
            return measure.placeholder();
        }
        return quantity.si();
    }

    /** A whole number. */
    int count(Node node, Span span) {
        return single(node, "a whole number").map(text -> count(text, span)).orElse(span.low());
    }

    private int count(TextNode text, Span span) {
        if (!text.text().matches("[+-]?\\d{1,9}")) {
            problem(Code.NOT_A_NUMBER, text, "this is not a whole number", "Write it like 8, without a unit");
            return span.low();
        }
        int value = Integer.parseInt(text.text());
        if (value < span.low() || value > span.high()) {
            int limit = value < span.low() ? span.low() : span.high();
            String side = value < span.low() ? "below " : "above ";
            problems.add(new Problem(
                    Code.OUTSIDE_LIMITS,
                    text.place(),
                    new Found(text.text(), "", String.valueOf(limit)),
                    value + " is " + side + limit + ", the limit for this value",
                    ""));
            return span.low();
        }
        return value;
    }

    /** What a word means. */
    <T> T choice(Node node, Choices<T> choices) {
        return single(node, "a word")
                .flatMap(text -> {
                    Optional<T> meaning = choices.meaning(text.text());
                    if (meaning.isEmpty()) {
                        notAChoice(text, choices);
                    }
                    return meaning;
                })
                .orElseGet(() -> first(choices));
    }

    private void notAChoice(TextNode text, Choices<?> choices) {
        String known = "One of: " + String.join(", ", choices.words());
        problem(
                Code.NOT_A_CHOICE,
                text,
                "\"" + Shown.shortened(text.text()) + "\" is none of the words for this value",
                Nearest.to(text.text(), choices.words())
                        .map(near -> "Did you mean \"" + near + "\"? " + known)
                        .orElse(known));
    }

    static <T> T first(Choices<T> choices) {
        return choices.meaning(choices.words().iterator().next()).orElseThrow();
    }

    /** A name: not blank, on one line, not too long. */
    String text(Node node) {
        return text(node, LONGEST_NAME);
    }

    /** A sentence or a few: not blank, on one line, not too long. */
    String sentence(Node node) {
        return text(node, LONGEST_SENTENCE);
    }

    private String text(Node node, int longest) {
        return single(node, "a text").map(text -> text(text, longest)).orElse("");
    }

    private String text(TextNode text, int longest) {
        String value = text.text().strip();
        if (value.isEmpty() || value.length() > longest) {
            String message = "a text of 1 to " + longest + " characters is due; this has " + value.length();
            problem(Code.NOT_A_TEXT, text, message, "");
        } else if (!Shown.shortened(value, longest).equals(value)) {
            String message = "a text is due, on one line; this has line breaks or signs that cannot be seen";
            problem(Code.NOT_A_TEXT, text, message, "Type it again by hand");
        }
        return value;
    }

    /** A group of keys. */
    Optional<MapNode> map(Node node) {
        return wanted(node, MapNode.class, "a group of keys");
    }

    /** A list with an allowed number of items. */
    Optional<ListNode> list(Node node, Span length) {
        Optional<ListNode> list = wanted(node, ListNode.class, "a list");
        list.ifPresent(found -> lengthOf(found, length));
        return list;
    }

    private void lengthOf(ListNode list, Span length) {
        int size = list.items().size();
        if (size < length.low() || size > length.high()) {
            boolean few = size < length.low();
            int limit = few ? length.low() : length.high();
            problems.add(new Problem(
                    few ? Code.TOO_FEW : Code.TOO_MANY,
                    list.place(),
                    new Found(String.valueOf(size), "", String.valueOf(limit)),
                    "the list has " + size + " items; at " + (few ? "least " : "most ") + limit + " are due",
                    ""));
        }
    }

    private Optional<TextNode> single(Node node, String due) {
        return wanted(node, TextNode.class, due);
    }

    private <T extends Node> Optional<T> wanted(Node node, Class<T> kind, String due) {
        if (kind.isInstance(node)) {
            return Optional.of(kind.cast(node));
        }
        if (node instanceof EmptyNode) {
            problems.add(
                    Problem.of(Code.VALUE_MISSING, node.place(), "there is no value here; " + due + " is due", ""));
        } else if (node instanceof BrokenNode) {
            problems.stumble();
        } else {
            problems.add(Problem.of(
                    Code.WRONG_KIND, node.place(), "this is " + node.kind() + ", but " + due + " is due", ""));
        }
        return Optional.empty();
    }

    private void problem(Code code, TextNode text, String message, String hint) {
        problems.add(new Problem(code, text.place(), Found.value(text.text()), message, hint));
    }
}
