package counterpull.engine.uncertainty;

import counterpull.engine.Refusal;
import counterpull.engine.Require;
import counterpull.engine.profile.Profile;

/**
 * Draws what an answer rests on again and again, in numbered parts. Each part has its own sequence of random numbers, so that the answer
 * is the same whoever does which part and in which order; threads and stopping live outside.
 *
 * @param <T> what is computed
 */
public final class Sampling<T extends Trial<T>> {
    /** Draws of one part. */
    public static final int PART = 100;

    private static final Require.Limits DRAWS = new Require.Limits(1, 10_000_000);

    private final Doubts<T> doubts;
    private final Looked looked;
    private final int seed;
    private final int draws;
    private final Profile nominal;

    /**
     * Lays the work out.
     *
     * @param doubts what is known only so far
     * @param looked what is looked at
     * @param seed any number; the same gives the same answer
     * @param draws how many, 1 to 10,000,000
     */
    public Sampling(Doubts<T> doubts, Looked looked, int seed, int draws) {
        Require.within(draws, DRAWS, "draws", "");
        this.doubts = doubts;
        this.looked = looked;
        this.seed = seed;
        this.draws = draws;
        nominal = doubts.nominal().profile();
    }

    /** How many parts there are, numbered from 0. */
    public int parts() {
        return (draws + PART - 1) / PART;
    }

    /** An empty tally, for one who draws. */
    public Tally tally() {
        return new Tally(nominal, doubts.nominal().limits(), looked);
    }

    /** Draws one part and counts it. */
    public void draw(int part, Tally into) {
        Generator generator = new Generator(seed, part);
        double[] z = new double[doubts.dimensions()];
        int count = Math.min(PART, draws - part * PART);
        for (int k = 0; k < count; k++) {
            generator.normals(z);
            draw(z, into);
        }
    }

    private void draw(double[] z, Tally into) {
        try {
            into.add(doubts.drawn(z).profile());
        } catch (Refusal refusal) {
            into.refused(refusal.fault());
        }
    }

    /** The bands that the tally of all parts holds. */
    public EffortBands bands(Tally all) {
        return new EffortBands(all, draws);
    }

    /** All parts, one after the other. */
    public EffortBands bands() {
        Tally tally = tally();
        for (int part = 0; part < parts(); part++) {
            draw(part, tally);
        }
        return bands(tally);
    }
}
