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
    private final List<ElasticLine> lines;
    private final LineSeries[] series;
    private final LineEffect[] effects;
    private final List<int[]> sets = new ArrayList<>();

    private LinesOnGround(List<ElasticLine> lines) {
        this.lines = lines;
        series = new LineSeries[lines.size()];
        effects = new LineEffect[lines.size()];
    }

    static LinesOnGround of(Kit kit, Groundwork ground, Rejections rejections) {
        LinesOnGround found = new LinesOnGround(LineSet.lines(kit));
        for (int k = 0; k < found.lines.size(); k++) {
            found.lay(k, ground, rejections);
        }
        for (int[] set : LineSet.sets(kit, found.lines)) {
            if (found.usable(set)) {
                found.sets.add(set);
            }
        }
        return found;
    }

    private void lay(int k, Groundwork ground, Rejections rejections) {
        try {
            LineSeries laid = ground.series(lines.get(k));
            LineEffect effect = LineEffect.of(laid, ground.motion().positions());
            if (effect == LineEffect.RELIEVES_LOW || effect == LineEffect.ADDS_HIGH) {
                series[k] = laid;
                effects[k] = effect;
            } else if (effect != LineEffect.NEVER_TIGHTENS) {
                rejections.unfit(lines.get(k).words(), effect);
            }
        } catch (Refusal refusal) {
            rejections.refused(lines.get(k).words(), refusal);
        }
    }

    private boolean usable(int[] set) {
        for (int k : set) {
            if (effects[k] == null) {
                return false;
            }
        }
        return true;
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
            found.add(series[k]);
        }
        return found;
    }

    /** Which strategy a set of lines belongs to. */
    Strategy strategy(int set) {
        boolean relieves = false;
        boolean adds = false;
        for (int k : sets.get(set)) {
            relieves |= effects[k] == LineEffect.RELIEVES_LOW;
            adds |= effects[k] == LineEffect.ADDS_HIGH;
        }
        if (relieves && adds) {
            return Strategy.BOTH;
        }
        return relieves ? Strategy.RELIEVE_LOW : adds ? Strategy.ADD_HIGH : Strategy.LOAD_ALONE;
    }
}
