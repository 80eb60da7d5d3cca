package counterpull.engine.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;
import counterpull.engine.body.Joint;
import counterpull.engine.body.Side;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.motion.FootRow;
import counterpull.engine.motion.JointRanges;
import counterpull.engine.motion.Stops;
import counterpull.engine.planar.Angles;
import counterpull.engine.profile.Limb;
import counterpull.engine.profile.Person;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.PressTask;
import counterpull.engine.profile.Trials;
import counterpull.engine.regression.Examples;
import counterpull.engine.strength.LimbStrength;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a search lists, keeps apart, leaves out and says about the rest. */
class SearchTest {
    private static final Question USUAL = Kits.question(Kits.goal(0.6, 0.7), Kits.full());
    private static final Choice FOUND = Kits.found(USUAL);

    private static List<Candidate> all(Choice choice) {
        List<Candidate> all = new ArrayList<>();
        for (Ranking ranking : choice.rankings()) {
            all.addAll(ranking.all());
        }
        return all;
    }

    private static List<String> print(Choice choice) {
        List<String> lines = new ArrayList<>();
        for (Ranking ranking : choice.rankings()) {
            for (Candidate c : ranking.all()) {
                lines.add(ranking.strategy() + " " + c.plates() + " " + c.lines() + " " + c.shortfallOverOwnRange());
            }
        }
        for (SplitSetup split : choice.splits()) {
            lines.add(split.changeover() + " " + split.shortfall() + " "
                    + split.whole().plates() + split.upper().plates());
        }
        for (LimitKind kind : LimitKind.values()) {
            lines.add(kind + " " + choice.rejections().stoppedBy(kind));
        }
        return lines;
    }

    @Test
    void everyCandidateKeepsEveryLimitWhenItsProfileIsComputedAfresh() {
        assertThat(all(FOUND)).hasSizeGreaterThan(100);
        for (Candidate candidate : all(FOUND)) {
            Verdict again = Judge.of(candidate.profile(), USUAL.goal());
            assertThat(again).isEqualTo(candidate.verdict());
            assertThat(again.feasible()).isTrue();
            // laid-out terms add up in another order than the profile
            assertThat(candidate.shortfallOverOwnRange()).isCloseTo(again.shortfall(), within(1e-12));
            assertThat(candidate.profile().task().loading()).isEqualTo(candidate.loading());
        }
    }

    @Test
    void strategiesAreKeptApartByWhatTheirLinesDo() {
        for (Ranking ranking : FOUND.rankings()) {
            assertThat(ranking.size()).isPositive();
            for (Candidate candidate : ranking.all()) {
                boolean relieves = false;
                boolean adds = false;
                for (ElasticLine line : candidate.lines()) {
                    relieves |= line.ends().anchor().equals(Kits.UPPER);
                    adds |= line.ends().anchor().equals(Kits.LOWER);
                }
                Strategy expected = relieves && adds
                        ? Strategy.BOTH
                        : relieves ? Strategy.RELIEVE_LOW : adds ? Strategy.ADD_HIGH : Strategy.LOAD_ALONE;
                assertThat(ranking.strategy()).isEqualTo(expected);
            }
        }
    }

    @Test
    void rankingsRunFromTheLeastShortfallAndRunnersUpDiffer() {
        for (Ranking ranking : FOUND.rankings()) {
            double before = 0;
            for (Candidate candidate : ranking.all()) {
                // ties nearer than 1e-12 are ordered by peak effort
                assertThat(candidate.shortfallOverOwnRange()).isGreaterThanOrEqualTo(before - 1e-12);
                before = candidate.shortfallOverOwnRange();
            }
            List<Candidate> best = ranking.best(4);
            assertThat(best.get(0)).isEqualTo(ranking.all().get(0));
            for (int a = 0; a < best.size(); a++) {
                for (int b = 0; b < a; b++) {
                    assertThat(best.get(a).differsFrom(best.get(b))).isTrue();
                }
            }
        }
        double least = all(FOUND).stream()
                .mapToDouble(Candidate::shortfallOverOwnRange)
                .min()
                .orElseThrow();
        assertThat(FOUND.best().orElseThrow().shortfallOverOwnRange()).isEqualTo(least);
    }

