package counterpull.engine.choice;

import counterpull.engine.Refusal;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.LineSeries;
import counterpull.engine.profile.Groundwork;
import java.util.ArrayList;
import java.util.List;

/**
 * The sets of lines that make sense over one range: every line within its tested length, tightening somewhere, and either
 * taking load off most at the bottom or adding it most at the top.
 */
final class LinesOnGround {
    private final List<ElasticLine> lines = new ArrayList<>();
    private final List<LineSeries> series = new ArrayList<>();
    private final List<LineEffect> effects = new ArrayList<>();
    private final List<int[]> sets = new ArrayList<>();

    private LinesOnGround() {}

    static LinesOnGround of(Kit kit, Groundwork ground, Rejections rejections) {
        LinesOnGround found = new LinesOnGround();
        for (ElasticLine line : LineSet.lines(kit)) {
            found.lay(line, ground, rejections);
        }
        // sets are made of what is usable here only: sets of everything would be far too many
        found.sets.addAll(LineSet.sets(kit, found.lines));
        return found;
    }

    private void lay(ElasticLine line, Groundwork ground, Rejections rejections) {
        try {
            LineSeries laid = ground.series(line);
            LineEffect effect = LineEffect.of(laid, ground.motion().positions());
            if (effect == LineEffect.RELIEVES_LOW || effect == LineEffect.ADDS_HIGH) {
                lines.add(line);
                series.add(laid);
                effects.add(effect);
            } else if (effect != LineEffect.NEVER_TIGHTENS) {
                rejections.unfit(words(line), effect);
            }
        } catch (Refusal refusal) {
            rejections.refused(words(line), refusal);
        }
    }

    // the same rubber at the same hooks may fit with other webbing
    private static String words(ElasticLine line) {
        double dead = line.deadLength();
        return line.words() + (dead == 0 ? "" : ", dead length " + Math.round(dead * 1000) + " mm");
    }

    int count() {
        return sets.size();
    }

    List<ElasticLine> lines(int set) {
        List<ElasticLine> found = new ArrayList<>();
        for (int k : sets.get(set)) {
            found.add(lines.get(k));
        }
        return found;
    }

    List<LineSeries> series(int set) {
        List<LineSeries> found = new ArrayList<>();
        for (int k : sets.get(set)) {
            found.add(series.get(k));
        }
        return found;
    }

    /** Which strategy a set of lines belongs to. */
    Strategy strategy(int set) {
        boolean relieves = false;
        boolean adds = false;
        for (int k : sets.get(set)) {
            relieves |= effects.get(k) == LineEffect.RELIEVES_LOW;
            adds |= effects.get(k) == LineEffect.ADDS_HIGH;
        }
        if (relieves && adds) {
            return Strategy.BOTH;
        }
        return relieves ? Strategy.RELIEVE_LOW : adds ? Strategy.ADD_HIGH : Strategy.LOAD_ALONE;
    }
}
