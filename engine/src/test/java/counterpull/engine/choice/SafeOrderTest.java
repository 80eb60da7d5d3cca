package counterpull.engine.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.elastic.LinearLaw;
import counterpull.engine.elastic.LossFraction;
import counterpull.engine.elastic.Rubber;
import counterpull.engine.load.Carriage;
import counterpull.engine.load.Counterweight;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.Friction;
import counterpull.engine.motion.RailStroke;
import counterpull.engine.motion.Stops;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.Groundwork;
import counterpull.engine.profile.Loading;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.PressTask;
import counterpull.engine.profile.Sled;
import counterpull.engine.profile.Trials;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Loading order on example B's sled: 45°, carriage 40 kg, tape reads the hip-to-plate distance. */
class SafeOrderTest {
    private static final Racking RACKS = new Racking(List.of(0.95, 0.75), Double.POSITIVE_INFINITY);
    private static final Candidate.Score ANY = new Candidate.Score(0, 0, -1);
    // a few products of some hundred newtons
    private static final double ROUNDING = 1e-9;
    private static final double SIN = Math.sqrt(0.5);

    private static PressTask stopped() {
        return Trials.with(Trials.task(), new Stops(0.68, 0.72));
    }

    private static Candidate candidate(PressTask task, PlateSet plates, ElasticLine... lines) {
        Groundwork ground = Groundwork.of(task.with(Loading.plates(0)));
        return new Candidate(
                new Candidate.Place(task.stance(), task.stroke(), ground),
                plates,
                List.of(lines),
                Kits.goal(0.5, 2),
                ANY);
    }

    private static PlateSet heavy() {
        return new PlateSet(110, List.of(4, 2, 2));
    }

    /** Hung at 1.6 m along the reference line. */
    private static ElasticLine relieving(double natural, double stiffness) {
        return Trials.line(Trials.rubber("r", natural, stiffness), new Vec(1.6, 0), new Vec(0, 0));
    }

    private static List<SafeOrder.Kind> kinds(SafeOrder order) {
        return order.steps().stream().map(SafeOrder.Step::kind).toList();
    }

    @Test
    void platesGoOnAlternatelyHeaviestFirstThenLinesThenUnrack() {
        SafeOrder order = SafeOrder.of(candidate(stopped(), heavy(), relieving(0.5, 60)), RACKS, Kits.full());
        assertThat(kinds(order))
                .containsExactly(
                        SafeOrder.Kind.RACK,
                        SafeOrder.Kind.SET_STOP,
                        SafeOrder.Kind.PLATE_LEFT,
                        SafeOrder.Kind.PLATE_RIGHT,
                        SafeOrder.Kind.PLATE_LEFT,
                        SafeOrder.Kind.PLATE_RIGHT,
                        SafeOrder.Kind.PLATE_LEFT,
                        SafeOrder.Kind.PLATE_RIGHT,
                        SafeOrder.Kind.PLATE_LEFT,
                        SafeOrder.Kind.PLATE_RIGHT,
                        SafeOrder.Kind.HANG_LINE,
                        SafeOrder.Kind.UNRACK);
        assertThat(order.steps().stream().map(SafeOrder.Step::label).toList().subList(2, 10))
                .containsExactly("20 kg", "20 kg", "20 kg", "20 kg", "10 kg", "10 kg", "5 kg", "5 kg");
        assertThat(order.steps().get(1).mark()).isCloseTo(0.68, within(ROUNDING));
        assertThat(order.staysDown()).isTrue();
        assertThat(order.stopped()).isTrue();
        assertThat(order.catchesBeforePain()).isTrue();
    }

    @Test
    void theOrderOfTheKitDoesNotMatterForHeaviestFirst() {
        Kit kit = Kits.of(List.of(new PlateKind("5 kg", 5, 2), new PlateKind("20 kg", 20, 2)), List.of(), 0);
        SafeOrder order = SafeOrder.of(candidate(stopped(), new PlateSet(50, List.of(2, 2))), RACKS, kit);
        assertThat(order.steps().get(2).label()).isEqualTo("20 kg");
        assertThat(order.steps().get(4).label()).isEqualTo("5 kg");
    }

