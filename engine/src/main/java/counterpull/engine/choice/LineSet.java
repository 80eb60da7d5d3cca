package counterpull.engine.choice;

import counterpull.engine.elastic.Rubber;
import counterpull.engine.load.Anchor;
import counterpull.engine.load.Attachment;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.Hang;
import counterpull.engine.load.Placement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Builds the lines and the sets of lines that a kit allows, in a fixed order. A piece of rubber is used once. */
final class LineSet {
    private LineSet() {}

    /** Every single line of the kit. */
    static List<ElasticLine> lines(Kit kit) {
        List<ElasticLine> found = new ArrayList<>();
        for (RubberStock stock : kit.rubber()) {
            for (Anchor anchor : kit.hooks().anchors()) {
                for (Attachment attachment : kit.hooks().attachments()) {
                    for (double dead : kit.rules().deadLengths()) {
                        addAll(found, kit, stock, new Way(new ElasticLine.Ends(anchor, attachment), dead));
                    }
                }
            }
        }
        return found;
    }

    private record Way(ElasticLine.Ends ends, double dead) {
        Placement placement() {
            boolean middle = ends.anchor().lateral() == 0 && ends.attachment().lateral() == 0;
            return middle ? Placement.CENTRED : Placement.MATCHED_PAIR;
        }
    }

    private static void addAll(List<ElasticLine> found, Kit kit, RubberStock stock, Way way) {
        int step = way.placement() == Placement.CENTRED ? 1 : 2;
        for (Hang hang : kit.rules().hangs()) {
            for (int pieces = step; pieces <= stock.count(); pieces += step) {
                if (pieces * hang.strands() <= kit.rules().mostStrands()) {
                    found.add(new ElasticLine(
                            stock.rubber(), new ElasticLine.Pieces(pieces, hang, way.placement()), way.dead, way.ends));
                }
            }
        }
    }

    /** Every set of up to the allowed number of lines, the empty set first, as indexes into the list of lines. */
    static List<int[]> sets(Kit kit, List<ElasticLine> lines) {
        List<int[]> sets = new ArrayList<>();
        sets.add(new int[0]);
        int from = 0;
        for (int size = 1; size <= kit.rules().mostLines(); size++) {
            int to = sets.size();
            for (int s = from; s < to; s++) {
                extend(sets, sets.get(s), kit, lines);
            }
            from = to;
        }
        return sets;
    }

    private static void extend(List<int[]> sets, int[] set, Kit kit, List<ElasticLine> lines) {
        int next = set.length == 0 ? 0 : set[set.length - 1] + 1;
        for (int k = next; k < lines.size(); k++) {
            int[] longer = java.util.Arrays.copyOf(set, set.length + 1);
            longer[set.length] = k;
            if (onHand(longer, kit, lines) && apart(longer, lines)) {
                sets.add(longer);
            }
        }
    }

    private static boolean onHand(int[] set, Kit kit, List<ElasticLine> lines) {
        Map<Rubber, Integer> used = new HashMap<>();
        for (int k : set) {
            used.merge(lines.get(k).rubber(), lines.get(k).pieces().count(), Integer::sum);
        }
        for (RubberStock stock : kit.rubber()) {
            if (used.getOrDefault(stock.rubber(), 0) > stock.count()) {
                return false;
            }
        }
        return true;
    }

    // the same pieces hung the same way twice are one line with more pieces
    private static boolean apart(int[] set, List<ElasticLine> lines) {
        ElasticLine last = lines.get(set[set.length - 1]);
        for (int i = 0; i < set.length - 1; i++) {
            ElasticLine other = lines.get(set[i]);
            if (other.rubber().equals(last.rubber())
                    && other.ends().equals(last.ends())
                    && other.deadLength() == last.deadLength()
                    && other.pieces().hang() == last.pieces().hang()) {
                return false;
            }
        }
        return true;
    }
}
