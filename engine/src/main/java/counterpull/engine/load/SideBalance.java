package counterpull.engine.load;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import java.util.List;

/** Whether a line's pulls to the side cancel: a single one runs in one plane, anything else is a matched pair of equal halves. */
final class SideBalance {
    private SideBalance() {}

    static double[] laterals(LineEnd from, List<Guide> guides, LineEnd to) {
        double[] laterals = new double[guides.size() + 2];
        laterals[0] = from.lateral();
        for (int k = 0; k < guides.size(); k++) {
            laterals[k + 1] = guides.get(k).lateral();
        }
        laterals[laterals.length - 1] = to.lateral();
        return laterals;
    }

    /** Refuses what does not cancel; on a machine a single line must also run in the middle plane, for it would twist it. */
    static void require(String name, ElasticLine.Pieces pieces, double[] laterals, boolean twists) {
        if (pieces.placement() == Placement.MATCHED_PAIR) {
            requireEven(name, pieces.count());
            return;
        }
        double plane = twists ? 0 : laterals[0];
        for (double lateral : laterals) {
            if (lateral != plane) {
                throw new Refusal(
                        Fault.UNBALANCED_SIDE_PULL,
                        "place to the side along the " + name,
                        lateral,
                        plane,
                        "m",
                        "a single line that pulls to the side is not balanced: hang a matched pair, or keep it in one plane");
            }
        }
    }

    private static void requireEven(String name, int count) {
        if (count % 2 != 0) {
            throw new Refusal(
                    Fault.UNBALANCED_SIDE_PULL,
                    "pieces of the " + name,
                    count,
                    count + 1,
                    "",
                    "a matched pair needs the same number of pieces on each side");
        }
    }
}
