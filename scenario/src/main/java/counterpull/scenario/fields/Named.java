package counterpull.scenario.fields;

import counterpull.scenario.problem.Code;
import counterpull.scenario.problem.Found;
import counterpull.scenario.problem.Nearest;
import counterpull.scenario.problem.Problem;
import counterpull.scenario.problem.Problems;
import counterpull.scenario.problem.Shown;
import counterpull.scenario.tree.Node;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Things elsewhere in the scenario that a value may name.
 *
 * @param kind what they are, in words
 * @param things the things; empty if they could not be read, so that no name can be checked
 * @param name the name of one
 */
public record Named<T>(String kind, Optional<List<T>> things, Function<T, String> name) {

    Optional<T> find(Node node, Values values, Problems problems) {
        String wanted = values.text(node);
        if (things.isEmpty()) {
            problems.stumble();
        }
        if (things.isEmpty() || wanted.isEmpty()) {
            return Optional.empty();
        }
        Optional<T> found = things.get().stream()
                .filter(thing -> name.apply(thing).equals(wanted))
                .findFirst();
        if (found.isEmpty()) {
            problems.add(unknown(node, wanted));
        }
        return found;
    }

    private Problem unknown(Node node, String wanted) {
        List<String> known = things.orElseThrow().stream().map(name).toList();
        String all = known.isEmpty() ? "There is none" : "Known: " + Shown.shortened(String.join(", ", known), 200);
        return new Problem(
                Code.UNKNOWN_NAME,
                node.place(),
                Found.value(wanted),
                "no " + kind + " has the name \"" + Shown.shortened(wanted) + "\"",
                Nearest.hint(wanted, known, all));
    }
}
