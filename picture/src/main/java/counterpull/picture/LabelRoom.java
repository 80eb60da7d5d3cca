package counterpull.picture;

import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;

/** Finds free room for words: the place that covers least and is nearest wins; among equals the first. */
final class LabelRoom {
    private static final double WORD_ON_WORD = 1000;
    private static final double OUTSIDE = 500;
    private static final double ON_LINE = 3.5;
    private static final double LEADER_ON_WORD = 60;
    private final Box outer;
    private final List<Vec> obstacles;
    private final List<Box> taken = new ArrayList<>();

    LabelRoom(Box outer, List<Vec> obstacles) {
        this.outer = outer;
        this.obstacles = new ArrayList<>(obstacles);
    }

    /**
     * A place for a word.
     *
     * @param box where it would stand
     * @param penalty what speaks against it besides what it covers
     */
    record Spot(Box box, double penalty) {}

    void take(Box box) {
        taken.add(box);
    }

    /** The best of several places for a box; it counts as taken from then on. */
    Box place(List<Box> candidates) {
        List<Spot> spots = new ArrayList<>();
        for (Box candidate : candidates) {
            spots.add(new Spot(candidate, 0));
        }
        return place(spots, List.of());
    }

    /** The best of several places for a word that leaders join to its owner's points. */
    Box place(List<Spot> spots, List<Vec> owner) {
        Spot best = spots.get(0);
        double least = Double.POSITIVE_INFINITY;
        for (Spot spot : spots) {
            double cost = spot.penalty < least ? cost(spot, owner) : Double.POSITIVE_INFINITY;
            if (cost < least) {
                least = cost;
                best = spot;
            }
        }
        taken.add(best.box);
        for (Vec at : owner) {
            obstacles.addAll(leader(at, best.box));
        }
        return best.box;
    }

    private double cost(Spot spot, List<Vec> owner) {
        Box box = spot.box.grown(1.5);
        double cost = spot.penalty + (box.inside(outer) ? 0 : OUTSIDE);
        for (Box other : taken) {
            cost += box.overlaps(other) ? WORD_ON_WORD : 0;
        }
        for (Vec point : obstacles) {
            cost += box.contains(point) ? ON_LINE : 0;
        }
        for (Vec at : owner) {
            cost += leaderCost(at, spot.box);
        }
        return cost;
    }

    private double leaderCost(Vec at, Box box) {
        double cost = 0;
        for (Vec point : leader(at, box)) {
            for (Box other : taken) {
                cost += other.contains(point) ? LEADER_ON_WORD : 0;
            }
        }
        return cost;
    }

    private static List<Vec> leader(Vec at, Box box) {
        Vec end = box.nearest(at);
        List<Vec> points = new ArrayList<>();
        double length = end.minus(at).norm();
        for (double s = 6; s < length - 2; s += 5) {
            points.add(at.plus(end.minus(at).times(s / length)));
        }
        return points;
    }

    List<Box> taken() {
        return List.copyOf(taken);
    }
}
