package counterpull.app.cli;

import java.util.List;

/** What a person gave cannot be used; carries every sentence that is to be said about it. */
final class BadInput extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<String> lines;

    BadInput(List<String> lines) {
        super(String.join("\n", lines));
        this.lines = List.copyOf(lines);
    }

    List<String> lines() {
        return lines;
    }
}
