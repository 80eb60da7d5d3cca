package counterpull.engine.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.Friction;
import counterpull.engine.motion.Bounce;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.Stops;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.Groundwork;
import counterpull.engine.profile.Limiting;
import counterpull.engine.profile.Loading;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.PressTask;
import counterpull.engine.profile.Trials;
import counterpull.engine.strength.LimbStrength;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Split ranges against plain enumeration of all pairs. */
class SplitRangeTest {
    private static final double[] STOPS = {0.68, 0.72, 0.78, 0.85};

    private static PressTask task(LimbStrength strength, int positions) {
        return Trials.with(Trials.with(Trials.task(strength), positions), new Stops(STOPS));
    }

    private static Choice found(PressTask task, Goal goal, Kit kit) {
        return Kits.found(Kits.question(task, goal, kit, Strategy.SPLIT_RANGE));
    }

    private static Kit kit() {
        return Kits.of(
                List.of(new PlateKind("20 kg", 20, 8), new PlateKind("10 kg", 10, 2), new PlateKind("2 kg", 2, 2)),
                List.of(),
                0);
    }

    private static Kit withRubber() {
        Kit some = Kits.of(List.of(new PlateKind("20 kg", 20, 8)), List.of(Kits.rubber(1)), 1, Kits.UPPER);
        LineRules rules = new LineRules(List.of(counterpull.engine.load.Hang.SINGLE), List.of(0.0), 1, 1);
        return new Kit(some.plates(), 2, some.rubber(), some.hooks(), rules, some.places());
    }

    private static List<Loading> loadings(Kit kit) {
        List<Loading> all = new ArrayList<>();
        for (PlateSet plates : PlateSet.within(kit, 400)) {
            all.add(Loading.plates(plates.total()));
            for (ElasticLine line : LineSet.lines(kit)) {
                all.add(new Loading(plates.total(), List.of(line)));
            }
        }
        return all;
    }

    /** √ of the mean of the smaller of both sets' squared misses, the upper one's looked at from its stop. */
    private static List<Double> enumerated(PressTask task, Goal goal, Kit kit) {
        List<PressProfile> wholes = new ArrayList<>();
        Groundwork ground = Groundwork.of(task.with(Loading.plates(0)));
        for (Loading loading : loadings(kit)) {
            addFeasible(wholes, ground, loading, goal);
        }
        List<Double> found = new ArrayList<>();
        for (int s = 1; s < STOPS.length; s++) {
            List<PressProfile> uppers = new ArrayList<>();
            Groundwork above = above(task, ground, STOPS[s]);
            for (Loading loading : loadings(kit)) {
                addFeasible(uppers, above, loading, goal);
            }
            for (PressProfile whole : wholes) {
                for (PressProfile upper : uppers) {
                    found.add(pair(whole, upper, goal));
                }
            }
        }
        Collections.sort(found);
        return found;
    }

    private static Groundwork above(PressTask task, Groundwork whole, double stop) {
        List<Double> plate = new ArrayList<>(List.of(stop));
        for (int i = 0; i < whole.motion().positions(); i++) {
            if (whole.motion().plate(i) > stop) {
                plate.add(whole.motion().plate(i));
            }
        }
        double[] places = plate.stream().mapToDouble(Double::doubleValue).toArray();
        return Groundwork.of(task.with(Loading.plates(0)), task.stroke().from(stop), places);
    }

    private static void addFeasible(List<PressProfile> found, Groundwork ground, Loading loading, Goal goal) {
        PressProfile profile = PressProfile.of(ground, loading);
        if (Judge.of(profile, goal).feasible()) {
            found.add(profile);
        }
    }

    private static double pair(PressProfile whole, PressProfile upper, Goal goal) {
        int apart = whole.positions() - upper.positions();
        double sum = 0;
        int counted = 0;
        for (Phase phase : List.of(Phase.LIFTING, Phase.LOWERING)) {
            for (int i = 0; i < whole.positions(); i++) {
                double one = missed(whole, phase, i, goal);
                boolean covered = whole.plate(i) > upper.plate(0);
                double other = covered ? missed(upper, phase, i - apart, goal) : Double.NaN;
                double least = Double.isNaN(one) ? other : Double.isNaN(other) ? one : Math.min(one, other);
                if (!Double.isNaN(least)) {
                    sum += least;
                    counted++;
                }
            }
        }
        return Math.sqrt(sum / counted);
    }

    private static double missed(PressProfile profile, Phase phase, int i, Goal goal) {
        Optional<Limiting> limiting = profile.limiting(goal.joints(), phase, i);
        if (limiting.isEmpty()) {
            return Double.NaN;
        }
        double miss = Math.max(
                0, goal.target().at(profile.driving(i)) - limiting.get().effort());
        return miss * miss;
    }

    private static void assertAsEnumerated(PressTask task, Goal goal, Kit kit) {
        List<Double> expected = enumerated(task, goal, kit);
        List<SplitSetup> splits = found(task, goal, kit).splits();
        assertThat(expected).hasSizeGreaterThan(64);
        assertThat(splits).isNotEmpty();
        // the same squares added in another order
        assertThat(splits.get(0).shortfall()).isCloseTo(expected.get(0), within(1e-11));
        // the rest are pairs of the enumeration, too, though not all of them: what another set beats everywhere is left
        // out
        for (SplitSetup split : splits) {
            assertThat(expected).anyMatch(one -> Math.abs(one - split.shortfall()) < 1e-11);
        }
    }

    @Test
    void theBestPairsAreThoseOfPlainEnumeration() {
        assertAsEnumerated(task(Trials.strong(150, 120, 100), 11), Kits.goal(0.7, 0.75), kit());
        assertAsEnumerated(task(Trials.strong(250, 90, 200), 14), Kits.goal(0.5, 0.9), kit());
    }

