package counterpull.scenario.read;

import counterpull.scenario.fields.Fields;
import counterpull.scenario.problem.Code;
import java.util.HashSet;
import java.util.Set;

/** Sees to it that no two things of one kind have the same name. */
final class UniqueNames {
    private final String kind;
    private final Set<String> seen = new HashSet<>();

    UniqueNames(String kind) {
        this.kind = kind;
    }

    /** Reports a name that was there before; the key must be known to be a text by whoever reads it. */
    void check(Fields fields, String key) {
        fields.peek(key)
                .filter(name -> !seen.add(name))
                .ifPresent(name -> fields.report(
                        Code.DUPLICATE_NAME, key, "another " + kind + " has this name", "Give each its own name"));
    }
}
