package counterpull.scenario.tree;

import counterpull.scenario.problem.Place;
import java.util.List;
import java.util.Optional;

/** A part of a file with the place where it stands. */
public sealed interface Node {

    /** Where it begins. */
    Place place();

    /** What it is, in words: "a list". */
    String kind();

    /** Keys with values, in the file's order; each key once. */
    record MapNode(Place place, List<Entry> entries) implements Node {
        @Override
        public String kind() {
            return "a group of keys";
        }

        /** The value under that key. */
        public Optional<Node> get(String key) {
            return entries.stream()
                    .filter(entry -> entry.key().equals(key))
                    .map(Entry::value)
                    .findFirst();
        }
    }

    /** A key with its value; the place is the key's. */
    record Entry(String key, Place place, Node value) {}

    /** Items in order. */
    record ListNode(Place place, List<Node> items) implements Node {
        @Override
        public String kind() {
            return "a list";
        }
    }

    /** A single value as it was written, without quotes. */
    record TextNode(Place place, String text) implements Node {
        @Override
        public String kind() {
            return "a single value";
        }
    }

    /** A key with nothing behind it. */
    record EmptyNode(Place place) implements Node {
        @Override
        public String kind() {
            return "nothing";
        }
    }

    /** Something that could not be read and is already reported: no one reports it again. */
    record BrokenNode(Place place) implements Node {
        @Override
        public String kind() {
            return "unreadable";
        }
    }
}