    @Test
    void withRubberToo() {
        assertAsEnumerated(task(Trials.strong(150, 120, 100), 11), Kits.goal(0.7, 0.8), withRubber());
    }

    @Test
    void whereAnEffortIsUnknownToo() {
        // the knee alone, known from 20° to 75° for extension and in a narrow range for flexion
        LimbStrength strength = LimbStrength.none()
                .with(Action.KNEE_EXTENSION, Trials.between(90, 20, 75))
                .with(Action.KNEE_FLEXION, Trials.between(40, 5, 14));
        Goal goal = new Goal(EffortTarget.flat(0.8), 1.2, 0, List.of(Joint.KNEE), Caps.none(), Goal.Straying.AS_TOLD);
        assertAsEnumerated(task(strength, 12), goal, kit());
    }

    @Test
    void everyPairTellsWhereItChangesAndBothHalvesKeepTheLimits() {
        PressTask task = task(Trials.strong(150, 120, 100), 11);
        Goal goal = Kits.goal(0.7, 0.75);
        for (SplitSetup split : found(task, goal, kit()).splits()) {
            double bottom = split.whole().place().stroke().bottom();
            double from = split.upper().place().stroke().bottom();
            assertThat(bottom).isCloseTo(STOPS[0], within(1e-12));
            assertThat(STOPS).contains(new double[] {from}, within(1e-12));
            double travel = split.whole().place().stroke().travel();
            assertThat(split.changeover()).isCloseTo((from - bottom) / travel, within(1e-12));
            assertThat(Judge.of(split.whole().profile(), goal).feasible()).isTrue();
            assertThat(Judge.of(split.upper().profile(), goal).feasible()).isTrue();
            assertThat(split.upper().profile().plate(0)).isEqualTo(from);
        }
    }

    @Test
    void aCeilingPassedAtTheStopItselfCountsEvenBetweenTwoPositions() {
        // three positions only: 0.68 m, the middle and the top; the stops lie between them
        PressTask task = task(Trials.strong(9999, 120, 9999), 3);
        Goal goal = Kits.goal(0.7, 0.6);
        List<SplitSetup> splits = found(task, goal, kit()).splits();
        assertThat(splits).isNotEmpty();
        for (SplitSetup split : splits) {
            PressTask fine = Trials.with(
                    Trials.with(task, 41),
                    new Stops(split.upper().place().stroke().bottom()));
            PressProfile upper = PressProfile.of(fine.with(split.upper().loading()));
            for (Phase phase : Phase.values()) {
                assertThat(upper.effort(Joint.KNEE, phase, 0)).isLessThanOrEqualTo(0.6 * (1 + 1e-12));
            }
        }
    }

    @Test
    void aLineTooLongOnlyAtTheStopIsNotHung() {
        // tested so far that it fits every position above the stop at 0.72 m but not the stop itself
        PressTask task = task(Trials.strong(9999, 120, 9999), 3);
        double second = PressProfile.of(task).plate(1);
        assertThat(second).isGreaterThan(0.75);
        var piece = new counterpull.engine.elastic.Rubber(
                "short",
                0.5,
                counterpull.engine.elastic.LinearLaw.ofStiffness(60, 0.5),
                counterpull.engine.elastic.LossFraction.NONE,
                1.6 - (0.72 + second) / 2,
                0,
                0);
        var hook = new counterpull.engine.load.Anchor("post", new Vec(1.6, 0), 0, Double.POSITIVE_INFINITY);
        Kit.Hooks hooks = new Kit.Hooks(
                List.of(hook), List.of(new counterpull.engine.load.Attachment("plate", new Vec(0, 0), 0)));
        Kit base = withRubber();
        Kit kit = new Kit(base.plates(), 2, List.of(new RubberStock(piece, 1)), hooks, base.rules(), base.places());
        List<SplitSetup> splits = found(task, Kits.goal(0.7, 0.9), kit).splits();
        assertThat(splits).isNotEmpty();
        for (SplitSetup split : splits) {
            boolean hung = !split.upper().lines().isEmpty();
            assertThat(hung && split.upper().place().stroke().bottom() < 0.73).isFalse();
        }
    }

    @Test
    void anUpperRangeThatIsRefusedIsWrittenDown() {
        // a turn of 0.16/2a = 0.16 m down: fits into 0.24 m of travel, not into what is left above 0.78 m
        PressTask task = Trials.with(task(Trials.strong(150, 120, 100), 11), new Bounce(0.4, 0.1, 1));
        Choice choice = found(task, Kits.goal(0.7, 2), kit());
        assertThat(choice.splits())
                .isNotEmpty()
                .allSatisfy(split ->
                        assertThat(split.upper().place().stroke().travel()).isGreaterThanOrEqualTo(0.16));
        assertThat(choice.rejections().leftOut())
                .singleElement()
                .asString()
                .startsWith("upper set of a split with seat only with foot row example: ")
                .contains("bounce");
    }

    @Test
    void askedForAloneItSaysWhatStoppedTheWholeRange() {
        Choice choice = found(task(Trials.strong(150, 120, 100), 11), Kits.goal(0.7, 0.05), kit());
        assertThat(choice.splits()).isEmpty();
        assertThat(choice.rejections().stoppedBy(LimitKind.CEILING)).isPositive();
        assertThat(choice.rejections().nearestMiss()).isPresent();
    }

    @Test
    void aSledWithoutStopsCannotSplit() {
        PressTask task = Trials.with(Trials.task(), 11);
        assertThat(task.sled().carriage().friction()).isNotEqualTo(Friction.none());
        assertThat(found(task, Kits.goal(0.7, 0.9), kit()).splits()).isEmpty();
    }
}