    @Test
    void rubberTooStrongForTheEmptyCarriageIsFineOnceThePlatesAreOn() {
        // at the stop 0.92 m of path, 0.42 m of stretch, 320 N: the empty carriage holds 277 N, with 110 kg 1040 N
        ElasticLine strong = relieving(0.5, 762);
        SafeOrder order = SafeOrder.of(candidate(stopped(), heavy(), strong), RACKS, Kits.full());
        assertThat(order.staysDown()).isTrue();
        for (SafeOrder.Step step : order.steps()) {
            if (step.kind() == SafeOrder.Kind.HANG_LINE || step.kind() == SafeOrder.Kind.UNRACK) {
                assertThat(step.check().weight()).isCloseTo(150 * 9.80665 * SIN, within(ROUNDING));
                assertThat(step.check().pull()).isCloseTo(762 * 0.42, within(ROUNDING));
                // the worst place is the stop, where the line is longest
                assertThat(step.check().mark()).isCloseTo(0.68, within(ROUNDING));
            } else {
                assertThat(step.check().pull()).isZero();
            }
        }
        SafeOrder bare =
                SafeOrder.of(candidate(stopped(), new PlateSet(0, List.of(0, 0, 0)), strong), RACKS, Kits.full());
        assertThat(bare.staysDown()).isFalse();
    }

    @Test
    void theMarginIsExactlyOnePointTwo() {
        assertThat(new SafeOrder.Check(120, 100, 1, 0).staysDown()).isTrue();
        assertThat(new SafeOrder.Check(119.999, 100, 1, 0).staysDown()).isFalse();
        // pulled toward the bottom, or by nothing: any weight will do, none will not
        assertThat(new SafeOrder.Check(1, -50, 1, 0).staysDown()).isTrue();
        assertThat(new SafeOrder.Check(0, 0, 1, 0).staysDown()).isFalse();
        assertThat(new SafeOrder.Check(500, Double.NaN, 1, 0).staysDown()).isFalse();
    }

    @Test
    void rubberPastItsTestedLengthAtAnyRackDoesNotStayDown() {
        // tested to 1.0 m; longest at the lowest rack, 0.45 m: 1.15 m. Wherever that rack stands in the list
        Rubber rubber = new Rubber("r", 0.5, LinearLaw.ofStiffness(60, 0.5), LossFraction.NONE, 1.0, 0, 0);
        ElasticLine line = Trials.line(rubber, new Vec(1.6, 0), new Vec(0, 0));
        for (List<Double> racks : List.of(List.of(0.45, 0.95), List.of(0.95, 0.45), List.of(0.95, 0.45, 0.9))) {
            SafeOrder order = SafeOrder.of(
                    candidate(stopped(), heavy(), line), new Racking(racks, Double.POSITIVE_INFINITY), Kits.full());
            assertThat(order.staysDown()).isFalse();
        }
        SafeOrder within = SafeOrder.of(candidate(stopped(), heavy(), line), RACKS, Kits.full());
        assertThat(within.staysDown()).isTrue();
    }

    @Test
    void aHangingCounterweightHeavierThanTheCarriageDoesNotStayDownUntilPlatesAreOn() {
        PressTask task = stopped();
        Carriage carriage = new Carriage(40, new Counterweight(30, Counterweight.Run.HANGING), Friction.none(), 400);
        PressTask counter = Trials.with(
                task, new Sled(task.sled().rail(), carriage, task.sled().stops()));
        SafeOrder order = SafeOrder.of(candidate(counter, heavy()), RACKS, Kits.full());
        // (40 sin 45° − 30) × 9.80665 N
        assertThat(order.steps().get(0).check().weight()).isCloseTo((40 * SIN - 30) * 9.80665, within(ROUNDING));
        assertThat(order.staysDown()).isFalse();
    }

