package counterpull.bench;

import java.util.ArrayList;
import java.util.List;

/**
 * Something to say about readings, as a sentence in which every number keeps its kind, so that a view can say it in a reader's own
 * units. It names the reading as the person knows it ("pull 3", "the second way down at 40 cm"), the value and the limit.
 *
 * @param weight how much it weighs
 * @param code stable, lower case with hyphens ("force-falls"), never reused for another meaning
 * @param sentence the sentence's parts, without a full stop
 */
public record Remark(Weight weight, String code, List<Piece> sentence) {
    /** How much a remark weighs. */
    public enum Weight {
        /** No result can come of these readings. */
        REFUSES,
        /** A result came, and this makes it doubtful. */
        DOUBTFUL,
        /** Good to know. */
        NOTE
    }

    /** A part of a sentence. */
    public sealed interface Piece permits Text, Amount {}

    /**
     * Words.
     *
     * @param words with the spaces that they need
     */
    public record Text(String words) implements Piece {}

    /**
     * A number with its unit.
     *
     * @param value SI
     * @param kind what it measures
     */
    public record Amount(double value, Kind kind) implements Piece {}

    public Remark {
        sentence = List.copyOf(sentence);
    }

    /** Begins a remark that refuses. */
    public static Remark refuses(String code, String words) {
        return new Remark(Weight.REFUSES, code, List.of(new Text(words)));
    }

    /** Begins a remark that makes a result doubtful. */
    public static Remark doubts(String code, String words) {
        return new Remark(Weight.DOUBTFUL, code, List.of(new Text(words)));
    }

    /** Begins a remark that is good to know. */
    public static Remark note(String code, String words) {
        return new Remark(Weight.NOTE, code, List.of(new Text(words)));
    }

    /** The same with more words. */
    public Remark then(String words) {
        return and(new Text(words));
    }

    /** The same with a number. */
    public Remark then(double value, Kind kind) {
        return and(new Amount(value, kind));
    }

    private Remark and(Piece piece) {
        List<Piece> more = new ArrayList<>(sentence);
        more.add(piece);
        return new Remark(weight, code, more);
    }

    /** Whether no result can come of the readings. */
    public boolean refuses() {
        return weight == Weight.REFUSES;
    }

    /** The sentence with its numbers in SI, for tests and for programs. */
    public String inSi() {
        StringBuilder words = new StringBuilder();
        for (Piece piece : sentence) {
            if (piece instanceof Text text) {
                words.append(text.words());
            } else if (piece instanceof Amount amount) {
                words.append(amount.kind().inSi(amount.value()));
            }
        }
        return words.toString();
    }
}
