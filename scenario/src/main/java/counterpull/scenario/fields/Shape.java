package counterpull.scenario.fields;

import java.util.List;

/**
 * The keys that a group may have.
 *
 * @param name what the group is, in words; the JSON Schema defines it under the same name
 * @param keys all its keys
 */
public record Shape(String name, List<String> keys) {

    /** A group with these keys. */
    public static Shape of(String name, String... keys) {
        return new Shape(name, List.of(keys));
    }
}