    @Test
    void allIsDoneAtTheRestingPlaceWithinReachWhereTheLinesAreLoosest() {
        // straight legs reach 0.926 m, so the rack at 0.95 m is one that nobody can unrack from
        Racking racks = new Racking(List.of(0.95, 0.75, 0.9), Double.POSITIVE_INFINITY);
        ElasticLine adding = Trials.line(Trials.rubber("a", 0.5, 60), new Vec(0.05, 0), new Vec(0, 0));
        assertThat(markOf(candidate(stopped(), heavy(), relieving(0.5, 60)), racks))
                .isEqualTo(0.9);
        // rubber from below is loosest with the carriage down on its stop
        assertThat(markOf(candidate(stopped(), heavy(), adding), racks)).isEqualTo(0.68);
        SafeOrder order = SafeOrder.of(candidate(stopped(), heavy(), adding), racks, Kits.full());
        assertThat(order.rackInReach()).isTrue();
        assertThat(kinds(order)).startsWith(SafeOrder.Kind.SET_STOP, SafeOrder.Kind.REST_ON_STOP);
    }

    @Test
    void aRackThatNobodyReachesIsSaid() {
        Racking far = new Racking(List.of(0.95), Double.POSITIVE_INFINITY);
        assertThat(SafeOrder.of(candidate(stopped(), heavy()), far, Kits.full()).rackInReach())
                .isFalse();
    }

    private static double markOf(Candidate candidate, Racking racks) {
        return SafeOrder.of(candidate, racks, Kits.full()).steps().stream()
                .filter(step -> step.kind() == SafeOrder.Kind.HANG_LINE)
                .findFirst()
                .orElseThrow()
                .mark();
    }

    @Test
    void anImbalanceBeyondTheMachinesLimitIsSaid() {
        Candidate candidate = candidate(stopped(), heavy());
        Racking touching = new Racking(List.of(0.95), 20);
        Racking tooLittle = new Racking(List.of(0.95), 19.9);
        assertThat(SafeOrder.of(candidate, touching, Kits.full()).balanced()).isTrue();
        SafeOrder order = SafeOrder.of(candidate, tooLittle, Kits.full());
        assertThat(order.balanced()).isFalse();
        assertThat(order.steps().get(2).check().imbalance()).isEqualTo(20);
        assertThat(order.steps().get(3).check().imbalance()).isZero();
    }

    @Test
    void aMiddleHornIsNeverUneven() {
        Kit any = Kits.full();
        Kit kit = new Kit(any.plates(), 1, any.rubber(), any.hooks(), any.rules(), any.places());
        SafeOrder order = SafeOrder.of(
                candidate(stopped(), new PlateSet(60, List.of(3, 0, 0))), new Racking(List.of(0.95), 1), kit);
        assertThat(kinds(order)).containsSequence(SafeOrder.Kind.PLATE_MIDDLE, SafeOrder.Kind.PLATE_MIDDLE);
        assertThat(order.balanced()).isTrue();
    }

    @Test
    void aSledWithoutStopsHasNoStopToSetAndNothingThatCatches() {
        SafeOrder order = SafeOrder.of(candidate(Trials.task(), heavy()), RACKS, Kits.full());
        assertThat(kinds(order)).doesNotContain(SafeOrder.Kind.SET_STOP);
        assertThat(order.stopped()).isFalse();
        assertThat(order.catchesBeforePain()).isFalse();
    }

    @Test
    void aStopDeeperThanThePainFreeDepthIsSaid() {
        // pain-free to 100°; a stop at 0.60 m bends the knee further, one at 0.66 m less
        PressTask task = stopped();
        for (double bottom : new double[] {0.60, 0.66}) {
            RailStroke stroke = task.ownStroke().from(bottom);
            Groundwork ground = Groundwork.of(task.with(Loading.plates(0)), stroke, new double[] {bottom, 0.8, 0.9});
            double knee = PressProfile.of(ground, Loading.plates(50)).driving(0);
            Candidate candidate = new Candidate(
                    new Candidate.Place(task.stance(), stroke, ground), heavy(), List.of(), Kits.goal(0.5, 2), ANY);
            assertThat(SafeOrder.of(candidate, RACKS, Kits.full()).catchesBeforePain())
                    .isEqualTo(knee <= Math.toRadians(100));
            assertThat(knee > Math.toRadians(100)).isEqualTo(bottom == 0.60);
        }
    }
}
