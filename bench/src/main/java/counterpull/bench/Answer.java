package counterpull.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What came of a bench: a result, or the reasons why there is none; and whatever should be said about its readings. All remarks come
 * together, never the first alone.
 *
 * @param result empty exactly where a remark refuses
 * @param remarks in the order of the readings
 * @param <T> kind of result
 */
public record Answer<T>(Optional<T> result, List<Remark> remarks) {
    public Answer {
        remarks = List.copyOf(remarks);
        boolean refused = remarks.stream().anyMatch(Remark::refuses);
        if (refused == result.isPresent()) {
            throw new IllegalArgumentException("an answer has a result or a refusal, and not both");
        }
    }

    /** A result with what should be said about it. */
    public static <T> Answer<T> of(T result, List<Remark> remarks) {
        return new Answer<>(Optional.of(result), remarks);
    }

    /** No result, for these reasons. */
    public static <T> Answer<T> refused(List<Remark> remarks) {
        return new Answer<>(Optional.empty(), remarks);
    }

    /** The same with more remarks, none of which refuses. */
    public Answer<T> with(List<Remark> more) {
        List<Remark> all = new ArrayList<>(remarks);
        all.addAll(more);
        return new Answer<>(result, all);
    }
}
