package counterpull.engine.choice;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.LegPath;
import counterpull.engine.motion.PressMotion;

/**
 * What a shallower stop leaves out of the range that the person's own stop would give. Without it a shorter range would
 * look better only because it skips what is hard to serve; so the target there counts as missed in full.
 *
 * @param positions how many of the own range's positions lie below the stop
 * @param of how many there are
 * @param sum the target's squares at those left out, added up
 */
public record LeftOut(int positions, int of, double sum) {
    /** At the person's own stop nothing is left out. */
    public static final LeftOut NOTHING = new LeftOut(0, 1, 0);

    private static final double TOUCH = 1e-9;

    /**
     * What a range leaves out of a deeper one.
     *
     * @param own the deeper range
     * @param bottom hip-to-plate distance where the shorter one starts, m
     * @param target what is wanted there
     */
    static LeftOut of(PressMotion own, double bottom, EffortTarget target) {
        LegPath driving = own.path(own.stroke().reference());
        int below = 0;
        double sum = 0;
        while (own.plate(below) < bottom - TOUCH) {
            double wanted = target.at(driving.angle(Joint.KNEE, below));
            sum += wanted * wanted;
            below++;
        }
        return new LeftOut(below, own.positions(), sum);
    }

    /** Shortfall over the whole own range, from the shortfall over what is left of it. */
    public double shortfall(double inside) {
        return positions == 0 ? inside : Math.sqrt(((of - positions) * inside * inside + sum) / of);
    }
}
