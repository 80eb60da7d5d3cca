package counterpull.readings.rubber;

import counterpull.bench.tubing.CrossSection;
import counterpull.bench.tubing.Family;
import counterpull.bench.tubing.TubingBench;
import counterpull.bench.tubing.TubingResult;
import counterpull.engine.Refusal;
import counterpull.engine.elastic.BenchCurve;
import counterpull.engine.elastic.BenchReading;
import counterpull.engine.elastic.ElasticLaw;
import counterpull.engine.elastic.LinearLaw;
import counterpull.engine.elastic.LossFraction;
import counterpull.engine.elastic.MooneyRivlin;
import counterpull.engine.elastic.Ogden;
import counterpull.engine.elastic.OgdenTerm;
import counterpull.engine.elastic.Unloading;
import counterpull.engine.elastic.UnloadingCurve;
import counterpull.scenario.content.GivesBack;
import counterpull.scenario.content.Piece;
import counterpull.scenario.content.PieceLaw;
import counterpull.scenario.content.Size;
import counterpull.scenario.resist.RubberWriter;
import counterpull.scenario.units.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A piece as a scenario's kit has it, and how sure it is; in rounded numbers that a person can read, checked to be a piece at all. */
final class RubberText {
    private static final int POINTS = 16;

    /** Rounding can lift what is given back above what was put in, where the two meet. */
    private static final double[] A_LITTLE_LESS = {1, 0.999, 0.997, 0.99};

    private final TubingBench bench;
    private final TubingResult result;
    private final double natural;

    private RubberText(TubingBench bench, TubingResult result) {
        this.bench = bench;
        this.result = result;
        natural = tenthOfAMillimetre(result.rubber().naturalLength());
    }

    static String of(TubingBench bench, TubingResult result) {
        RubberText text = new RubberText(bench, result);
        Piece piece = text.piece();
        StringBuilder out = new StringBuilder();
        out.append("# under \"kit\", in the list \"rubber\"\n");
        if (piece.law() instanceof PieceLaw.Bench && result.chosen() != Family.SMOOTH) {
            out.append("# (the size across is not known, so the law stands as points of its curve)\n");
        }
        if (result.loss().isEmpty()) {
            out.append("# (letting go was not read: the loss of 10 % is no more than usual, from memory)\n");
        }
        out.append(BlockText.item(RubberWriter.piece(piece).node()));
        return out.append(text.unsure()).toString();
    }

    private Piece piece() {
        PieceLaw law = law();
        Optional<Size> size = bench.piece().section().map(RubberText::size);
        Piece.Lengths lengths = new Piece.Lengths(natural, result.rubber().testedMaxLength(), 0);
        for (double share : A_LITTLE_LESS) {
            try {
                Piece piece = new Piece(bench.piece().tag(), size, lengths, law, back(share), 0, 1);
                piece.rubber();
                return piece;
            } catch (Refusal aboveTheLaw) {
                continue;
            }
        }
        double loss = result.loss().map(found -> found.share().value()).orElse(0.0);
        return new Piece(bench.piece().tag(), size, lengths, law, new GivesBack.Less(digits(loss, 3)), 0, 1);
    }

    private static Size size(CrossSection section) {
        if (section instanceof CrossSection.Tube tube) {
            return new Size.Tube(tube.bore(), tube.wall());
        }
        CrossSection.Strip strip = (CrossSection.Strip) section;
        return new Size.Strip(strip.width(), strip.thickness());
    }

    private PieceLaw law() {
        ElasticLaw law = result.rubber().law();
        if (law instanceof LinearLaw linear) {
            return new PieceLaw.Linear(digits(linear.modulus() / result.rubber().naturalLength(), 5));
        }
        boolean known = bench.piece().section().isPresent();
        if (known && law instanceof MooneyRivlin two) {
            return new PieceLaw.TwoConstants(digits(two.c1(), 5), digits(two.c2(), 5));
        }
        if (known && law instanceof Ogden ogden) {
            return new PieceLaw.Terms(ogden.terms().stream()
                    .map(term -> new OgdenTerm(digits(term.mu(), 6), digits(term.alpha(), 6)))
                    .toList());
        }
        return new PieceLaw.Bench(law instanceof BenchCurve curve ? knots(curve) : points(law));
    }

    private List<BenchReading> knots(BenchCurve curve) {
        List<BenchReading> points = new ArrayList<>();
        for (BenchReading reading : curve.readings()) {
            boolean last = reading.length() >= result.rubber().testedMaxLength();
            double length = last ? reading.length() : tenthOfAMillimetre(reading.length());
            points.add(new BenchReading(length, hundredthOfANewton(reading.force())));
        }
        return points;
    }

    /** Closer together where the curve bends most, near natural length. */
    private List<BenchReading> points(ElasticLaw law) {
        double longest = result.rubber().testedMaxLength();
        List<BenchReading> points = new ArrayList<>();
        for (int i = 1; i <= POINTS; i++) {
            double along = Math.pow(i / (double) POINTS, 1.5);
            double length = i == POINTS ? longest : tenthOfAMillimetre(natural + along * (longest - natural));
            double force = law.tension(length / result.rubber().naturalLength());
            points.add(new BenchReading(length, hundredthOfANewton(force)));
        }
        return points;
    }

    private GivesBack back(double share) {
        if (result.loss().isEmpty()) {
            return new GivesBack.Less(0.1);
        }
        Unloading unloading = result.loss().get().unloading();
        if (unloading instanceof UnloadingCurve curve) {
            List<BenchReading> points = new ArrayList<>();
            for (BenchReading reading : curve.readings()) {
                boolean last = reading.length() >= result.rubber().testedMaxLength();
                double length = last ? reading.length() : tenthOfAMillimetre(reading.length());
                points.add(new BenchReading(length, hundredthOfANewton(share * reading.force())));
            }
            return new GivesBack.Bench(points);
        }
        return new GivesBack.Less(digits(((LossFraction) unloading).loss(), 3));
    }

    private String unsure() {
        double squares = 0;
        int count = 0;
        for (int i = 4; i <= 10; i++) {
            double length = natural + (result.rubber().testedMaxLength() - natural) * i / 10;
            double share = result.band().force(length).relative();
            squares += share * share;
            count++;
        }
        double force = 100 * Math.sqrt(squares / count);
        double millimetres = 1000 * result.lengths().fitted().standardError();
        return "# under \"uncertainty\", in the list \"rubber\"\n- { tag: "
                + BlockText.value(bench.piece().tag()) + ", force: " + plain(force) + " %, natural length: "
                + plain(millimetres) + " mm }\n";
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(Math.max(0.1, digits(value, 2)))
                .stripTrailingZeros()
                .toPlainString();
    }

    /** In whole hundredths of a centimetre, so that it is written in few digits. */
    private static double tenthOfAMillimetre(double metres) {
        return Unit.CENTIMETRE.toSi(Math.rint(Unit.CENTIMETRE.fromSi(metres) * 100) / 100);
    }

    private static double hundredthOfANewton(double newtons) {
        return Math.rint(newtons * 100) / 100;
    }

    private static double digits(double value, int digits) {
        return value == 0
                ? 0
                : new BigDecimal(value).round(new MathContext(digits)).doubleValue();
    }
}
