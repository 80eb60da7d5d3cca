package counterpull.engine.elastic;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;

/**
 * A shortening strand pulls with the same fraction less at every stretch: T↓ = (1 − loss) · T.
 *
 * <p>Common practice, no source; measured curves close at the turn, this one jumps there. Unfilled natural rubber loses in
 * the order of 5–15 % of the loading energy below twice its length (from memory): measure it.
 *
 * @param loss a pure number, 0 ≤ loss &lt; 1
 */
public record LossFraction(double loss) implements Unloading {
    /** No loss: the rubber gives back all that was put in. */
    public static final LossFraction NONE = new LossFraction(0);

    public LossFraction {
        Require.within(loss, new Require.Limits(0, Double.POSITIVE_INFINITY), "loss fraction", "");
        if (loss >= 1) {
            throw new Refusal(Fault.OUTSIDE_LIMITS, "loss fraction", loss, 1, "", "loss fraction must be less than 1");
        }
    }

    @Override
    public double tension(ElasticLaw law, double stretch) {
        return (1 - loss) * law.tension(stretch);
    }

    @Override
    public double energyReturned(ElasticLaw law, double stretch) {
        return (1 - loss) * law.energy(stretch);
    }

    @Override
    public Unloading fittedTo(ElasticLaw law, double largestStretch) {
        return this;
    }

    @Override
    public String formula() {
        return "while shortening: " + Figures.of(100 * loss) + " % less";
    }

    @Override
    public Unloading times(double factor) {
        return this;
    }
}
