package counterpull.picture;

import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;

/** Finds free room for words: the first candidate wins unless a later one covers less. */
final class LabelRoom {
    private static final int WORD_ON_WORD = 1000;
    private static final int OUTSIDE = 500;
    private final Box outer;
    private final List<Vec> obstacles;
    private final List<Box> taken = new ArrayList<>();

    LabelRoom(Box outer, List<Vec> obstacles) {
        this.outer = outer;
        this.obstacles = obstacles;
    }

    void take(Box box) {
        taken.add(box);
    }

    /** The best of several places for a box; it counts as taken from then on. */
    Box place(List<Box> candidates) {
        Box best = candidates.get(0);
        int least = Integer.MAX_VALUE;
        for (Box candidate : candidates) {
            int cost = cost(candidate.grown(1.5));
            if (cost < least) {
                least = cost;
                best = candidate;
            }
        }
        taken.add(best);
        return best;
    }

    private int cost(Box box) {
        int cost = box.inside(outer) ? 0 : OUTSIDE;
        for (Box other : taken) {
            cost += box.overlaps(other) ? WORD_ON_WORD : 0;
        }
        for (Vec point : obstacles) {
            cost += box.contains(point) ? 1 : 0;
        }
        return cost;
    }

    List<Box> taken() {
        return List.copyOf(taken);
    }
}
