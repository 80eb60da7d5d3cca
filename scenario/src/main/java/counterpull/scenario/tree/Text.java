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

/** A file's text: at most one mebibyte of clean UTF-8, else a problem. */
final class Text {
    static final int LARGEST = 1 << 20;

    private Text() {}

    /** The text; empty once a problem is reported. */
    static Optional<String> of(Source source, Problems problems) {
        Place place = Place.file(Shown.shortened(source.name()));
        return bytes(source, place, problems).flatMap(bytes -> decoded(bytes, place, problems));
    }

    private static Optional<byte[]> bytes(Source source, Place place, Problems problems) {
        try {
            if (source.size() > LARGEST) {
                return tooLarge(place, problems);
            }
            try (InputStream in = source.open()) {
                byte[] bytes = in.readNBytes(LARGEST + 1);
                return bytes.length > LARGEST ? tooLarge(place, problems) : Optional.of(bytes);
            }
        } catch (NoSuchFileException missing) {
            return refuse(
                    problems, Code.FILE_NOT_FOUND, place, "there is no such file", "Check the name and the folder");
        } catch (IOException | SecurityException unreadable) {
            return refuse(
                    problems, Code.NOT_READABLE, place, "the file cannot be read", "Is it a file that you may open?");
        }
    }

    private static <T> Optional<T> tooLarge(Place place, Problems problems) {
        return refuse(
                problems,
                Code.TOO_LARGE,
                place,
                "the file is larger than 1 MiB; a scenario has a few kilobytes",
                "Is it the right file?");
    }

    private static Optional<String> decoded(byte[] bytes, Place place, Problems problems) {
        CharsetDecoder strict = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CharBuffer text = CharBuffer.allocate(bytes.length + 1);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        boolean bad = strict.decode(in, text, true).isError();
        text.flip();
        if (bad) {
            return notText(bytes, in.position(), place, problems);
        }
        String decoded = text.toString();
        int control = firstControl(decoded);
        if (control >= 0) {
            int at = decoded.substring(0, control).getBytes(StandardCharsets.UTF_8).length;
            return notText(bytes, at, place, problems);
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

    private static Optional<String> notText(byte[] bytes, int at, Place place, Problems problems) {
        int line = 1;
        int column = 1;
        for (byte b : Arrays.copyOf(bytes, at)) {
            line += b == '\n' ? 1 : 0;
            column = b == '\n' ? 1 : column + 1;
        }
        return refuse(
                problems,
                Code.NOT_TEXT,
                new Place(place.file(), line, column, Key.TOP),
                "this is not plain text in UTF-8",
                "Save it as plain text in UTF-8; a scenario is YAML or JSON, not a word processor's file");
    }

    private static <T> Optional<T> refuse(Problems problems, Code code, Place place, String message, String hint) {
        problems.add(Problem.of(code, place, message, hint));
        return Optional.empty();
    }
}
