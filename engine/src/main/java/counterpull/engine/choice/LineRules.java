package counterpull.engine.choice;

import counterpull.engine.Require;
import counterpull.engine.load.Hang;
import java.util.List;

/**
 * How rubber may be hung.
 *
 * @param hangs the ways to hang a piece
 * @param deadLengths lengths of webbing and links that can be made up, m, 0 to 20; 0 among them for none at all; empty where
 *     no rubber is hung
 * @param mostStrands most strands of one line
 * @param mostLines most lines at once, 0 to 3
 */
public record LineRules(List<Hang> hangs, List<Double> deadLengths, int mostStrands, int mostLines) {
    public LineRules {
        hangs = List.copyOf(hangs);
        deadLengths = List.copyOf(deadLengths);
        for (double dead : deadLengths) {
            Require.within(dead, new Require.Limits(0, 20), "dead length", "m");
        }
        Require.within(mostStrands, new Require.Limits(0, 12), "most strands of a line", "");
        Require.within(mostLines, new Require.Limits(0, 3), "most lines at once", "");
    }
}
