package counterpull.scenario.fields;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** The words that a value may be, with what each means. */
public final class Choices<T> {
    private final Map<String, T> meanings;

    private Choices(Map<String, T> meanings) {
        this.meanings = meanings;
    }

    /** One word for each of the values. */
    @SafeVarargs
    public static <T> Choices<T> of(Function<T, String> word, T... values) {
        Map<String, T> meanings = new LinkedHashMap<>();
        for (T value : values) {
            meanings.put(word.apply(value), value);
        }
        return new Choices<>(meanings);
    }

    /** The words, in the order in which they are told. */
    public Collection<String> words() {
        return meanings.keySet();
    }

    /** What a word means. */
    public Optional<T> meaning(String word) {
        return Optional.ofNullable(meanings.get(word));
    }

    /** The word for a meaning. */
    public String word(T meaning) {
        return meanings.entrySet().stream()
                .filter(entry -> entry.getValue().equals(meaning))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no word for " + meaning));
    }
}