    @Test
    void exactTiesAreAllListed() {
        // two hooks at one place, two pieces that differ by tag alone: each is the same load
        Kit kit = Kits.of(
                Kits.plates(),
                List.of(
                        new RubberStock(Trials.rubber("r", 0.5, 60), 1),
                        new RubberStock(Trials.rubber("twin", 0.5, 60), 1)),
                1,
                Kits.UPPER,
                Kits.anchor("beside", 1.6, 0));
        Ranking relieving = Kits.found(Kits.question(Kits.goal(0.6, 0.7), kit))
                .ranking(Strategy.RELIEVE_LOW)
                .orElseThrow();
        assertThat(relieving.ties()).hasSize(4);
        assertThat(relieving.ties().stream().map(Candidate::lines).distinct()).hasSize(4);
    }

    @Test
    void aLineThatNeverTightensIsTheSameSetupAndNotListed() {
        RubberStock loose = new RubberStock(Trials.rubber("long", 3, 60), 1);
        Kit kit = Kits.of(Kits.plates(), List.of(loose), 2, Kits.UPPER, Kits.LOWER);
        Kit single = new Kit(
                kit.plates(),
                2,
                kit.rubber(),
                kit.hooks(),
                new LineRules(List.of(counterpull.engine.load.Hang.SINGLE), List.of(0.0), 4, 2),
                kit.places());
        Choice with = Kits.found(Kits.question(Kits.goal(0.6, 0.7), single));
        Choice without =
                Kits.found(Kits.question(Kits.goal(0.6, 0.7), Kits.of(Kits.plates(), List.of(), 2, Kits.UPPER)));
        assertThat(print(with)).isEqualTo(print(without));
        assertThat(with.extent().considered()).isEqualTo(without.extent().considered());
        assertThat(with.rejections().leftOut()).isEmpty();
    }

    @Test
    void aLineThatFitsNoStrategyIsLeftOutWithItsReason() {
        Kit kit = Kits.of(Kits.plates(), List.of(Kits.rubber(1)), 1, Kits.anchor("beside", 0.8, 0));
        Kit tight = new Kit(
                kit.plates(),
                2,
                List.of(new RubberStock(Trials.rubber("short", 0.05, 9), 1)),
                kit.hooks(),
                new LineRules(List.of(counterpull.engine.load.Hang.SINGLE), List.of(0.0), 4, 1),
                kit.places());
        Choice choice = Kits.found(Kits.question(Kits.goal(0.6, 0.7), tight));
        assertThat(choice.rejections().leftOut())
                .singleElement()
                .asString()
                .contains("short")
                .contains(LineEffect.CHANGES_SIDES.words());
    }

    @Test
    void stepByStepFindsTheSameAsAllAtOnce() {
        PressTask task = Trials.with(Trials.with(Trials.task(), 11), new Stops(0.68, 0.72, 0.8));
        Kit kit = Kits.with(
                Kits.of(Kits.plates(), List.of(Kits.rubber(1)), 1, Kits.UPPER, Kits.LOWER),
                Kits.places(1, new FootRow("higher", 0.05), new FootRow("far", 0.9)));
        Question question = Kits.question(task, Kits.goal(0.6, 0.7), kit, Strategy.values());
        Search slow = new Search(question);
        int steps = 0;
        while (slow.advance(1)) {
            steps++;
            assertThat(steps).isLessThan(100_000);
        }
        Search fast = new Search(question);
        assertThat(fast.advance(Integer.MAX_VALUE)).isFalse();
        Search mixed = new Search(question);
        mixed.advance(17);
        while (mixed.advance(3)) {
            if (mixed.progress().placesDone() == mixed.progress().places()) {
                assertThat(mixed.advance(Integer.MAX_VALUE)).isFalse();
            }
        }
        assertThat(print(slow.result())).isEqualTo(print(fast.result())).isEqualTo(print(mixed.result()));
        assertThat(slow.result().extent()).isEqualTo(fast.result().extent());
        assertThat(fast.result().extent().complete()).isTrue();
        assertThat(fast.result().splits()).isNotEmpty();
        assertThat(steps).isGreaterThan(50);
    }

    @Test
    void anInterruptedResultIsMarkedIncompleteAndDoesNotChangeLater() {
        Search search = new Search(USUAL);
        assertThat(search.result().extent()).isEqualTo(new Choice.Extent(0, false));
        assertThat(search.result().best()).isEmpty();
        assertThat(search.advance(30)).isTrue();
        Choice early = search.result();
        List<String> then = print(early);
        assertThat(early.extent()).isEqualTo(new Choice.Extent(30, false));
        assertThat(search.advance(100_000)).isFalse();
        assertThat(print(early)).isEqualTo(then);
        assertThat(search.result().extent().complete()).isTrue();
        assertThat(print(search.result())).isEqualTo(print(FOUND));
        assertThatThrownBy(() -> search.advance(0)).isInstanceOf(Refusal.class);
    }

