package counterpull.bench.repetitions;

import counterpull.engine.strength.IsometricTest;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Turns hardest places and what a set has shown into what each curve takes of it. */
final class Evidence {
    /** Standard deviation of one side's log strength about what both sides share; ours. */
    static final double OWN_SD = 0.08;

    /** A curve that claims to be surer than this is not believed to be; it keeps the sums smooth. */
    private static final double SUREST = 0.01;

    /**
     * From this chance of having limited on, a joint counts as measured: a test with the posterior's mean and variance. Below it, a floor,
     * which is true whoever limited; ours.
     */
    private static final double MEASURED = 0.2;

    /** A floor that the curve passes already with this chance says nothing new. */
    private static final double CLEARLY = 0.995;

    private final List<List<HardestPlace>> places;
    private final Sighting seen;

    Evidence(List<List<HardestPlace>> places, Sighting seen) {
        this.places = places;
        this.seen = seen;
    }

    List<JointEvidence> joints() {
        List<List<Contest.Posterior>> settled =
                Contest.settle(places.stream().map(Evidence::pair).toList(), seen);
        List<JointEvidence> joints = new ArrayList<>();
        for (int g = 0; g < settled.size(); g++) {
            for (int i = 0; i < settled.get(g).size(); i++) {
                joints.add(joint(places.get(g).get(i), settled.get(g).get(i)));
            }
        }
        joints.sort(Comparator.comparingDouble((JointEvidence each) -> -each.limiting()));
        return joints;
    }

    /** Sides that were tested apart share less: what each curve knows of itself alone is at the most its own spread. */
    static Pair pair(List<HardestPlace> sides) {
        double least = sides.stream().mapToDouble(HardestPlace::logSd).min().orElseThrow();
        boolean two = sides.size() > 1;
        double shared = two ? Math.max(0, least * least - OWN_SD * OWN_SD) : 0;
        List<Contestant> each = new ArrayList<>();
        for (HardestPlace side : sides) {
            double own = Math.sqrt(Math.max(SUREST * SUREST, side.logSd() * side.logSd() - shared));
            each.add(new Contestant(Math.log(side.effort()), own));
        }
        return new Pair(each, Math.sqrt(shared));
    }

    private JointEvidence joint(HardestPlace place, Contest.Posterior found) {
        boolean measured = found.limiting() >= MEASURED && seen instanceof Sighting.Near;
        Optional<IsometricTest> test = measured ? measured(place, found).or(() -> floor(place)) : floor(place);
        return new JointEvidence(place, found.limiting(), found.mean(), Math.sqrt(found.variance()), test);
    }

    /**
     * The normal likelihood that would have led from the curve as it stood to the posterior. None where the set made it less sure: a
     * joint that either limited or is far stronger.
     */
    private static Optional<IsometricTest> measured(HardestPlace place, Contest.Posterior found) {
        double before = place.logSd() * place.logSd();
        double precision = 1 / found.variance() - 1 / before;
        if (precision <= 0) {
            return Optional.empty();
        }
        double shift = found.mean() / found.variance() / precision;
        return relative(1 / precision)
                .map(sd -> new IsometricTest(place.at().angle(), place.held() * Math.exp(shift), sd));
    }

    /** The effort was no more than what was seen: the strength no less than asked / seen. */
    private Optional<IsometricTest> floor(HardestPlace place) {
        double logFloor = Math.log(place.effort()) - seen.middle();
        double passed = Normal.below(-logFloor / Math.hypot(place.logSd(), seen.sd()));
        if (passed > CLEARLY) {
            return Optional.empty();
        }
        return relative(seen.sd() * seen.sd())
                .map(sd -> IsometricTest.atLeast(place.at().angle(), place.held() * Math.exp(logFloor), sd));
    }

    /** Standard deviation over mean of a factor whose log has this variance; empty where a curve would not take it. */
    private static Optional<Double> relative(double logVariance) {
        double sd = Math.sqrt(Math.expm1(logVariance));
        return sd <= 1 ? Optional.of(sd) : Optional.empty();
    }
}
