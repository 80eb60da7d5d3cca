package counterpull.bench.tubing;

import counterpull.bench.fit.Noise;
import counterpull.engine.Refusal;
import counterpull.engine.elastic.ElasticLaw;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/** A candidate beside the curve that it stands for. */
record Tried(Candidate candidate, Optional<CurveFit> curve, LawOf law) {
    /** Makes the engine's law, or a smooth curve's, for an area. */
    interface LawOf {
        ElasticLaw law(double area);
    }

    /**
     * Readings that must be left over beside a law's own numbers, scatter and one: with fewer the last term of AICc, 2K(K + 1) over them, is
     * larger than any misfit, and a straight line would win over a bent law that leaves a twentieth of what it does.
     */
    private static final int SPARE = 2;

    private static List<Shape> shapes(double longest) {
        return List.of(
                new LinearShape(),
                new TwoConstantShape(),
                new OgdenShape(1, longest),
                new OgdenShape(2, longest),
                new OgdenShape(3, longest));
    }

    /** Every kind of law on the same readings. */
    static List<Tried> all(Sample sample, Area area) {
        List<Tried> all = new ArrayList<>();
        ClosedFit base = null;
        double noise = Math.max(1e-6, sample.forces[sample.size() - 1] * 0.02);
        for (Shape shape : shapes(sample.last() / sample.natural)) {
            Tried tried = closed(shape, sample, area, noise);
            all.add(tried);
            if (tried.curve.isPresent() && shape.parameters() < 3) {
                noise = Math.max(1e-9, Math.min(noise, tried.curve.get().noise()));
            }
            boolean plain = shape instanceof LinearShape || shape instanceof TwoConstantShape;
            base = plain && tried.curve.isPresent() ? (ClosedFit) tried.curve.get() : base;
        }
        all.add(smooth(sample, base));
        return all;
    }

    private static Tried none(Family family, String why) {
        return new Tried(Candidate.refused(family, why), Optional.empty(), area -> null);
    }

    private static Tried closed(Shape shape, Sample sample, Area area, double noise) {
        int least = shape.fewest(sample.stated());
        if (sample.size() < least) {
            return none(shape.family(), "it takes " + least + " readings or more");
        }
        return fitted(shape, sample, area, noise);
    }

    /** The law laid through the readings, however few they are for its intervals. */
    static Tried fitted(Shape shape, Sample sample, Area area, double noise) {
        try {
            ClosedFit fit = ClosedFit.of(shape, sample, noise);
            ElasticLaw law = shape.law(fit.fit.parameters(), area.squareMetres());
            List<Double> residuals = residuals(sample, length -> fit.at(length));
            OptionalDouble crossed = finite(sample.size() > shape.parameters() ? fit.crossValidation() : Double.NaN);
            Candidate.Score score = new Candidate.Score(
                    spare(sample, shape) < SPARE
                            ? OptionalDouble.empty()
                            : aicc(sample, residuals, fit.naturalGap(), fit.numbers()),
                    crossed,
                    fit.numbers());
            Candidate candidate = new Candidate(shape.family(), shape.constants(fit, area), residuals, score, "");
            return new Tried(candidate, Optional.of(fit), square -> law);
        } catch (Refusal refused) {
            return none(shape.family(), refused.getMessage());
        }
    }

    private static int spare(Sample sample, Shape shape) {
        return sample.size() - shape.parameters() - (sample.stated() ? 0 : 1) - 1;
    }

    private static Tried smooth(Sample sample, ClosedFit base) {
        if (base == null) {
            return none(Family.SMOOTH, "no law at all follows these readings");
        }
        if (!sample.stated()) {
            return none(
                    Family.SMOOTH,
                    "beside a smooth curve scatter cannot be told from a bend: state the scale's accuracy");
        }
        try {
            RisingFit fit = new RisingFit(sample, base);
            List<Double> residuals = residuals(sample, fit::mean);
            Candidate.Score score = new Candidate.Score(
                    aicc(sample, residuals, fit.naturalGap(), fit.numbers()),
                    finite(fit.crossValidation()),
                    fit.numbers());
            ElasticLaw law = SmoothLaw.of(fit, sample);
            return new Tried(
                    new Candidate(Family.SMOOTH, List.of(), residuals, score, ""), Optional.of(fit), area -> law);
        } catch (Refusal refused) {
            return none(Family.SMOOTH, refused.getMessage());
        }
    }

    private static List<Double> residuals(Sample sample, DoubleUnaryOperator force) {
        List<Double> residuals = new ArrayList<>();
        for (int i = 0; i < sample.size(); i++) {
            residuals.add(sample.forces[i] - force.applyAsDouble(sample.lengths[i]));
        }
        return residuals;
    }

    private static OptionalDouble finite(double value) {
        return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    private static OptionalDouble aicc(Sample sample, List<Double> residuals, double naturalGap, double numbers) {
        int n = sample.size();
        double squares = 0;
        for (int i = 0; i < n; i++) {
            double each = residuals.get(i) / sample.spreads[i];
            squares += each * each;
        }
        double k = numbers + (sample.stated() ? 0 : 1);
        if (!(n - k - 1 > 0.5)) {
            return OptionalDouble.empty();
        }
        double least = 1e-9 * sample.forces[n - 1];
        double misfit = sample.noise instanceof Noise.Stated stated
                ? squares / (stated.sd() * stated.sd())
                : n * Math.log(Math.max(squares / n, least * least));
        return OptionalDouble.of(misfit + naturalGap + 2 * k + 2 * k * (k + 1) / (n - k - 1));
    }
}