    @Test
    void splitRangeAskedForIsIncompleteUntilItIsDone() {
        PressTask task = Trials.with(Trials.with(Trials.task(), 11), new Stops(0.68, 0.72, 0.8));
        Kit kit = Kits.of(Kits.plates(), List.of(), 0);
        Question question = Kits.question(task, Kits.goal(0.6, 0.7), kit, Strategy.LOAD_ALONE, Strategy.SPLIT_RANGE);
        Search search = new Search(question);
        while (search.progress().placesDone() < 1) {
            search.advance(1);
        }
        assertThat(search.result().extent().complete()).isFalse();
        while (search.advance(1)) {
            assertThat(search.result().extent().complete()).isFalse();
        }
        assertThat(search.result().extent().complete()).isTrue();
    }

    @Test
    void nothingFeasibleNamesTheLimitsAndTheNearestMissAndByHowMuch() {
        Choice choice = Kits.found(Kits.question(Kits.goal(0.6, 0.05), Kits.full()));
        assertThat(choice.feasible()).isFalse();
        assertThat(choice.rejections().stoppedBy(LimitKind.CEILING))
                .isEqualTo(choice.extent().considered());
        Candidate miss = choice.rejections().nearestMiss().orElseThrow();
        Breach breach = miss.verdict().tightest().orElseThrow();
        assertThat(breach.kind()).isEqualTo(LimitKind.CEILING);
        double peak = Judge.of(miss.profile(), Kits.goal(0.6, 0.05))
                .peak()
                .orElseThrow()
                .limiting()
                .effort();
        assertThat(breach.excess()).isCloseTo(peak / 0.05 - 1, within(1e-12));
        // with a ceiling just below that peak nothing changes, just above it that one setup is found
        assertThat(Kits.found(Kits.question(Kits.goal(0.6, peak * (1 - 1e-9)), Kits.full()))
                        .feasible())
                .isFalse();
        Choice above = Kits.found(Kits.question(Kits.goal(0.6, peak * (1 + 1e-9)), Kits.full()));
        assertThat(all(above)).extracting(Candidate::lines).containsExactly(miss.lines());
    }

    @Test
    void aSetupThatPassesTwoLimitsOfOneKindCountsOnce() {
        Caps caps = Caps.none()
                .withTorque(counterpull.engine.body.Action.KNEE_EXTENSION, 1)
                .withTorque(counterpull.engine.body.Action.HIP_EXTENSION, 1);
        Choice choice = Kits.found(Kits.question(Kits.goal(0.6, 0.7, caps), Kits.of(Kits.plates(), List.of(), 0)));
        assertThat(choice.rejections().stoppedBy(LimitKind.JOINT_TORQUE))
                .isEqualTo(choice.extent().considered());
    }

    @Test
    void aLineThatIsTooLongIsLeftOutByItsDeadLength() {
        // doubled, r is half a metre of rubber over two strands: too short without webbing, long enough with 0.3 m
        List<String> leftOut = FOUND.rejections().leftOut();
        assertThat(leftOut)
                .filteredOn(words -> words.startsWith("r, 1 × doubled, upper → plate: "))
                .hasSize(1);
        assertThat(leftOut)
                .filteredOn(words -> words.contains("dead length 300 mm"))
                .isEmpty();
        assertThat(all(FOUND).stream().flatMap(c -> c.lines().stream()))
                .anyMatch(line ->
                        line.deadLength() == 0.3 && line.pieces().hang() == counterpull.engine.load.Hang.DOUBLED);
    }

    @Test
    void rowsThatCannotBeReachedAreLeftOutWithTheirReason() {
        Kit kit = Kits.with(Kits.full(), Kits.places(0, new FootRow("far", 0.9)));
        Choice choice = Kits.found(Kits.question(Kits.goal(0.6, 0.7), kit));
        assertThat(choice.rejections().leftOut())
                .filteredOn(words -> words.startsWith("seat only with foot row far: "))
                .hasSize(1);
        assertThat(choice.rejections()
                        .refusal("seat only with foot row far")
                        .orElseThrow()
                        .fault())
                .isEqualTo(Fault.OUT_OF_REACH);
        assertThat(all(choice)).hasSameSizeAs(all(FOUND));
    }

