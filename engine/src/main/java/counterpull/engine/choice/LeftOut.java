package counterpull.engine.choice;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.LegPath;
import counterpull.engine.motion.PressMotion;
import java.util.List;

/**
 * What a shallower stop leaves out of the range that the person's own stop would give. Without it a shorter range would
 * look better only because it skips what is hard to serve; so the target there counts as missed in full.
 *
 * @param positions how many of the own range's positions lie below the stop
 * @param of how many there are
 * @param sum the target's squares at those left out, added up
 */
record LeftOut(int positions, int of, double sum) {
    private static final double TOUCH = 1e-9;

    /** Against the deepest of the places in the same stance. */
    static LeftOut of(List<Candidate.Place> places, Candidate.Place place, EffortTarget target) {
        PressMotion own = deepest(places, place).ground().motion();
        LegPath driving = own.path(own.stroke().reference());
        int below = 0;
        double sum = 0;
        while (own.plate(below) < place.stroke().bottom() - TOUCH) {
            double wanted = target.at(driving.angle(Joint.KNEE, below));
            sum += wanted * wanted;
            below++;
        }
        return new LeftOut(below, own.positions(), sum);
    }

    private static Candidate.Place deepest(List<Candidate.Place> places, Candidate.Place place) {
        Candidate.Place deepest = place;
        for (Candidate.Place other : places) {
            boolean same = other.stance().equals(place.stance());
            boolean deeper = other.stroke().bottom() < deepest.stroke().bottom();
            deepest = same && deeper ? other : deepest;
        }
        return deepest;
    }

    /** Shortfall over the whole own range, from the shortfall over what is left of it. */
    double shortfall(double inside) {
        return positions == 0 ? inside : Math.sqrt(((of - positions) * inside * inside + sum) / of);
    }
}
