package counterpull.scenario.tree;

import counterpull.scenario.problem.Code;
import counterpull.scenario.problem.Key;
import counterpull.scenario.problem.Place;
import counterpull.scenario.problem.Problem;
import counterpull.scenario.problem.Problems;
import counterpull.scenario.problem.Shown;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.NoSuchFileException;
import java.util.Arrays;
import java.util.Optional;

/** A file's text: clean UTF-8 of a limited size, else a problem. */
public final class Text {
    private static final int LARGEST = 1 << 20;
    private static final Kind SCENARIO = new Kind(
            LARGEST,
            "the file is larger than 1 MiB; a scenario has a few kilobytes",
            "Save it as plain text in UTF-8; a scenario is YAML or JSON, not a word processor's file");

    private final Kind kind;
    private final Place place;
    private final Problems problems;

    private Text(Kind kind, Place place, Problems problems) {
        this.kind = kind;
        this.place = place;
        this.problems = problems;
    }

    /**
     * What kind of text is due.
     *
     * @param largest bytes
     * @param tooLarge what is said of a larger file
     * @param otherwise what is said of a file that is no plain text
     */
    public record Kind(int largest, String tooLarge, String otherwise) {}

    /** The text; empty once a problem is reported. */
    static Optional<String> of(Source source, Problems problems) {
        return of(source, SCENARIO, problems);
    }

    /** The same for another kind of text. */
    public static Optional<String> of(Source source, Kind kind, Problems problems) {
        Text text = new Text(kind, Place.file(Shown.shortened(source.name())), problems);
        return text.bytes(source).flatMap(text::decoded);
    }

    private Optional<byte[]> bytes(Source source) {
        try {
            if (source.size() > kind.largest()) {
                return tooLarge();
            }
            try (InputStream in = source.open()) {
                byte[] bytes = in.readNBytes(kind.largest() + 1);
                return bytes.length > kind.largest() ? tooLarge() : Optional.of(bytes);
            }
        } catch (NoSuchFileException missing) {
            return refuse(Code.FILE_NOT_FOUND, place, "there is no such file", "Check the name and the folder");
        } catch (IOException | SecurityException unreadable) {
            return refuse(Code.NOT_READABLE, place, "the file cannot be read", "Is it a file that you may open?");
        }
    }

    private <T> Optional<T> tooLarge() {
        return refuse(Code.TOO_LARGE, place, kind.tooLarge(), "Is it the right file?");
    }

    private Optional<String> decoded(byte[] bytes) {
        CharsetDecoder strict = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CharBuffer text = CharBuffer.allocate(bytes.length + 1);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        boolean bad = strict.decode(in, text, true).isError();
        text.flip();
        if (bad) {
            return notText(bytes, in.position());
        }
        String decoded = text.toString();
        int control = firstControl(decoded);
        if (control >= 0) {
            int at = decoded.substring(0, control).getBytes(StandardCharsets.UTF_8).length;
            return notText(bytes, at);
        }
        return Optional.of(decoded.startsWith("\uFEFF") ? decoded.substring(1) : decoded);
    }

    private static int firstControl(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < ' ' && c != '\n' && c != '\r' && c != '\t' || c == '\u007F') {
                return i;
            }
        }
        return -1;
    }

    private Optional<String> notText(byte[] bytes, int at) {
        int line = 1;
        int column = 1;
        for (byte b : Arrays.copyOf(bytes, at)) {
            line += b == '\n' ? 1 : 0;
            column = b == '\n' ? 1 : column + 1;
        }
        return refuse(
                Code.NOT_TEXT,
                new Place(place.file(), line, column, Key.TOP),
                "this is not plain text in UTF-8",
                kind.otherwise());
    }

    private <T> Optional<T> refuse(Code code, Place where, String message, String hint) {
        problems.add(Problem.of(code, where, message, hint));
        return Optional.empty();
    }
}
