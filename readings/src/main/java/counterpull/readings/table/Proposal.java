package counterpull.readings.table;

import java.util.List;

/**
 * A mapping as far as a file's headings and cells tell it, with a question for everything that they do not tell.
 *
 * @param grid which rows are what
 * @param mapping with {@link Mapping#OPEN} where there is a question
 * @param questions each a sentence without a full stop
 */
public record Proposal(Grid grid, Mapping mapping, List<String> questions) {
    public Proposal {
        questions = List.copyOf(questions);
    }

    /** What a sheet seems to be. */
    public static Proposal of(Sheet sheet, TableKind kind) {
        Grid grid = Grid.of(sheet, kind);
        return new ProposalFinder(grid, kind).proposal();
    }
}
