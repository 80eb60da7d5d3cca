package counterpull.engine.load;

import counterpull.engine.motion.Phase;
import java.util.ArrayList;
import java.util.List;

/**
 * What each anchor carries: the vector sum of all lines that hang on it, N. A matched pair on anchors at the sides hangs half
 * on each; on one anchor in the middle both halves hang together and their sideways pulls cancel.
 *
 * @param anchor the anchor
 * @param most the largest load over the range while lines lengthen or are held, N
 * @param position where that is
 */
public record AnchorLoads(Anchor anchor, double most, int position) {
    /** The loads of all anchors in use. */
    public static List<AnchorLoads> of(List<LineSeries> lines, int positions) {
        List<AnchorLoads> loads = new ArrayList<>();
        List<Anchor> seen = new ArrayList<>();
        for (LineSeries line : lines) {
            Anchor anchor = line.line().ends().anchor();
            if (!seen.contains(anchor)) {
                seen.add(anchor);
                loads.add(most(anchor, lines, positions));
            }
        }
        return loads;
    }

    private static AnchorLoads most(Anchor anchor, List<LineSeries> lines, int positions) {
        double most = -1;
        int where = 0;
        for (int i = 0; i < positions; i++) {
            double load = at(anchor, lines, i);
            if (load > most) {
                most = load;
                where = i;
            }
        }
        return new AnchorLoads(anchor, most, where);
    }

    private static double at(Anchor anchor, List<LineSeries> lines, int i) {
        double along = 0;
        double across = 0;
        double aside = 0;
        for (LineSeries line : lines) {
            if (line.line().ends().anchor().equals(anchor)) {
                boolean half = anchor.lateral() != 0;
                double strands = line.line().strands() * (half ? 0.5 : 1);
                along += strands * line.along(Phase.HELD, i);
                across += strands * line.across(Phase.HELD, i);
                aside += half ? strands * line.aside(Phase.HELD, i) : 0;
            }
        }
        return Math.sqrt(along * along + across * across + aside * aside);
    }
}
