package counterpull.engine.elastic;

import java.util.List;

/**
 * A rubber as it was measured on a bench: a monotone cubic through the readings, force against stretch.
 *
 * <p>The point at natural length with no force is always part of it. Readings are in order of rising length, their forces
 * must not fall; the first that breaks this is named. Energy is the exact integral of the cubic pieces. Past the last
 * reading there is no value (NaN).
 *
 * <p>Source: Fritsch FN &amp; Carlson RE 1980, SIAM J Numer Anal 17:238–246.
 */
public final class BenchCurve implements ElasticLaw {
    private final double naturalLength;
    private final List<BenchReading> readings;
    private final MonotoneCubic curve;

    /**
     * @param naturalLength of the piece on the bench, m, above zero
     * @param readings of one strand of that piece while it was lengthened, in order of rising length
     */
    public BenchCurve(double naturalLength, List<BenchReading> readings) {
        this.naturalLength = naturalLength;
        this.readings = List.copyOf(readings);
        this.curve = BenchPoints.curve(naturalLength, this.readings);
    }

    /** Natural length of the piece on the bench, m. */
    public double naturalLength() {
        return naturalLength;
    }

    /** The readings as they were given. */
    public List<BenchReading> readings() {
        return readings;
    }

    @Override
    public double tension(double stretch) {
        return stretch <= 1 ? 0 : curve.value(stretch);
    }

    @Override
    public double slope(double stretch) {
        return stretch < 1 ? 0 : curve.slope(stretch);
    }

    @Override
    public double energy(double stretch) {
        return stretch <= 1 ? 0 : curve.integral(stretch);
    }

    @Override
    public double largestStretch() {
        return curve.last();
    }

    @Override
    public String formula() {
        return "bench curve: monotone cubic through " + readings.size() + " readings, to "
                + Figures.of(largestStretch()) + " times natural length";
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof BenchCurve that
                && naturalLength == that.naturalLength
                && readings.equals(that.readings);
    }

    @Override
    public int hashCode() {
        return 31 * Double.hashCode(naturalLength) + readings.hashCode();
    }

    @Override
    public String toString() {
        return "BenchCurve[naturalLength=" + naturalLength + ", readings=" + readings + "]";
    }

    @Override
    public ElasticLaw times(double factor) {
        return new BenchCurve(naturalLength, BenchPoints.times(factor, readings));
    }
}
