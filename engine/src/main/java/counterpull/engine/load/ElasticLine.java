package counterpull.engine.load;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;
import counterpull.engine.elastic.Rubber;
import counterpull.engine.elastic.Strand;

/**
 * Rubber between an anchor and an attachment: pieces side by side, each hung singly or doubled, with webbing and links of
 * a stated length in series.
 *
 * <p>Refuses a line whose sideways pulls do not cancel: a centred line has both ends in the middle plane, anything off it
 * is a matched pair of equal halves.
 *
 * @param rubber what the pieces are
 * @param pieces how they hang
 * @param deadLength w, what does not stretch, of each strand's way, m, zero or more
 * @param ends anchor and attachment
 */
public record ElasticLine(Rubber rubber, Pieces pieces, double deadLength, Ends ends) {
    private static final Require.Limits DEAD = new Require.Limits(0, 20);

    public ElasticLine {
        Require.within(deadLength, DEAD, "dead length of the line with " + rubber.tag(), "m");
        balanced(pieces, ends);
    }

    private static void balanced(Pieces pieces, Ends ends) {
        boolean aside = ends.anchor().lateral() != 0 || ends.attachment().lateral() != 0;
        if (pieces.placement() == Placement.CENTRED && aside) {
            throw new Refusal(
                    Fault.UNBALANCED_SIDE_PULL,
                    "place to the side of " + ends.anchor().name() + " – "
                            + ends.attachment().name(),
                    Math.max(
                            Math.abs(ends.anchor().lateral()),
                            Math.abs(ends.attachment().lateral())),
                    0,
                    "m",
                    "a single line at the side would twist the carriage: hang a matched pair, or use the middle");
        }
        if (pieces.placement() == Placement.MATCHED_PAIR && pieces.count() % 2 != 0) {
            throw new Refusal(
                    Fault.UNBALANCED_SIDE_PULL,
                    "pieces of a matched pair",
                    pieces.count(),
                    pieces.count() + 1,
                    "",
                    "a matched pair needs the same number of pieces on each side");
        }
    }

    /**
     * Pieces side by side.
     *
     * @param count how many pieces, 1 or more
     * @param hang how each hangs
     * @param placement where they run
     */
    public record Pieces(int count, Hang hang, Placement placement) {
        public Pieces {
            Require.within(count, new Require.Limits(1, 50), "pieces of rubber in a line", "");
        }

        /** One piece, end to end, in the middle. */
        public static Pieces one() {
            return new Pieces(1, Hang.SINGLE, Placement.CENTRED);
        }
    }

    /**
     * The two ends of a line.
     *
     * @param anchor on the end of the sled that does not ride
     * @param attachment on the end that rides
     */
    public record Ends(Anchor anchor, Attachment attachment) {}

    /** Strands that pull side by side. */
    public int strands() {
        return pieces.count() * pieces.hang().strands();
    }

    /** One of them. */
    public Strand strand() {
        return pieces.hang() == Hang.DOUBLED ? rubber.doubled() : rubber.single();
    }

    /** How the line reads to a person: tag, strands and the two ends. */
    public String words() {
        return rubber.tag() + ", " + pieces.count() + " × " + pieces.hang().words() + ", "
                + ends.anchor().name() + " → " + ends.attachment().name();
    }

    /** The same line of another rubber. */
    public ElasticLine with(Rubber other) {
        return new ElasticLine(other, pieces, deadLength, ends);
    }

    /** The same line between other ends. */
    public ElasticLine with(Ends other) {
        return new ElasticLine(rubber, pieces, deadLength, other);
    }

    /** The same line with another dead length, m. */
    public ElasticLine withDeadLength(double length) {
        return new ElasticLine(rubber, pieces, length, ends);
    }
}
