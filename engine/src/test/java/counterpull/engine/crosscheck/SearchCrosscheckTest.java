package counterpull.engine.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.choice.Candidate;
import counterpull.engine.choice.Caps;
import counterpull.engine.choice.Choice;
import counterpull.engine.choice.Goal;
import counterpull.engine.choice.Question;
import counterpull.engine.choice.Ranking;
import counterpull.engine.choice.Search;
import counterpull.engine.choice.SplitSetup;
import counterpull.engine.choice.Strategy;
import counterpull.engine.motion.Ride;
import counterpull.engine.profile.Loading;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.PressTask;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * The search against loops that try everything, on seeded random people, sleds, kits and goals: the same setups keep the limits,
 * the same ones are best with all their ties, and what is returned is what its full profile says.
 *
 * <p>Tolerance 1e-9: both add the same terms in another order, which leaves 1e-13.
 */
class SearchCrosscheckTest {
    private static final int QUESTIONS = 80;
    private static final double CLOSE = 1e-9;
    private static final double TIE = 1e-12;

    private static Choice searched(Question question, List<Strategy> strategies) {
        Search search = new Search(new Question(question.task(), question.goal(), question.kit(), strategies));
        while (search.advance(17)) {
            assertThat(search.result().extent().complete()).isFalse();
        }
        Choice choice = search.result();
        assertThat(choice.extent().complete()).isTrue();
        return choice;
    }

    @Test
    void sameSetupsKeepTheLimitsAndTheSameAreBest() {
        RandomQuestion random = new RandomQuestion(2026);
        List<Strategy> singles = new ArrayList<>(List.of(Strategy.values()));
        singles.remove(Strategy.SPLIT_RANGE);
        int feasible = 0;
        int none = 0;
        for (int k = 0; k < QUESTIONS; k++) {
            Question question = random.next();
            PlainSearch plain = new PlainSearch(question);
            Choice choice = searched(question, singles);
            assertThat(choice.extent().considered()).as("question %s", k).isEqualTo(plain.considered);
            assertThat(choice.feasible()).isEqualTo(!plain.feasible.isEmpty());
            feasible += plain.feasible.size();
            none += plain.feasible.isEmpty() ? 1 : 0;
            for (Strategy strategy : singles) {
                compare(choice.ranking(strategy).orElseThrow(), plain, "question " + k + ", " + strategy);
            }
        }
        assertThat(feasible).as("setups that keep every limit").isGreaterThan(1000);
        assertThat(none).as("questions without an answer").isBetween(5, QUESTIONS - 20);
    }

    /** The same on sleds that a weight stack drives: chosen kilograms are the stack's or ride, as it comes. */
    @Test
    void onAStackTheSameSetupsKeepTheLimits() {
        RandomQuestion random = new RandomQuestion(2029);
        int feasible = 0;
        for (int k = 0; k < QUESTIONS / 2; k++) {
            Question drawn = random.next();
            PressTask stacked = Stacked.on(drawn.task(), k);
            Question question =
                    new Question(stacked, turnCapped(drawn.goal(), stacked), drawn.kit(), drawn.strategies());
            PlainSearch plain = new PlainSearch(question);
            Choice choice = searched(question, List.of(Strategy.LOAD_ALONE));
            feasible += plain.feasible.size();
            compare(choice.ranking(Strategy.LOAD_ALONE).orElseThrow(), plain, "stack question " + k);
        }
        assertThat(feasible).as("setups that keep every limit").isGreaterThan(100);
    }

    /** Only the force at the turn limits, at what 25 kg chosen ask over half a metre. */
    private static Goal turnCapped(Goal goal, PressTask task) {
        double person = task.sled().rail().ride() == Ride.SEAT ? task.person().restOfBody() : 0;
        double most = task.tempo().peakNearBottom(0.5) * (task.sled().feltMass(25) + person);
        Caps caps = Caps.none().withTurnForce(most);
        return new Goal(goal.target(), 2, 0, goal.joints(), caps, Goal.Straying.AS_TOLD);
    }