    @Test
    void anEmptyKitHasOneSetup() {
        Choice choice = Kits.found(Kits.question(Kits.goal(0.6, 0.7), Kits.of(List.of(), List.of(), 0)));
        assertThat(choice.extent()).isEqualTo(new Choice.Extent(1, true));
        assertThat(choice.best().orElseThrow().plates().total()).isZero();
    }

    @Test
    void withoutAnyStrengthSetupsAreListedWithoutAShortfall() {
        PressTask task = Trials.with(Trials.task(LimbStrength.none()), 11);
        Choice choice = Kits.found(Kits.question(task, Kits.goal(0.6, 0.7), Kits.full(), Strategy.LOAD_ALONE));
        assertThat(all(choice)).isNotEmpty().allSatisfy(c -> {
            assertThat(c.shortfallOverOwnRange()).isNaN();
            assertThat(c.verdict().unknown()).isEqualTo(22);
        });
        // fewest pieces first: nothing else is known to choose by
        assertThat(choice.best().orElseThrow().plates().total()).isZero();
    }

    @Test
    void aSetupOfWhichNothingIsKnownNeverHidesOneThatIs() {
        Candidate any = all(FOUND).get(0);
        Candidate.Score nothing = new Candidate.Score(Double.NaN, Double.NaN, -1);
        Ranking unknown = new Ranking(Strategy.LOAD_ALONE);
        unknown.add(new Candidate(any.place(), any.plates(), any.lines(), any.goal(), nothing));
        Ranking known = new Ranking(Strategy.RELIEVE_LOW);
        known.add(any);
        Choice choice =
                new Choice(USUAL, List.of(unknown, known), List.of(), new Rejections(), new Choice.Extent(2, true));
        assertThat(choice.best()).contains(any);
    }

    @Test
    void aStopThatIsTooDeepForAJointLeavesTheShallowerOnes() {
        // worked example B: 139.8371° of hip flexion at the own bottom, less from a shallower stop
        JointRanges ranges = JointRanges.open().with(Joint.HIP, new Require.Limits(0, Angles.radians(138)));
        Limb limb = new Limb(Side.LEFT, Examples.leg(), 1, Trials.range(90, 10), ranges, Trials.strong(200, 180, 120));
        PressTask task = Trials.with(
                Trials.with(Trials.with(Trials.task(), 11), new Stops(0.675, 0.72)), new Person(80, List.of(limb)));
        Kit kit = Kits.with(Kits.of(Kits.plates(), List.of(), 0), Kits.places(1));
        Choice choice = Kits.found(Kits.question(task, Kits.goal(0.6, 0.9), kit, Strategy.LOAD_ALONE));
        assertThat(all(choice))
                .isNotEmpty()
                .allSatisfy(c -> assertThat(c.place().stroke().bottom()).isCloseTo(0.72, within(1e-12)));
        assertThat(choice.rejections().leftOut()).singleElement().asString().contains("hip would be at");
        Kit noFurther = Kits.with(kit, Kits.places(0));
        assertThat(Kits.found(Kits.question(task, Kits.goal(0.6, 0.9), noFurther, Strategy.LOAD_ALONE))
                        .feasible())
                .isFalse();
    }

    @Test
    void whatAShallowerStopLeavesOutCountsAsMissed() {
        PressTask task = Trials.with(Trials.with(Trials.task(), 21), new Stops(0.68, 0.75));
        Kit kit = Kits.with(Kits.of(Kits.plates(), List.of(), 0), Kits.places(1));
        Choice choice = Kits.found(Kits.question(task, Kits.goal(0.3, 2), kit, Strategy.LOAD_ALONE));
        PressProfile own = PressProfile.of(task);
        int below = 0;
        while (own.plate(below) < 0.75) {
            below++;
        }
        int shallower = 0;
        for (Candidate candidate : all(choice)) {
            double inside = candidate.verdict().shortfall();
            if (candidate.place().stroke().bottom() > 0.7) {
                double mean = ((21 - below) * inside * inside + below * 0.09) / 21;
                assertThat(candidate.shortfallOverOwnRange()).isCloseTo(Math.sqrt(mean), within(1e-12));
                shallower++;
            } else {
                // laid-out terms add up in another order than the profile
                assertThat(candidate.shortfallOverOwnRange()).isCloseTo(inside, within(1e-12));
            }
        }
        assertThat(shallower).isPositive();
        // the same plates over the whole range serve more of the target than over a part of it
        assertThat(choice.best().orElseThrow().place().stroke().bottom()).isCloseTo(0.68, within(1e-12));
    }
}
