package counterpull.engine.elastic;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import java.util.ArrayList;
import java.util.List;

/**
 * The shortening force as it was measured on a bench: a monotone cubic through the readings, force against stretch.
 *
 * <p>It starts at natural length with no force. Where the readings stop short of the tested maximum the curve is closed
 * there with the loading force, for that is where a measured loop turns; a reading at the maximum stays as measured. It
 * must not lie above the loading curve: checked at every reading and at {@value #CHECKS} equal steps of stretch, to 1e-9
 * of the largest force.
 *
 * <p>One curve serves every turning point below the maximum, although a real loop turned earlier would join its loading
 * curve there: a simplification, since a strand on a machine always starts from the same low end.
 *
 * <p>Source: Fritsch FN &amp; Carlson RE 1980, SIAM J Numer Anal 17:238–246.
 */
public final class UnloadingCurve implements Unloading {
    private static final int CHECKS = 1000;
    private static final double ROUNDING = 1e-9;

    private final double naturalLength;
    private final List<BenchReading> readings;
    private final MonotoneCubic curve;

    /**
     * @param naturalLength of the piece on the bench, m, above zero
     * @param readings of one strand of that piece while it shortened, listed in order of rising length
     */
    public UnloadingCurve(double naturalLength, List<BenchReading> readings) {
        this.naturalLength = naturalLength;
        this.readings = List.copyOf(readings);
        this.curve = BenchPoints.curve(naturalLength, this.readings);
    }

    /** Natural length of the piece on the bench, m. */
    public double naturalLength() {
        return naturalLength;
    }

    /** The readings, with the closing point if one was added. */
    public List<BenchReading> readings() {
        return readings;
    }

    @Override
    public double tension(ElasticLaw law, double stretch) {
        return stretch <= 1 ? 0 : curve.value(stretch);
    }

    @Override
    public double energyReturned(ElasticLaw law, double stretch) {
        return stretch <= 1 ? 0 : curve.integral(stretch);
    }

    @Override
    public Unloading fittedTo(ElasticLaw law, double largestStretch) {
        requireReadingsBelow(law, largestStretch);
        UnloadingCurve closed = closedAt(law, largestStretch);
        closed.requireCurveBelow(law, largestStretch);
        return closed;
    }

    private UnloadingCurve closedAt(ElasticLaw law, double largestStretch) {
        if (largestStretch <= curve.last() * (1 + ROUNDING)) {
            return this;
        }
        List<BenchReading> more = new ArrayList<>(readings);
        more.add(new BenchReading(largestStretch * naturalLength, law.tension(largestStretch)));
        return new UnloadingCurve(naturalLength, more);
    }

    private void requireReadingsBelow(ElasticLaw law, double largestStretch) {
        for (int i = 0; i < readings.size(); i++) {
            double stretch = readings.get(i).length() / naturalLength;
            if (stretch <= largestStretch) {
                requireBelow(law, stretch, largestStretch, "unloading reading " + (i + 1));
            }
        }
    }

    private void requireCurveBelow(ElasticLaw law, double largestStretch) {
        double top = Math.min(largestStretch, curve.last());
        for (int i = 1; i <= CHECKS; i++) {
            double stretch = Math.min(top, 1 + (top - 1) * i / CHECKS);
            requireBelow(law, stretch, largestStretch, "the unloading curve");
        }
    }

    private void requireBelow(ElasticLaw law, double stretch, double largestStretch, String name) {
        double given = curve.value(stretch);
        double put = law.tension(stretch);
        if (given > put + ROUNDING * law.tension(largestStretch)) {
            throw new Refusal(
                    Fault.OUTSIDE_LIMITS,
                    name,
                    given,
                    put,
                    "N",
                    name + " gives " + Figures.of(given) + " N at " + Figures.of(stretch * naturalLength)
                            + " m; it must not be more than the " + Figures.of(put) + " N of loading there");
        }
    }

    @Override
    public String formula() {
        return "while shortening: monotone cubic through " + readings.size() + " readings";
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof UnloadingCurve that
                && naturalLength == that.naturalLength
                && readings.equals(that.readings);
    }

    @Override
    public int hashCode() {
        return 31 * Double.hashCode(naturalLength) + readings.hashCode();
    }

    @Override
    public String toString() {
        return "UnloadingCurve[naturalLength=" + naturalLength + ", readings=" + readings + "]";
    }

    @Override
    public Unloading times(double factor) {
        return new UnloadingCurve(naturalLength, BenchPoints.times(factor, readings));
    }
}