    private static void compare(Ranking ranking, PlainSearch plain, String what) {
        List<PlainSearch.Setup> ours = plain.feasible.stream()
                .filter(setup -> setup.strategy() == ranking.strategy())
                .toList();
        assertThat(names(ranking.all())).as(what).isEqualTo(namesOf(ours));
        assertThat(ranking.size()).as(what).isEqualTo(ours.size());
        double best = ours.stream()
                .mapToDouble(PlainSearch.Setup::ranked)
                .filter(shortfall -> !Double.isNaN(shortfall))
                .min()
                .orElse(Double.NaN);
        if (!Double.isNaN(best)) {
            List<PlainSearch.Setup> ties =
                    ours.stream().filter(setup -> setup.ranked() <= best + TIE).toList();
            assertThat(names(ranking.ties())).as(what + ", best").isEqualTo(namesOf(ties));
        }
        for (Candidate candidate : ranking.all()) {
            again(candidate, ours);
        }
    }

    private static Set<String> names(List<Candidate> candidates) {
        return candidates.stream().map(SearchCrosscheckTest::name).collect(Collectors.toSet());
    }

    private static Set<String> namesOf(List<PlainSearch.Setup> setups) {
        return setups.stream().map(PlainSearch.Setup::name).collect(Collectors.toSet());
    }

    private static String name(Candidate candidate) {
        return PlainSearch.name(
                candidate.place().stance(), candidate.place().stroke().bottom(), candidate.loading());
    }

    private static void again(Candidate candidate, List<PlainSearch.Setup> ours) {
        String name = name(candidate);
        PlainSearch.Setup same = ours.stream()
                .filter(setup -> setup.name().equals(name))
                .findFirst()
                .orElseThrow();
        if (Double.isNaN(same.shortfall())) {
            assertThat(candidate.score().shortfall()).as(name).isNaN();
        } else {
            assertThat(candidate.score().shortfall()).as(name).isCloseTo(same.shortfall(), within(CLOSE));
            assertThat(candidate.score().peak()).as(name).isCloseTo(same.peak(), within(CLOSE * (1 + same.peak())));
        }
    }

    @Test
    void theBestSplitRangeIsThatOfAllPairs() {
        RandomQuestion random = new RandomQuestion(2027);
        int found = 0;
        for (int k = 0; k < QUESTIONS; k++) {
            Question question = random.next();
            PlainSearch plain = new PlainSearch(question);
            List<SplitSetup> splits =
                    searched(question, List.of(Strategy.SPLIT_RANGE)).splits();
            assertThat(splits.isEmpty()).as("question %s", k).isEqualTo(plain.bestPair == Double.POSITIVE_INFINITY);
            if (!splits.isEmpty()) {
                found++;
                assertThat(splits.get(0).shortfall()).as("question %s", k).isCloseTo(plain.bestPair, within(CLOSE));
                keepsItsLimits(splits.get(0).whole());
                keepsItsLimits(splits.get(0).upper());
            }
        }
        assertThat(found).as("questions with a split range").isGreaterThan(QUESTIONS / 10);
    }

    private static void keepsItsLimits(Candidate half) {
        PressProfile profile = half.profile();
        PlainSled sled = new PlainSled(profile.task().with(half.loading()));
        assertThat(new PlainVerdict(profile, sled, half.goal()).kept).isTrue();
    }

    /** A control: with a kilogram more on the carriage the shortfalls differ by far more than the tolerance. */
    @Test
    void aKilogramIsSeen() {
        RandomQuestion random = new RandomQuestion(2028);
        double most = 0;
        for (int k = 0; k < QUESTIONS; k++) {
            Question question = random.next();
            for (Candidate best : searched(question, List.of(Strategy.LOAD_ALONE))
                    .ranking(Strategy.LOAD_ALONE)
                    .orElseThrow()
                    .ties()) {
                Loading heavier = Loading.plates(best.plates().total() + 1);
                PressProfile profile = PressProfile.of(best.place().ground(), heavier);
                PlainSled sled = new PlainSled(profile.task().with(heavier));
                double again = new PlainVerdict(profile, sled, question.goal()).shortfall();
                most = Math.max(most, Math.abs(again - best.score().shortfall()));
            }
        }
        assertThat(most).isGreaterThan(1000 * CLOSE);
    }
}
