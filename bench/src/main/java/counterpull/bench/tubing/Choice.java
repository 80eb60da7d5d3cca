package counterpull.bench.tubing;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Which of the laws that were tried is used, and why, in words. */
record Choice(Tried tried, String why) {
    /** Differences below this say nothing (Burnham KP and Anderson DR 2002, Model Selection and Multimodel Inference; from memory). */
    static final double TIE = 2;

    /** A difference above this leaves the worse one without support (the same). */
    static final double CLEARLY = 10;

    /** By cross-validation: the smooth curve must halve the error. */
    static final double HALF = 0.5;

    private interface Mark {
        OptionalDouble of(Candidate.Score score);
    }

    static Optional<Choice> of(List<Tried> all) {
        List<Tried> closed = all.stream()
                .filter(each -> each.curve().isPresent() && each.candidate().family() != Family.SMOOTH)
                .toList();
        Optional<Tried> smooth = all.stream()
                .filter(each -> each.curve().isPresent() && each.candidate().family() == Family.SMOOTH)
                .findFirst();
        if (closed.isEmpty()) {
            return smooth.map(only -> new Choice(only, "no closed law follows these readings"));
        }
        long weighed = closed.stream()
                .filter(each -> each.candidate().score().aicc().isPresent())
                .count();
        return Optional.of(weighed >= 2 ? byCriterion(closed, smooth) : byForetelling(closed, smooth));
    }

    private static Choice byCriterion(List<Tried> closed, Optional<Tried> smooth) {
        Tried best = fewest(closed, Candidate.Score::aicc, TIE);
        double mark = best.candidate().score().aicc().getAsDouble();
        OptionalDouble curve =
                smooth.map(each -> each.candidate().score().aicc()).orElse(OptionalDouble.empty());
        if (curve.isPresent() && curve.getAsDouble() < mark - CLEARLY) {
            return new Choice(
                    smooth.get(),
                    "no closed law follows these readings: the best of them, " + name(best)
                            + ", is worse than the smooth curve by " + one(mark - curve.getAsDouble())
                            + " in AICc, and more than 10 is clear");
        }
        Tried least = fewest(closed, Candidate.Score::aicc, 0);
        double gap = mark - least.candidate().score().aicc().getAsDouble();
        boolean fewer = best.candidate().constants().size()
                < least.candidate().constants().size();
        String plainer =
                fewer ? "it takes fewer numbers" : "of two that take as many numbers its constants are better known";
        String why = gap > 0
                ? "its AICc is within 2 of the best, " + one(gap) + " above " + name(least) + ", and " + plainer
                : "smallest AICc, that is, it leaves the least over for the numbers that it takes";
        return new Choice(best, why);
    }

    private static Choice byForetelling(List<Tried> closed, Optional<Tried> smooth) {
        List<Tried> crossed = closed.stream()
                .filter(each -> each.candidate().score().crossValidation().isPresent())
                .toList();
        if (crossed.isEmpty()) {
            Tried plainest = closed.get(0);
            return new Choice(
                    plainest, "too few readings to weigh laws against each other: the one with fewest numbers");
        }
        Tried best = fewest(crossed, Candidate.Score::crossValidation, 0);
        double error = best.candidate().score().crossValidation().getAsDouble();
        OptionalDouble curve =
                smooth.map(each -> each.candidate().score().crossValidation()).orElse(OptionalDouble.empty());
        if (curve.isPresent() && curve.getAsDouble() < HALF * error) {
            return new Choice(smooth.get(), "no closed law foretells these readings half as well as the smooth curve");
        }
        return new Choice(
                best, "too few readings for AICc: it foretells each reading from the others with the smallest error");
    }

    private static Tried fewest(List<Tried> among, Mark mark, double tie) {
        List<Tried> marked = among.stream()
                .filter(each -> mark.of(each.candidate().score()).isPresent())
                .toList();
        double least = marked.stream()
                .mapToDouble(each -> mark.of(each.candidate().score()).getAsDouble())
                .min()
                .orElseThrow();
        return marked.stream()
                .filter(each -> mark.of(each.candidate().score()).getAsDouble() <= least + tie)
                .min(Comparator.comparingInt(
                                (Tried each) -> each.candidate().constants().size())
                        .thenComparing(each -> each.candidate().family()))
                .orElseThrow();
    }

    private static String name(Tried tried) {
        return tried.candidate().family().words();
    }

    private static String one(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
